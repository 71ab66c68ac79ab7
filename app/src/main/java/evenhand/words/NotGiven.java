package evenhand.words;

import evenhand.catalogue.Assumed;
import evenhand.scenario.Setup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What was not given and was taken as none, in words. */
public final class NotGiven {
    /** What opens a list of it. */
    public static final String HEADING = "Not given, taken as none";

    private NotGiven() {}

    /** Each thing of some set-ups once, as far as they are read out: "Not given, taken as none: front bump stop and 3 more." */
    public static Optional<String> inShort(List<Setup> setups, int most) {
        List<String> names = setups.stream()
                .flatMap(setup -> setup.assumed().stream())
                .map(NotGiven::name)
                .distinct()
                .toList();
        if (names.isEmpty()) {
            return Optional.empty();
        }
        int told = Math.min(most, names.size());
        return Optional.of(HEADING + ": " + String.join(", ", names.subList(0, told))
                + (told < names.size() ? " and " + (names.size() - told) + " more" : "") + ".");
    }

    private static String name(Assumed one) {
        return ChangeWords.name(one.path())
                + (one.path().endsWith(".links") ? " where they nearly end (continued straight)" : "");
    }

    /** All that was taken as none, with the set-ups that it holds for where it does not hold for all. */
    public static Optional<String> inFull(List<Setup> setups) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        for (Setup setup : setups) {
            for (Assumed one : setup.assumed()) {
                names.computeIfAbsent(one.text(), any -> new ArrayList<>()).add(setup.name());
            }
        }
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(names.entrySet().stream()
                        .map(one -> one.getKey()
                                + (one.getValue().size() < setups.size()
                                        ? " (" + String.join(", ", one.getValue()) + ")"
                                        : ""))
                        .collect(Collectors.joining("; ")));
    }

    /** What was taken as none and hardly is so, with what is usual and how to measure it. */
    public static List<String> cautions(List<Setup> setups) {
        Map<String, Set<String>> names = new LinkedHashMap<>();
        for (Setup setup : setups) {
            for (Assumed one : setup.assumed()) {
                one.caution()
                        .ifPresent(caution -> names.computeIfAbsent(caution, any -> new LinkedHashSet<>())
                                .add(ChangeWords.name(one.path())));
            }
        }
        return names.entrySet().stream()
                .map(one -> capital(listed(List.copyOf(one.getValue())))
                        + (one.getValue().size() > 1 ? ": each " : " ") + one.getKey() + ".")
                .toList();
    }

    /** Why a number that matters on any car moves nothing on this one: what would pass it on is none. */
    public static Optional<String> whyIdle(String path) {
        int dot = path.indexOf('.');
        String end = path.substring(0, Math.max(0, dot));
        return switch (path.substring(dot + 1)) {
            case "camber" -> Optional.of("the file has nothing on what the " + end + " tyres do as they lean");
            case "rollCamber" ->
                Optional.of("the file has nothing on what the " + end
                        + " tyres do as they lean, or the axle is a live one");
            case "aligningTorqueSteer" -> Optional.of("the file has no trail of the " + end + " tyres");
            default -> Optional.empty();
        };
    }

    /** "a, b and c". */
    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
