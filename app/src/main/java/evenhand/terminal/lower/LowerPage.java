package evenhand.terminal.lower;

import evenhand.answers.Figure;
import evenhand.answers.RideFigures;
import evenhand.answers.Trial;
import evenhand.car.End;
import evenhand.forms.Table;
import evenhand.lowering.LoweringFigures;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.Unit;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.OneScreen;
import evenhand.turn.TurnAnswer;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import evenhand.words.lowering.LowestWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The verdict of {@code lower} on one screen: how low the car can go, what stops it, and the heights side by side. */
final class LowerPage {
    /** Heights that find room beside one another in mm, and in the wider inches. */
    private static final int MOST_HEIGHTS = 9;

    private static final int MOST_HEIGHTS_IN_INCHES = 7;

    /** Of more bends than these only the worst is shown. */
    private static final int MOST_BENDS = 2;

    /** Where the driver sits, on the road that a height is judged on. */
    private static final Figure<Stance.Stands> COMFORT = RideFigures.SEAT_COMFORT
            .within(Stance.Stands::rides)
            .named("seat", "felt at the seat, class " + Stance.ROAD)
            .to(2);

    private final Console console;
    private final Units units;
    private final LowerReply reply;
    private final LoweringStudy study;

    LowerPage(Console console, Units units, LowerReply reply) {
        this.console = console;
        this.units = units;
        this.reply = reply;
        study = reply.study();
    }

    String write() {
        OneScreen page = new OneScreen(console, 1, "--full has all figures, and why.");
        page.title(reply.scenario().title(), ": " + reply.setup().name() + " let down; " + circles());
        reply.warnings(units).forEach(page::warning);
        page.cautions(List.of(reply.setup()));
        reply.load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        page.paragraph("", LowestWords.of(study, units));
        page.blank();
        page.table(table());
        page.blank();
        page.paragraph("", "Wanted, by common practice, and how far down it is kept:");
        needs().forEach(need -> page.paragraph("  ", need));
        page.notGiven(List.of(reply.setup()));
        return page.text();
    }

    /** "40 m circle, both ways". */
    private String circles() {
        Trial trial = reply.trial();
        String circles = trial.radii().stream().map(units::radius).collect(Collectors.joining(" and "));
        return circles
                + (trial.radii().size() == 1 ? " circle, " : " circles, ")
                + (!trial.ways().isBoth()
                        ? "turning " + trial.direction().key()
                        : study.alike() ? "alike both ways" : "both ways");
    }

    /** As many of the heights as find room, the first and the last among them. */
    private List<Stance> heights() {
        List<Stance> all = study.rows();
        int most = units == Units.METRIC ? MOST_HEIGHTS : MOST_HEIGHTS_IN_INCHES;
        if (all.size() <= most) {
            return all;
        }
        List<Stance> some = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            some.add(all.get(Math.round((all.size() - 1) * (float) i / (most - 1))));
        }
        return some;
    }

    private Table table() {
        List<Stance> rows = heights();
        Table.Builder table = new Table.Builder(rows.stream()
                .map(row -> LowerTables.height(row.lowered(), units))
                .toList());
        LoweringFigures.TRAVEL.forEach(figure -> row(table, figure, rows));
        LoweringFigures.ROLL.forEach(figure -> row(table, figure, rows));
        row(table, COMFORT, rows);
        if (reply.reserve().isPresent()) {
            LoweringFigures.SPRINGS.subList(0, End.values().length).forEach(figure -> row(table, figure, rows));
        }
        List<Stance.Bend> bends = rows.stream()
                .flatMap(row -> row instanceof Stance.Stands stands ? Stream.of(stands) : Stream.empty())
                .findFirst()
                .map(Stance.Stands::bends)
                .orElse(List.of());
        if (bends.size() > MOST_BENDS) {
            table.heading("In the worst of " + bends.size() + " bends");
            turn(table, rows);
        } else {
            for (Stance.Bend bend : study.alike() ? bends.subList(0, Math.min(1, bends.size())) : bends) {
                table.heading(heading(bend));
                turn(
                        table,
                        rows.stream()
                                .map(row -> row.in(
                                        one -> one.direction() == bend.direction() && one.radius() == bend.radius()))
                                .toList());
            }
        }
        return table.build();
    }

    private String heading(Stance.Bend bend) {
        String turning = study.alike()
                ? "Turning either way"
                : "Turning " + bend.direction().key();
        return reply.trial().radii().size() > 1 ? turning + " on " + units.radius(bend.radius()) : turning;
    }

    /** What the bends of each height say, the least or the worst of them. */
    private void turn(Table.Builder table, List<Stance> rows) {
        for (Figure<Stance.Stands> figure :
                List.of(LoweringFigures.FIRST_STOP, LoweringFigures.NEAR_UNDERSTEER, LoweringFigures.LIMIT)) {
            row(table, figure, rows);
        }
        table.row("lets go first", "", cells(rows, LowerPage::first));
    }

    /** Which end goes first; another than the front, where one does so in one of the bends, in capitals. */
    private static String first(Stance.Stands stands) {
        List<TurnAnswer.Turns> turns = stands.bends().stream()
                .flatMap(bend -> bend.turn() instanceof TurnAnswer.Turns turn ? Stream.of(turn) : Stream.empty())
                .toList();
        return turns.stream()
                .map(TurnAnswer.Turns::limit)
                .filter(limit -> !limit.frontFirst())
                .findFirst()
                .map(limit -> LimitWords.first(limit).toUpperCase(Locale.ROOT))
                .orElse(
                        turns.isEmpty()
                                ? Table.NOTHING
                                : LimitWords.first(turns.get(0).limit()));
    }

    private void row(Table.Builder table, Figure<Stance.Stands> figure, List<Stance> rows) {
        Unit unit = figure.equals(COMFORT) ? figure.unit() : units.of(figure.dimension());
        table.row(figure.words(), figure.symbol(unit), cells(rows, stands -> {
            OptionalDouble least = stands.bends().stream()
                    .flatMapToDouble(bend -> values(stands, bend, figure))
                    .min();
            return least.isPresent()
                    ? Numbers.fixed(unit.fromSi(least.getAsDouble()), units.digits(figure))
                    : Table.NOTHING;
        }));
    }

    private static DoubleStream values(Stance.Stands stands, Stance.Bend bend, Figure<Stance.Stands> figure) {
        OptionalDouble value =
                stands.in(bend::equals) instanceof Stance.Stands alone ? figure.si(alone) : OptionalDouble.empty();
        return value.isPresent() ? DoubleStream.of(value.getAsDouble()) : DoubleStream.empty();
    }

    private static List<String> cells(List<Stance> rows, Function<Stance.Stands, String> cell) {
        return rows.stream()
                .map(row -> row instanceof Stance.Stands stands ? cell.apply(stands) : Table.NOTHING)
                .toList();
    }

    /** What does not hold all the way, the first to fall short first. */
    private List<String> needs() {
        return study.ends().stream()
                .filter(end -> !end.need().equals(Need.ANSWER)
                        && (end.atOnce() || end.lowered().isPresent()))
                .sorted(Comparator.comparingDouble(end ->
                        end.atOnce() ? Double.NEGATIVE_INFINITY : end.lowered().orElse(0)))
                .map(end -> end.need().words() + ", " + LowestWords.bound(end.need(), units) + ": "
                        + LowerTables.downTo(study, end, units))
                .toList();
    }
}
