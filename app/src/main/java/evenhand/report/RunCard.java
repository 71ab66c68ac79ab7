package evenhand.report;

import evenhand.car.LoadCase;
import evenhand.doubt.Tolerance;
import evenhand.load.Laden;
import evenhand.quantity.Dimension;
import evenhand.report.Block.Column;
import evenhand.report.Block.Fields;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Points;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.roadtest.Expectation;
import evenhand.roadtest.Measured;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.words.EventWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.TestedWords;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The sheet that is taken along to a road test: what to drive in which order, what is expected, boxes for what is read, and when
 * to stop.
 */
public final class RunCard {
    private static final int SEVERAL_LAPS = 3;

    private final Asked asked;
    private final Units units;

    private RunCard(Asked asked) {
        this.asked = asked;
        units = asked.units();
    }

    /**
     * What is to be driven.
     *
     * @param circle its radius, m
     * @param paces lateral accelerations, m/s²
     */
    public record Asked(
            Scenario scenario,
            Setup setup,
            Optional<LoadCase> load,
            Measured circle,
            List<Double> paces,
            Units units,
            Optional<ShopPicture> picture) {
        public Asked {
            paces = paces.stream().sorted().toList();
        }
    }

    /**
     * Asks the car, and writes the sheet: whole or not at all.
     *
     * @return what could not be set as it was written
     * @throws CannotReport where the car does not turn, no pace is within its limit, or the file cannot be written
     */
    public static List<String> write(Asked asked, ReportFile target, PaperSize size) throws CannotReport {
        Paper paper = of(asked);
        Printed printed = switch (target.kind()) {
            case PDF -> PdfWriter.write(paper, size);
            case HTML -> HtmlWriter.write(paper);
            case CSV ->
                throw new CannotReport(target.path() + ": a card is for paper; let its name end in .pdf or .html");
        };
        target.write(printed.bytes());
        return printed.remarks();
    }

    /** The sheet as data. */
    static Paper of(Asked asked) throws CannotReport {
        return new RunCard(asked).paper();
    }

