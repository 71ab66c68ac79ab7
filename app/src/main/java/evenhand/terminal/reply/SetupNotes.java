package evenhand.terminal.reply;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Assumed;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.scenario.Warning;
import evenhand.terminal.page.Page;
import evenhand.words.NotGiven;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What stands below the answers for people: what was estimated, and what is unlikely, each line once. */
public final class SetupNotes {
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
                String line = value.path() + ": " + shown(value.si(), value)
                        + (value.tolerance() > 0 ? " ± " + shown(value.tolerance(), value) : "") + ", "
                        + value.rule();
                lines.computeIfAbsent(line, key -> new ArrayList<>())
                        .add(answer.setup().name());
            }
        }
        list("Estimated, not measured", lines, answers.size(), false);
    }

    /** What was not given, and what is unlikely. */
    public void notGiven(List<Setup> setups) {
        assumed(setups);
        warnings(setups);
    }

    private void assumed(List<Setup> setups) {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (Setup setup : setups) {
            for (Assumed one : setup.assumed()) {
                lines.computeIfAbsent(one.path() + ": " + one.text(), key -> new ArrayList<>())
                        .add(setup.name());
            }
        }
        list(NotGiven.HEADING, lines, setups.size(), false);
    }

    private String shown(double si, Adjustable value) {
        Unit unit = value.dimension() == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(value.dimension());
        String symbol = unit.symbol();
        return Numbers.significant(unit.fromSi(si), 4) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /** Those of the set-ups: what an answer itself warns of stands in its words. */
    private void warnings(List<Setup> setups) {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (Setup setup : setups) {
            for (Warning warning : setup.warnings()) {
                lines.computeIfAbsent(warning.where() + ": " + warning.what(), key -> new ArrayList<>())
                        .add(setup.name());
            }
        }
        list("Warnings", lines, setups.size(), true);
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
