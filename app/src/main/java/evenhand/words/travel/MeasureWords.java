package evenhand.words.travel;

import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import java.util.ArrayList;
import java.util.List;

/** What to measure on an axle whose links nobody has measured, and where it is typed. */
public final class MeasureWords {
    private MeasureWords() {}

    /** That it is not measured, and what stands in the meantime. */
    public static String lead(Axle axle, End end) {
        boolean live = axle instanceof Axle.Live;
        return "The " + end.key() + (live ? " axle" : " wheels") + (live ? " has" : " have")
                + " no links by points: roll centre, roll steer and leverage are the numbers of the file, and nothing says"
                + " what they do through the travel.";
    }

    /** Which points to take. */
    public static List<String> points(Axle axle) {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                "Stand the car at its ride height on a level floor, with plumb lines down from the joints. Each joint is"
                        + " a point: how far it is ahead of the axle's line, out from the middle of the car (of what is there once:"
                        + " left of it), and up from the floor. One side will do if the other mirrors it.");
        if (!(axle instanceof Axle.Live live)) {
            sentences.add("The lower arm: both pivots on the body and the ball joint.");
            sentences.add("The upper arm in the same way, or the strut: its top, and one more place on its line.");
            sentences.add("The tie rod: its inner and its outer joint.");
        } else if (live.lateralLocator() instanceof LateralLocator.LeafSprings) {
            sentences.add(
                    "Each leaf spring: its front eye, its rear eye, the shackle's pivot on the body, and the seat on the"
                            + " axle.");
        } else {
            sentences.add(
                    "Each link: its joint on the body and its joint on the axle. A torque arm: its front end, and where"
                            + " its drop link hangs.");
            sentences.add(
                    live.lateralLocator() instanceof LateralLocator.WattsLinkage
                            ? "The Watt's linkage: the pivot of its bell-crank, from there to each pin, and the end of each"
                                    + " rod."
                            : "The Panhard rod: its end on the body and its end on the axle.");
        }
        sentences.add(
                "If they are to be followed too: top and bottom of spring and damper, the bar's pivot and drop link"
                        + (axle instanceof Axle.Live ? ", and the joints and slopes of the propeller shaft." : "."));
        return sentences;
    }

    /** Where it is typed. */
    public static List<String> place(End end) {
        return List.of(
                "In the file, as \"links\" in car." + end.key()
                        + ": the demo car Sluice tourer has all of it (File, new from a demo car; save it and look inside). Take"
                        + " out what the links decide from then on, such as a roll centre's height.",
                "evenhand check FILE says what is missing or too many; the next opening of the file answers here.");
    }
}
