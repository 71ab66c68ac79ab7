package evenhand.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Other words that the trade has for what the keys of a file name. */
final class TradeWords {
    /** A key as the file has it, or a path from where it may be missed; then what people call it, in small letters only. */
    private static final String[] KEYS = {
        "mass: weight, totalmass, totalweight, carmass, carweight, kerbweight, curbweight, kerbmass",
        "frontWeightFraction: weightdistribution, distribution, frontweight, frontpercent, weightfront",
        "cornerWeights: corners, scales, wheelweights, wheelloads, cornerloads",
        "cgHeight: cg, cog, centreofgravity, centerofgravity, centreofmass, centerofmass",
        "axleLift: lift",
        "wheelbase: wb, base, axledistance, axlespacing",
        "chassisTorsionalStiffness: chassis, torsion, torsionalstiffness, torsionalrigidity, chassisstiffness, twist",
        "pitchInertia: inertia",
        "steering: rack, steeringbox, steeringgear",
        "ratio: steeringratio, rackratio",
        "steering.ratio: steeringratio, rackratio",
        "ackermannShare: ackermann, ackerman",
        "steering.ackermannShare: ackermann, ackerman",
        "air: aero, aerodynamics, wind, downforce",
        "dragArea: cd, cda, drag, cdarea, dragcoefficient",
        "air.dragArea: cd, cda, drag, cdarea, dragcoefficient",
        "frontLiftArea: frontlift, frontdownforce, lift, downforce",
        "rearLiftArea: rearlift, reardownforce",
        "rollingResistance: rollingdrag, crr",
        "drive: drivetrain, driveline, transmission, gearbox",
        "differential: diff, lsd, limitedslip",
        "drive.differential: diff, lsd, limitedslip, differential",
        "finalDrive: axleratio, crownwheel, finaldriveratio, diffratio, reargear",
        "drive.finalDrive: axleratio, crownwheel, finaldriveratio, diffratio, reargear, finaldrive",
        "biasRatio: bias, lock, tbr, torquebias",
        "track: trackwidth, width, gauge, tread, wheeltrack",
        "front.track: trackwidth, fronttrack, track",
        "rear.track: reartrack",
        "unsprungMass: unsprung, unsprungweight, axleweight, axlemass",
        "unsprungHeight: axleheight, hubheight",
        "rollCentre: rollcenter, rc, instantcentre, instantcenter",
        "rollCentre.height: rollcentreheight, rollcenterheight, rcheight",
        "perBump: migration, rollcentremigration, perbounce, perheave",
        "lateralLocator: watts, watt, wattslinkage, wattlinkage, wattslink, panhard, panhardrod, panhardbar, trackbar, "
                + "trackrod, locator, linkage, rollcentre, rollcenter",
        "lateralLocator.height: rollcentreheight, rollcenterheight, pivotheight, pivot, panhardheight",
        "height: pivot, pivotheight, rodheight, rollcentreheight, rollcenterheight, z",
        "spring: coil, coils, coilspring, coilover, leaf, leaves, springs",
        "rate: springrate, stiffness, k, poundage",
        "spring.rate: springrate, wheelrate, poundage",
        "rollStiffness: barrate, barstiffness, stiffness, rate",
        "motionRatio: springratio, damperratio, shockratio, leverage, leverratio, lever, installationratio, ir, mr",
        "spring.motionRatio: springratio, motionratio, leverage, leverratio, installationratio, mr",
        "damper.motionRatio: damperratio, shockratio",
        "installedLength: fittedlength, length, rideheightlength",
        "freeLength: unloadedlength, relaxedlength",
        "solidLength: bindlength, coilbind, blocklength, blocked",
        "base: springbase, spacing, padspacing, pads, mountspacing",
        "lean: angle, inclination, slant, cant",
        "lowerMountHeight: mountheight, padheight, lowermount",
        "bar: swaybar, antirollbar, antiswaybar, arb, rollbar, stabiliser, stabilizer, stabiliserbar, stabilizerbar",
        "diameter: thickness, bardiameter, wire",
        "armLength: arm, leverlength, barlever",
        "activeLength: barlength, twistlength, length",
        "linkRatio: droplinkratio, droplink, motionratio",
        "bushFactor: bushes, bush, bushing, bushings",
        "damper: shock, shocks, shockabsorber, shockabsorbers, absorber, dampers, dampener, strut, telescopic",
        "bump: compression, jounce",
        "rebound: extension, droop",
        "settings: clicks, adjuster",
        "bumpStop: bumprubber, bumprubbers, rubber, rubbers, jouncebumper, bumper, snubber, buffer, bumpstops",
        "droopStop: strap, limitstrap, reboundstop, reboundstrap, droopstrap, droop",
        "metalStop: metal, hardstop, bottoming",
        "gap: clearance, freetravel, distance",
        "travel: droop, drooptravel, reboundtravel",
        "lowered: rideheight, lowering, drop, height",
        "toe: toein, toeout, tracking",
        "rollSteer: bumpsteer, axlesteer",
        "rollCamber: cambergain, cambercurve",
        "tyre: tire, tyres, tires, wheel, wheels, rubber",
        "size: tyresize, tiresize, dimension",
        "kind: type, construction",
        "pressure: psi, inflation, bar, tyrepressure, tirepressure",
        "tyre.pressure: psi, inflation, tyrepressure, tirepressure, pressure",
        "rimWidth: rim, wheelwidth, width",
        "loadedRadius: radius, rollingradius, wheelradius",
        "verticalRate: tyrerate, tirerate, springrate, stiffness",
        "referenceLoad: load, fz, fz0, nominalload",
        "corneringStiffness: corneringpower, sidestiffness, lateralstiffness",
        "friction: grip, mu, adhesion",
        "pneumaticTrail: trail",
        "mounts: mount, mountings, brackets, bracket, tabs",
        "carries: holds, ends, end, members, carry",
        "faces: face, facing, normal, direction",
        "pin: bolt, stud, shaft",
        "spread: washer, plate, cup, seat, spreader, doubler",
        "between: beam, rails, supports, crossmember, sills",
        "eye: bush, bushing, rubber, joint",
        "ratedLoad: rated, rating, workingload, safeload, limit, maximumload",
        "propertyClass: class, grade, boltgrade, boltclass",
        "yield: yieldstress, yieldstrength, strength",
        "outer: od, outerdiameter, washerdiameter",
        "sheet: thickness, gauge, metal, sheetmetal",
        "hardUse: hardcases, abuse, loadcases, loads, hardcase",
        "setups: variants, settings, set-ups",
        "loadCases: loads, loadcase, load, passengers",
        "changes: change, patch, diff",
        "basedOn: base, parent, from",
        "title: name",
        "story: note, notes, description"
    };

