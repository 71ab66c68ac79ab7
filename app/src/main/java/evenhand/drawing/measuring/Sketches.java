package evenhand.drawing.measuring;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** The sketch of a value, by its path: one of some thirty kinds of measurement. */
public final class Sketches {
    /** By the path under its axle, without the numbers of lists; the first that matches. */
    private static final Map<Pattern, Function<String, Sketch>> BY_PATH = new LinkedHashMap<>();

    static {
        put("mass|frontWeightFraction", CarSketches::wholeWeight);
        put("cornerWeights\\..*", CarSketches::cornerWeight);
        put("wheelbase", CarSketches::wheelbase);
        put("cgHeight", CarSketches::centreOfGravity);
        put("roofHeight", CarSketches::roof);
        put("axleLift\\.(frontRadius|rearRadius)", PartSketches::hubHeight);
        put("axleLift\\..*", CarSketches::lift);
        put(".*behindFrontAxle", CarSketches::behindFrontAxle);
        put("loadCases\\.added\\.height", CarSketches::heightOfLoad);
        put("chassisTorsionalStiffness", CarSketches::twist);
        put("steering\\.ratio", CarSketches::steeringWheel);
        put("layout", CarSketches::layout);
        put("track", CarSketches::track);
        put("unsprungMass", CarSketches::axleOnScale);
        put("unsprungHeight|tyre\\.(loadedRadius|verticalRate)", PartSketches::hubHeight);
        put("lowered|rideHeights\\..*", CarSketches::arch);
        put("drive\\.axle", CarSketches::drivenAxle);
        put("camber", AxleSketches::camber);
        put("toe", AxleSketches::toe);
        put("rollCamber|rollSteer", AxleSketches::overTravel);
        put("lateralLocator\\.(kind|height|carriedBy)", AxleSketches::locator);
        put("rollCentre\\..*", AxleSketches::rollCentre);
        put("sideView\\..*", AxleSketches::swing);
        put(".*\\.base", AxleSketches::base);
        put(".*\\.lean", AxleSketches::lean);
        put("spring\\.lowerMountHeight", AxleSketches::mountHeight);
        put(".*\\.ahead", AxleSketches::ahead);
        put(".*\\.(out|left)", AxleSketches::out);
        put(".*\\.up", AxleSketches::up);
        put("spring\\.rate|bumpStop\\.curve|droopStop\\.rate", PartSketches::press);
        put("spring\\.(installed|free|solid)Length", PartSketches::lengths);
        put("(spring|damper)\\.motionRatio|bar\\.linkRatio", PartSketches::ratio);
        put(".*\\.longer|damper\\.(open|closed)Length|spring\\.fittings", PartSketches::eyeToEye);
        put("spring\\.leafLength", PartSketches::leaf);
        put("spring\\.perch\\..*", PartSketches::perch);
        put("bar\\.(rollStiffness|diameter|armLength|activeLength)", PartSketches::bar);
        put("(bumpStop|metalStop)\\.gap", PartSketches::gap);
        put("droopStop\\.travel", PartSketches::droop);
        put("tyre\\.(size|kind|rimWidth)", PartSketches::sidewall);
        put("tyre\\.pressure", PartSketches::gauge);
        put("brakes\\.pedal\\.ratio", PartSketches::pedal);
        put("brakes\\..*\\.radius", PartSketches::disc);
        put("brakes\\..*[bB]ore", PartSketches::bore);
    }

    private Sketches() {}

    private static void put(String pattern, Function<String, Sketch> sketch) {
        BY_PATH.put(Pattern.compile(pattern), sketch);
    }

    private static void put(String pattern, Supplier<Sketch> sketch) {
        put(pattern, path -> sketch.get());
    }

    /** The sketch of a value; none where it is no matter of tape, level or scale. */
    public static Optional<Sketch> of(String path) {
        String own = path.replaceFirst("^(front|rear)\\.", "").replaceAll("\\[\\d+]", "");
        return BY_PATH.entrySet().stream()
                .filter(entry -> entry.getKey().matcher(own).matches())
                .findFirst()
                .map(entry -> entry.getValue().apply(own));
    }
}
