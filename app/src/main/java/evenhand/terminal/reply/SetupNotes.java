package evenhand.terminal.reply;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Assumed;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.Warning;
import evenhand.terminal.page.Page;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What stands below the answers for people: what was estimated, and what is unlikely, each line once. */
public final class SetupNotes {
    /** Two values closer than this are one. */
    private static final double SAME = 1e-9;

    private final Page page;
    private final Units units;

    public SetupNotes(Page page, Units units) {
        this.page = page;
        this.units = units;
    }

    public void estimated(List<? extends SetupAnswer> answers) {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (SetupAnswer answer : answers) {
            for (Adjustable value : answer.remarks().estimated()) {
                String line = value.path() + ": " + shown(value) + ", " + ruleAlone(value);
                lines.computeIfAbsent(line, key -> new ArrayList<>())
                        .add(answer.setup().name());
            }
        }
        list("Estimated, not measured", lines, answers.size(), false);
    }

    public void assumed(List<? extends SetupAnswer> answers) {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (SetupAnswer answer : answers) {
            for (Assumed one : answer.remarks().assumed()) {
                lines.computeIfAbsent(one.path() + ": " + one.text(), key -> new ArrayList<>())
                        .add(answer.setup().name());
            }
        }
        list("Not given, taken as none", lines, answers.size(), false);
    }

    /** The rule without the value, where it opens with it. */
    private static String ruleAlone(Adjustable value) {
        String rule = value.rule();
        int comma = rule.indexOf(", ");
        if (comma < 0) {
            return rule;
        }
        try {
            double opens =
                    Quantity.parse(rule.substring(0, comma), value.dimension()).si();
            return Math.abs(opens - value.si()) < SAME * Math.abs(opens) ? rule.substring(comma + 2) : rule;
        } catch (QuantityException e) {
            return rule; // it opens with words
        }
    }

    private String shown(Adjustable value) {
        Unit unit = value.dimension() == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(value.dimension());
        String symbol = unit.symbol();
        return Numbers.significant(unit.fromSi(value.si()), 4) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /** Those of the set-ups: what an answer itself warns of stands in its words. */
    public void warnings(List<? extends SetupAnswer> answers) {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (SetupAnswer answer : answers) {
            for (Warning warning : answer.setup().warnings()) {
                lines.computeIfAbsent(warning.where() + ": " + warning.what(), key -> new ArrayList<>())
                        .add(answer.setup().name());
            }
        }
        list("Warnings", lines, answers.size(), true);
    }

    /** Lines, each with the set-ups that it holds for where it does not hold for all. */
    private void list(String heading, Map<String, List<String>> lines, int setups, boolean warning) {
        if (lines.isEmpty()) {
            return;
        }
        if (warning) {
            page.warning(heading);
        } else {
            page.heading(heading);
        }
        lines.forEach((line, names) -> {
            String whose = names.size() < setups ? " (" + String.join(", ", names) + ")" : "";
            page.paragraph("  ", line + whose);
        });
    }
}
