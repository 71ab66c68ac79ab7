package evenhand.terminal;

import evenhand.answers.Figure;
import evenhand.lowering.LoweringFigures;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.turn.PaceAnswer;
import evenhand.words.LoadWords;
import evenhand.words.LowestWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The answers of {@code lower} for people: heights side by side, what a road car needs, and the same in words. */
final class LowerTables {
    private static final String NOTHING = "–";

    private final Console console;
    private final Units units;
    private final StringBuilder text = new StringBuilder();

    LowerTables(Console console, Units units) {
        this.console = console;
        this.units = units;
    }

    /** A height as it is said: "40 mm". */
    static String height(double lowered, Units units) {
        return units.show(lowered, Dimension.LENGTH, units == Units.METRIC ? 0 : 2);
    }

    String write(LowerReply lowered) {
        LoweringStudy study = lowered.study();
        text.append(Paint.bold(Console.oneLine(lowered.scenario().title()), console))
                .append('\n');
        lowered.scenario().story().ifPresent(story -> Paragraph.append(text, "", story, console.columns()));
        lowered.trial()
                .load()
                .ifPresent(load -> Paragraph.append(text, "", LoadWords.aboard(load, units), console.columns()));
        Setup setup = lowered.setup();
        text.append('\n')
                .append(Paint.bold(setup.name() + ", let down", console))
                .append('\n');
        text.append(table(lowered).text(console));
        text.append('\n').append(needs(study).text(console));
        text.append('\n').append(Paint.bold(setup.name(), console)).append('\n');
        setup.note().ifPresent(note -> Paragraph.append(text, "  ", "(" + note + ")", console.columns()));
        for (String sentence : lowered.words(units)) {
            Paragraph.append(text, "  ", sentence, console.columns());
        }
        SetupNotes notes = new SetupNotes(text, console, units);
        notes.estimated(lowered.setups());
        notes.warnings(lowered.setups());
        return text.toString();
    }

    private Table table(LowerReply lowered) {
        List<Stance> rows = lowered.study().rows();
        Table table =
                new Table(rows.stream().map(row -> height(row.lowered(), units)).toList());
        table.heading("Travel left");
        figures(table, LoweringFigures.TRAVEL, rows);
        figures(table, LoweringFigures.METAL, rows);
        figures(table, LoweringFigures.TURN.subList(2, 3), rows);
        table.heading("What it rolls about");
        figures(table, LoweringFigures.LEVER, rows);
        figures(table, LoweringFigures.ROLL_CENTRES, rows);
        figures(table, LoweringFigures.ROLL, rows);
        figures(table, LoweringFigures.CAMBER, rows);
        table.heading("Balance");
        for (int i = 0; i < lowered.trial().paces().size(); i++) {
            int index = i;
            String pace = Units.pace(lowered.trial().paces().get(i));
            row(table, "understeer at " + pace, LoweringFigures.UNDERSTEER, rows, stands -> {
                List<PaceAnswer> paces = LoweringFigures.paces(stands);
                return paces.isEmpty() ? OptionalDouble.empty() : LoweringFigures.UNDERSTEER.si(paces.get(index));
            });
        }
        figures(table, List.of(LoweringFigures.NEAR_UNDERSTEER), rows);
        figures(table, LoweringFigures.TURN.subList(0, 2), rows);
        table.heading("Springs and ride, class " + Stance.ROAD.name() + " road at "
                + units.show(Stance.SPEED, Dimension.SPEED, 0));
        figures(table, LoweringFigures.SPRINGS, rows);
        figures(table, LoweringFigures.FREQUENCIES, rows);
        figures(table, LoweringFigures.COMFORT, rows);
        return table;
    }

    private void figures(Table table, List<Figure<Stance.Stands>> figures, List<Stance> rows) {
        for (Figure<Stance.Stands> figure : figures) {
            row(table, figure.words(), figure, rows, figure::si);
        }
    }

    private void row(
            Table table,
            String words,
            Figure<?> figure,
            List<Stance> rows,
            Function<Stance.Stands, OptionalDouble> reading) {
        List<String> cells = new ArrayList<>();
        for (Stance stance : rows) {
            OptionalDouble si = stance instanceof Stance.Stands stands ? reading.apply(stands) : OptionalDouble.empty();
            cells.add(
                    si.isPresent()
                            ? Numbers.fixed(unit(figure).fromSi(si.getAsDouble()), units.digits(figure))
                            : NOTHING);
        }
        if (!cells.stream().allMatch(NOTHING::equals)) {
            table.row(words, figure.symbol(unit(figure)), cells);
        }
    }

    /** Damping as a ratio and vibration in m/s²: so the trade speaks of them. */
    private Unit unit(Figure<?> figure) {
        boolean ofRide = figure.unit().equals(Unit.of("m/s^2"))
                || LoweringFigures.FREQUENCIES.stream().anyMatch(figure::equals);
        return ofRide ? figure.unit() : units.of(figure.dimension());
    }

    private Table needs(LoweringStudy study) {
        Table table = new Table(List.of("wanted", "down to"));
        table.heading("What a road car needs (common practice, not a standard)");
        for (LoweringStudy.Ending end : study.ends()) {
            Need need = end.need();
            if (!need.equals(Need.ANSWER) || end.atOnce() || end.lowered().isPresent()) {
                String bound = need.equals(Need.ANSWER) ? "" : LowestWords.bound(need, units);
                table.row(need.words(), "", List.of(bound, downTo(study, end, units)));
            }
        }
        return table;
    }

    /** How far down a need is met: "29 mm", "not at 0 mm", "all the way". */
    static String downTo(LoweringStudy study, LoweringStudy.Ending end, Units units) {
        if (end.atOnce()) {
            return "not at " + height(study.first().lowered(), units);
        }
        boolean unknown = end.need().dimension() == Dimension.LENGTH
                && study.rows().stream().allMatch(row -> end.need().value(row).isEmpty());
        if (unknown) {
            return "not in the file";
        }
        if (end.lowered().isEmpty()) {
            return "all the way";
        }
        double lowered = end.lowered().getAsDouble();
        return lowered < 0 ? LowestWords.down(lowered, units) : LowestWords.height(lowered, units);
    }
}
