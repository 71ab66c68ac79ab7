package evenhand.report;

import evenhand.catalogue.Adjustable;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.report.Block.Column;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.scenario.Setup;
import evenhand.words.ChangeWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
            blocks.add(Text.quiet("m mass, h height of its centre, L wheelbase, a and b from it to the axles, t track,"
                    + " mu and hu unsprung mass and its height, z roll centre, p pneumatic trail, k spring rate, MR motion"
                    + " ratio, W load at rest, C cornering stiffness of both tyres, N/deg, K0 and p0 that of one and its trail at the"
                    + " reference load Fz0, q load of the greatest stiffness over Fz0, c camber thrust ratio, λ lean"
                    + " of the wheels, ε roll steer, A deg/kN, B deg/(kN·m); f front, r rear."));
            for (Working.Part part : Working.of(chosen.car(), sums)) {
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
        sections.addAll(sources(findings));
        return sections;
    }

    /** Where the numbers come from that nobody measured. */
    static List<Section> sources(Findings findings) {
        List<Section> sections = new ArrayList<>(List.of(estimates(findings)));
        notGiven(findings.chosen().setup()).ifPresent(sections::add);
        return sections;
    }

    private static Section estimates(Findings findings) {
        Candidate chosen = findings.chosen();
        Units units = findings.question().units();
        List<Row> rows = new ArrayList<>();
        for (Adjustable value : chosen.setup().estimatedForRide(chosen.car())) {
            rows.add(Row.of(
                    ChangeWords.name(value.path()),
                    shown(value.si(), value, units),
                    value.tolerance() > 0 ? "±" + shown(value.tolerance(), value, units) : "",
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

    private static String shown(double si, Adjustable value, Units units) {
        Unit unit = value.dimension() == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(value.dimension());
        String symbol = InPrint.symbol(unit);
        return Numbers.significant(unit.fromSi(si), 4) + (symbol.isEmpty() ? "" : " " + symbol);
    }
}
