package evenhand.window.desk;

import evenhand.catalogue.Adjustable;
import evenhand.scenario.Setup;
import java.util.List;
import java.util.regex.Pattern;

/** Adjustments that belong together, in the order of how often a shop turns to them. */
public enum KnobGroup {
    ROLL_CENTRES("roll centres", "rollCentre|lateralLocator"),
    SPRINGS("springs and bars", "\\.spring|\\.bar\\b|[sS]top"),
    HEIGHT("ride height", "\\.lowered|[rR]ideHeight"),
    DAMPERS("dampers", "[dD]amper"),
    LINKS("links and steering", "[lL]ink|\\.longer|steer|\\.toe|\\.camber|\\.caster"),
    WHEELS("wheels and tyres", "[tT]yre|[wW]heel|track"),
    DRIVE("brakes and drive", "brake|drive|engine|differential"),
    WEIGHTS("weights and the rest", "");

    private final String words;
    private final Pattern paths;

    KnobGroup(String words, String paths) {
        this.words = words;
        this.paths = Pattern.compile(paths);
    }

    public String words() {
        return words;
    }

    /** Whether it is open unless somebody folds it. */
    public boolean isUsual() {
        return compareTo(DAMPERS) <= 0;
    }

    /** The part of the window that it is. */
    public String part() {
        return "adjustments of " + words;
    }

    /** Every number of a set-up that has a usual range or step and belongs here, by its path. */
    public List<String> paths(Setup setup) {
        return setup.values().stream()
                .filter(value -> Double.isFinite(value.si()) && !value.isOfMount())
                .filter(value ->
                        value.slot().usual().isPresent() || value.slot().step().isPresent())
                .map(Adjustable::path)
                .filter(path -> of(path) == this)
                .toList();
    }

    private static KnobGroup of(String path) {
        for (KnobGroup group : values()) {
            if (group.paths.matcher(path).find()) {
                return group;
            }
        }
        return WEIGHTS;
    }
}
