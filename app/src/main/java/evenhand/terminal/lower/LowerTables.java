package evenhand.terminal.lower;

import evenhand.answers.Figure;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.lowering.LoweringFigures;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.lowering.LowestWords;
import java.util.List;
import java.util.Optional;

/** The answers of {@code lower} for people: heights side by side, what a road car needs, and the same in words. */
final class LowerTables {
    private final Page page;
    private final Units units;

    LowerTables(Console console, Units units) {
        this.page = new Page(console);
        this.units = units;
    }

    /** A height as it is said: "40 mm". */
    static String height(double lowered, Units units) {
        return units.show(lowered, Dimension.LENGTH, units == Units.METRIC ? 0 : 2);
    }

    String write(LowerReply lowered) {
        LoweringStudy study = lowered.study();
        page.title(lowered.scenario().title());
        lowered.scenario().story().ifPresent(story -> page.paragraph("", story));
        lowered.trial().load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        Setup setup = lowered.setup();
        page.heading(setup.name() + ", let down");
        page.tableAtOnce(table(lowered));
        page.table(needs(study));
        page.heading(setup.name());
        setup.note().ifPresent(note -> page.paragraph("  ", "(" + note + ")"));
        page.sentences(lowered.words(units));
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(lowered.setups());
        notes.notGiven(List.of(setup));
        return page.text();
    }

    private Table table(LowerReply lowered) {
        Columns<Stance> table =
                new Columns<>(lowered.study().rows(), row -> height(row.lowered(), units), units, this::unit);
        table.heading("Travel left");
        figures(table, LoweringFigures.TRAVEL);
        figures(table, LoweringFigures.METAL);
        figures(table, List.of(LoweringFigures.FIRST_STOP));
        table.heading("What it rolls about");
        figures(table, LoweringFigures.LEVER);
        figures(table, LoweringFigures.ROLL_CENTRES);
        figures(table, LoweringFigures.ROLL);
        figures(table, LoweringFigures.CAMBER);
        if (lowered.study().rows().stream()
                .flatMap(row -> stands(row).stream())
                .anyMatch(stands ->
                        stands.frontLinks().isPresent() || stands.rearLinks().isPresent())) {
            table.heading("What the links do");
            figures(table, LoweringFigures.LINKS);
        }
        table.heading("Balance");
        for (int i = 0; i < lowered.trial().paces().size(); i++) {
            int index = i;
            table.figureIfAny(
                    "understeer at " + Units.pace(lowered.trial().paces().get(i)),
                    LoweringFigures.UNDERSTEER,
                    row -> stands(row)
                            .flatMap(stands -> LoweringFigures.paces(stands).stream()
                                    .skip(index)
                                    .findFirst()));
        }
        figures(table, List.of(LoweringFigures.NEAR_UNDERSTEER));
        figures(table, List.of(LoweringFigures.LIMIT, LoweringFigures.LIMIT_BALANCE));
        table.heading("Springs and ride, class " + Stance.ROAD.name() + " road at "
                + units.show(Stance.SPEED, Dimension.SPEED, 0));
        figures(table, LoweringFigures.SPRINGS);
        figures(table, LoweringFigures.FREQUENCIES);
        figures(table, LoweringFigures.COMFORT);
        return table.table();
    }

    private static void figures(Columns<Stance> table, List<Figure<Stance.Stands>> figures) {
        figures.forEach(figure -> table.figureIfAny(figure, LowerTables::stands));
    }

    private static Optional<Stance.Stands> stands(Stance stance) {
        return stance instanceof Stance.Stands stands ? Optional.of(stands) : Optional.empty();
    }

    /** Damping as a ratio and vibration in m/s²: so the trade speaks of them. */
    private Unit unit(Figure<?> figure) {
        boolean ofRide = figure.unit().equals(Unit.of("m/s^2"))
                || LoweringFigures.FREQUENCIES.stream().anyMatch(figure::equals);
        return ofRide ? figure.unit() : units.of(figure.dimension());
    }

    private Table needs(LoweringStudy study) {
        Table.Builder table = new Table.Builder(List.of("wanted", "down to"));
        table.heading("What a road car needs (common practice, not a standard)");
        for (LoweringStudy.Ending end : study.ends()) {
            Need need = end.need();
            if (!need.equals(Need.ANSWER) || end.atOnce() || end.lowered().isPresent()) {
                String bound = need.equals(Need.ANSWER) ? "" : LowestWords.bound(need, units);
                table.row(need.words(), "", List.of(bound, downTo(study, end, units)));
            }
        }
        return table.build();
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
