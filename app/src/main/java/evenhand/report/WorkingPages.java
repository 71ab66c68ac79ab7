package evenhand.report;

import evenhand.answers.Trial;
import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.handsums.HandSums;
import evenhand.report.Block.Column;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.scenario.Setup;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** For an engineer: the hand sums worked through, and the list of what was estimated. */
final class WorkingPages {
    private WorkingPages() {}

    static List<Section> of(Findings findings) {
        List<Section> sections = new ArrayList<>();
        Candidate chosen = findings.chosen();
        chosen.sums().ifPresent(sums -> {
            List<Block> blocks = new ArrayList<>();
            blocks.add(Text.plain("The hand sums of \"" + chosen.name()
                    + "\", to be followed with a pocket calculator: SI units, angles in radians where not said"
                    + " otherwise, lateral acceleration 1 g = 9.80665 m/s². They are linear: springs at their rates at"
                    + " rest, roll centres where they are at rest. The answers at a pace and at the limit come from the"
                    + " full equilibrium, which starts from the same numbers."));
            blocks.add(Symbols.table());
            for (Working.Part part : parts(findings, sums)) {
                blocks.add(new Heading(part.title()));
                blocks.add(Text.quiet("Source: " + part.source() + "."));
                blocks.add(new Table(
                        List.of(
                                Column.words("", 2.3),
                                Column.words("formula", 2.3),
                                Column.words("with the numbers put in", 4.2),
                                Column.number("=", 1.6)),
                        part.steps().stream()
                                .map(step -> Row.of(step.what(), step.formula(), step.numbers(), step.result()))
                                .toList()));
            }
            sections.add(new Section("The working", true, blocks));
        });
        sections.add(MadeFrom.section(findings.question().scenario(), drawn(findings)));
        sections.add(Origins.of(findings));
        notGiven(chosen.setup()).ifPresent(sections::add);
        return sections;
    }

    /** The hand sums, how the car swings on its springs, and what the full equilibrium leaves over at each pace and at the limit. */
    static List<Working.Part> parts(Findings findings, HandSums sums) {
        Candidate chosen = findings.chosen();
        Trial trial = findings.question().trial();
        List<Working.Part> parts = new ArrayList<>(Working.of(chosen.car(), sums));
        chosen.ride()
                .ifPresent(ride -> Stream.of(End.values())
                        .map(end -> WorkedRide.of(new Pencil(chosen.car(), sums), ride.axle(end)))
                        .forEach(parts::add));
        chosen.turns().ifPresent(turns -> {
            for (double pace : trial.paces()) {
                chosen.at(pace)
                        .map(row -> WorkedBalances.of(
                                new Pencil(chosen.car(), sums),
                                row,
                                trial.radius(),
                                trial.direction(),
                                "at " + Units.pace(pace)))
                        .ifPresent(parts::add);
            }
            parts.add(WorkedBalances.of(
                    new Pencil(chosen.car(), sums),
                    turns.limit().row(),
                    trial.radius(),
                    trial.direction(),
                    "at the limit, " + Units.exactPace(turns.limit().lateralAcceleration())));
        });
        return parts;
    }

    private static String drawn(Findings findings) {
        return findings.doubt().isEmpty()
                ? MadeFrom.NOTHING_DRAWN
                : "for the doubt, " + findings.question().samples() + " cars, seed " + Findings.SEED;
    }

    /** Where the numbers come from that nobody measured. */
    static List<Section> sources(Findings findings) {
        List<Section> sections = new ArrayList<>(List.of(estimates(findings)));
        notGiven(findings.chosen().setup()).ifPresent(sections::add);
        findings.chosen().sums().ifPresent(sums -> sections.add(formulas(parts(findings, sums))));
        sections.add(MadeFrom.section(findings.question().scenario(), MadeFrom.NOTHING_DRAWN));
        return sections;
    }

    /** Where the formulas come from. */
    private static Section formulas(List<Working.Part> parts) {
        Map<String, String> sources = new LinkedHashMap<>();
        for (Working.Part part : parts) {
            sources.merge(part.source(), lower(part.title()), (one, other) -> one + "; " + other);
        }
        return new Section(
                "Sources of the formulas",
                false,
                List.of(
                        new Table(
                                List.of(Column.words("for", 4), Column.words("source", 5.5)),
                                sources.entrySet().stream()
                                        .map(one -> Row.of(one.getValue(), one.getKey()))
                                        .toList()),
                        Text.quiet("They are worked through, with the numbers put in, in the engineer's paper.")));
    }

    private static String lower(String title) {
        return Character.toLowerCase(title.charAt(0)) + title.substring(1);
    }

    private static Section estimates(Findings findings) {
        Candidate chosen = findings.chosen();
        Units units = findings.question().units();
        List<Row> rows = new ArrayList<>();
        for (Adjustable value : chosen.setup().estimatedForRide(chosen.car())) {
            rows.add(Row.of(
                    ChangeWords.name(value.path()),
                    Origins.value(value, units),
                    Origins.within(value, value.tolerance(), units),
                    value.rule()));
        }
        List<Block> blocks = new ArrayList<>();
        if (rows.isEmpty()) {
            blocks.add(Text.plain("Nothing was estimated: every value was given."));
        } else {
            blocks.add(
                    Text.plain(
                            "These values of \"" + chosen.name() + "\" were not measured. Each follows from others"
                                    + " by the rule beside it, with its own doubt; whoever measures one makes the answers surer."));
            blocks.add(new Table(
                    List.of(
                            Column.words("value", 2.4),
                            Column.number("estimate", 1.5),
                            Column.number("within", 1.2),
                            Column.words("rule", 4.4)),
                    rows));
        }
        return new Section("What was estimated", false, blocks);
    }

    /** What stands in for what is not in the file at all; nothing where everything is. */
    private static Optional<Section> notGiven(Setup setup) {
        if (setup.assumed().isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                Text.plain("These were not given and were taken as none. Each changes the answers if the car has it."));
        blocks.add(new Table(
                List.of(Column.words("what", 3), Column.words("taken as", 6.5)),
                setup.assumed().stream()
                        .map(one -> Row.of(ChangeWords.name(one.path()), one.text()))
                        .toList()));
        return Optional.of(new Section("What was not given", false, blocks));
    }
}
