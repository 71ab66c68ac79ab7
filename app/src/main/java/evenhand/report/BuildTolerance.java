package evenhand.report;

import evenhand.level.Levelling;
import evenhand.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What something on the set-up sheet is to be built within where the file does not say it: never how well it was measured. Common
 * practice of those who set up road cars; no standard.
 */
final class BuildTolerance {
    /** Half-widths by what a path ends in, SI. */
    private static final Map<String, Double> USUAL = usual();

    private BuildTolerance() {}

    private static Map<String, Double> usual() {
        double mm = Unit.of("mm").toSi(1);
        double deg = Unit.of("deg").toSi(1);
        Map<String, Double> usual = new LinkedHashMap<>();
        for (String corner : new String[] {"frontLeft", "frontRight", "rearLeft", "rearRight"}) {
            usual.put("rideHeights." + corner, Levelling.KEPT_WITHIN);
            usual.put("cornerWeights." + corner, 2.0);
        }
        usual.put("crossWeight", 0.005);
        usual.put("mass", 5.0);
        usual.put("wheelbase", 3 * mm);
        usual.put("track", 3 * mm);
        usual.put("camber", 0.1 * deg);
        usual.put("toe", 0.05 * deg);
        usual.put("caster", 0.3 * deg);
        usual.put("tyre.pressure", Unit.of("bar").toSi(0.05));
        usual.put("tyre.loadedRadius", 3 * mm);
        usual.put("spring.installedLength", 2 * mm);
        usual.put("spring.freeLength", 3 * mm);
        usual.put("spring.base", 3 * mm);
        usual.put("spring.lowerMountHeight", 3 * mm);
        usual.put("spring.lean", deg);
        usual.put("damper.base", 3 * mm);
        usual.put("damper.lean", deg);
        usual.put("bar.diameter", 0.2 * mm);
        usual.put("bar.armLength", mm);
        usual.put("bar.activeLength", 3 * mm);
        usual.put("bumpStop.gap", 3 * mm);
        usual.put("metalStop.gap", 3 * mm);
        usual.put("droopStop.travel", 3 * mm);
        usual.put("lateralLocator.height", 2 * mm);
        usual.put("lowered", 2 * mm);
        usual.put("length", mm);
        usual.put("shim", 0.5 * mm);
        usual.put("pinionSlope", 0.5 * deg);
        return usual;
    }

    /** The usual one of what a path ends in; none of what is no measure to be set. */
    static OptionalDouble usual(String path) {
        return USUAL.entrySet().stream()
                .filter(one -> path.equals(one.getKey()) || path.endsWith("." + one.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .findFirst();
    }
}