    private static final Map<String, List<String>> BY_WORD = byWord();

    private TradeWords() {}

    private static Map<String, List<String>> byWord() {
        Map<String, List<String>> byWord = new HashMap<>();
        for (String line : KEYS) {
            String[] halves = line.split(": ", 2);
            for (String word : halves[1].split(", ", -1)) {
                byWord.computeIfAbsent(letters(word), any -> new ArrayList<>()).add(halves[0]);
            }
        }
        return byWord;
    }

    /** Every key and path that other words are known for. */
    static List<String> keys() {
        return Arrays.stream(KEYS).map(line -> line.split(": ", 2)[0]).toList();
    }

    /** Other words for what a path leads to, in small letters and without spaces: "swaybar". */
    static List<String> others(String path) {
        String plain = path.replaceAll("\\[\\d+]", "");
        return Arrays.stream(KEYS)
                .map(line -> line.split(": ", 2))
                .filter(halves -> plain.equals(halves[0]) || plain.endsWith("." + halves[0]))
                .flatMap(halves -> Arrays.stream(halves[1].split(", ", -1)))
                .map(TradeWords::letters)
                .toList();
    }

    /** "Track Width", "track_width" and "trackWidth" are one word. */
    private static String letters(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }

    /**
     * The key that a word of the trade means among those that belong there, or a path down from one of them.
     *
     * @return nothing where the trade has no such word for any of them
     */
    static Optional<String> key(String written, Collection<String> known) {
        return BY_WORD.getOrDefault(letters(written), List.of()).stream()
                .filter(key ->
                        known.contains(Arrays.asList(key.split("\\.", -1)).get(0)))
                .findFirst();
    }
}