    private Paper paper() throws CannotReport {
        String name = asked.setup().name();
        List<TurnAnswer.Turns> ways = ways();
        List<Expectation> expected = Expectation.of(
                        asked.setup().entries(),
                        asked.load(),
                        asked.circle(),
                        asked.paces(),
                        Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES)
                .orElseThrow(() -> new CannotReport(
                        "no card for \"" + name + "\": it does not turn by the file; \"evenhand balance\" says why"));
        if (expected.isEmpty()) {
            throw new CannotReport("no card for \"" + name + "\": no pace is within its limit of "
                    + Units.exactPace(leastLimit(ways)) + "; ask a lower --pace");
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(Text.plain("\"" + name + "\""
                + asked.load()
                        .map(load -> ", with \"" + load.name() + "\" aboard")
                        .orElse("")
                + ", steady laps of a circle of " + units.radius(asked.circle().value())
                + ", both ways round. Angles are those at the rim from its mark, into the turn; lean is of the body against"
                + " standing, outwards, by heights at the sills."));
        asked.scenario()
                .tested()
                .ifPresent(tested -> blocks.add(new Text(TestedWords.inALine(tested), Block.Tone.WARNING)));
        blocks.add(new Fields(
                List.of("date, place, surface", "air and road temperature", "driver, observer, what was aboard")));
        blocks.add(new Heading("Before the first run"));
        blocks.add(new Points(before()));
        blocks.add(new Heading("Runs, in this order"));
        blocks.add(runs(expected));
        blocks.add(Text.quiet("Expected: 19 of 20 times between these, by "
                + (asked.scenario().tested().isPresent()
                        ? "what the road tests left of the tolerances"
                        : "the tolerances")
                + " of the file, a grip of 0.9 to 1.1, a"
                + " mark that is off by up to 3 deg and the radius. Hold each lap until speed and steering wheel stand still;"
                + " read then. The first run stands at the end again: what differs between the two is drift."));
        unreached(expected).ifPresent(words -> blocks.add(Text.plain(words)));
        blocks.add(new Heading("Stop"));
        blocks.add(new Text(
                "Test at the limit only on a closed course, alone, after a mechanical check.", Block.Tone.WARNING));
        blocks.add(new Points(InPrint.sentences(stop(ways))));
        blocks.add(new Fields(
                List.of("end that went first, left", "end that went first, right", "what was heard or felt")));
        return new Paper(
                asked.scenario().title(),
                "Road test of set-up \"" + name + "\"",
                asked.scenario().shop().flatMap(shop -> shop.name()),
                asked.picture(),
                Optional.empty(),
                List.of(new Section("Road test card", false, blocks), OwnerPages.cautions()));
    }

    private static List<String> before() {
        return List.of(
                "Tyre pressures cold, as the file has them; wheels tight, brakes, steering free from lock to lock, no leak, nothing"
                        + " loose inside.",
                "Fuel and people as the car was weighed. Heights at all four sills, standing on the level.",
                "Radius by a tape from the middle to where the car's middle is to run; marks every quarter.",
                "A mark on the rim that stands on top on a straight road, hands off; note where it stands on this road.",
                "Surface dry, even and clear well beyond the circle; somebody outside with the watch and a fire extinguisher.");
    }

    private List<TurnAnswer.Turns> ways() {
        List<TurnAnswer.Turns> ways = new ArrayList<>();
        if (Laden.of(asked.setup().car(), asked.load()) instanceof Laden.AtRest rest) {
            for (Direction way : Direction.values()) {
                if (SteadyTurn.answer(rest.car(), List.of(), asked.circle().value(), way)
                        instanceof TurnAnswer.Turns turns) {
                    ways.add(turns);
                }
            }
        }
        return ways;
    }

    private static double leastLimit(List<TurnAnswer.Turns> ways) {
        return ways.stream()
                .mapToDouble(way -> way.limit().lateralAcceleration())
                .min()
                .orElse(0);
    }

    private Table runs(List<Expectation> expected) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("run", 2),
                Column.number("speed", 1.3),
                Column.number("1 lap", 1),
                Column.number(SEVERAL_LAPS + " laps", 1),
                Column.number("steering wheel, expected", 2.2),
                Column.number("lean, expected", 2),
                Column.blank("laps, time", 1.4),
                Column.blank("steering wheel", 1.2),
                Column.blank("lean", 1.2)));
        List<Row> rows = new ArrayList<>();
        for (Expectation one : expected) {
            rows.add(row(one, rows.size() + 1));
        }
        rows.add(row(expected.get(0), rows.size() + 1));
        return new Table(columns, rows);
    }

    private Row row(Expectation one, int number) {
        double speed = Math.sqrt(one.pace() * asked.circle().value());
        double lap = 2 * Math.PI * asked.circle().value() / speed;
        return Row.of(
                number + ". " + one.turn().key() + ", " + Units.pace(one.pace()),
                units.show(speed, Dimension.SPEED, 1),
                Numbers.fixed(lap, 1) + " s",
                Numbers.fixed(SEVERAL_LAPS * lap, 1) + " s",
                one.steeringWheel().map(between -> degrees(between, 0)).orElse(""),
                degrees(one.roll(), 1),
                "",
                "",
                "");
    }

    private static String degrees(Expectation.Between between, int digits) {
        return Numbers.fixed(Math.toDegrees(between.value()), digits) + " deg ("
                + Numbers.fixed(Math.toDegrees(between.low()), digits) + " to "
                + Numbers.fixed(Math.toDegrees(between.high()), digits) + ")";
    }

    /** Paces that are not on the sheet. */
    private Optional<String> unreached(List<Expectation> expected) {
        List<String> missing = asked.paces().stream()
                .filter(pace ->
                        expected.stream().filter(one -> one.pace() == pace).count() < Direction.values().length)
                .map(Units::pace)
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Beyond the limit by the sums, and not to be driven: " + String.join(", ", missing) + ".");
    }

    private static List<String> stop(List<TurnAnswer.Turns> ways) {
        List<String> all = new ArrayList<>();
        all.add("When the rear leads: steer back, ease off, and end the day's runs. "
                + String.join(
                        " ",
                        ways.stream()
                                .map(way -> "By the sums the limit to the "
                                        + way.direction().key() + " is "
                                        + Units.exactPace(way.limit().lateralAcceleration()) + ", where "
                                        + first(way) + ".")
                                .toList()));
        List<String> lifted = new ArrayList<>();
        for (TurnAnswer.Turns way : ways) {
            way.eventsToLimit().stream()
                    .filter(event -> event.kind() == TurnEvent.Kind.WHEEL_LIFTED)
                    .findFirst()
                    .ifPresent(event -> lifted.add("To the " + way.direction().key() + " "
                            + EventWords.happening(event) + " at " + Units.exactPace(event.lateralAcceleration())
                            + " by the sums."));
        }
        all.add("When a wheel lifts. "
                + (lifted.isEmpty() ? "By the sums none does before the limit." : String.join(" ", lifted)));
        all.add(
                "When the wheel or the lean is far outside what is expected, anything touches, smells, leaks or knocks, or the"
                        + " brakes go soft.");
        all.add("When somebody walks or drives into the circle.");
        return all;
    }

    private static String first(TurnAnswer.Turns way) {
        String end = LimitWords.first(way.limit());
        return end.equals("neither") ? "neither end goes first" : "the " + end + " goes first";
    }
}
