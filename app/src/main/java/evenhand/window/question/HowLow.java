package evenhand.window.question;

import evenhand.answers.Figure;
import evenhand.answers.Progress;
import evenhand.car.Car;
import evenhand.chart.Chart;
import evenhand.chart.CurveCharts;
import evenhand.chart.CurveCharts.Curve;
import evenhand.chart.CurveCharts.Quantity;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.lowering.LoweringFigures;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Stance;
import evenhand.lowering.Stance.Stands;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.FormField;
import evenhand.window.desk.Names;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.SetupAct;
import evenhand.words.Units;
import evenhand.words.lowering.LoweringWords;
import evenhand.words.lowering.LowestWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What letting the body down does step by step, and how low it can go before something stops it. */
final class HowLow implements Question {
    private static final double STEP = 0.01;
    private static final double LOWEST = 0.2;

    private static final Field DOWN = new Field("to", "let down as far as", List.of(), "80 mm");

    private static final List<Figure<Stands>> FIGURES = Stream.of(
                    LoweringFigures.TRAVEL,
                    LoweringFigures.ROLL,
                    LoweringFigures.TURN,
                    LoweringFigures.ROLL_CENTRES,
                    LoweringFigures.COMFORT)
            .flatMap(List::stream)
            .toList();

    /** Figures that share a chart. */
    private record Picture(String title, String words, List<Figure<Stands>> figures) {}

    private static final List<Picture> PICTURES = List.of(
            new Picture("Travel that is left", "travel to the stop", LoweringFigures.TRAVEL),
            new Picture("Where the roll centres go", "height of the roll centre", LoweringFigures.ROLL_CENTRES),
            new Picture("How much it rolls", "roll gradient", LoweringFigures.ROLL));

    @Override
    public String key() {
        return "low";
    }

    @Override
    public Group group() {
        return Group.RIDE;
    }

    @Override
    public String words() {
        return "How low can it go?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return List.of(DOWN);
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.here(
                active,
                Stream.of(
                        "front.lowered",
                        "rear.lowered",
                        "front.spring.rate",
                        "rear.spring.rate",
                        "front.bumpStop.gap",
                        "rear.bumpStop.gap"));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        Setup setup = asked.active().setup();
        double down;
        try {
            down = evenhand.quantity.Quantity.parse(asked.wish(DOWN), Dimension.LENGTH)
                    .si();
            if (!(down >= STEP && down <= LOWEST)) {
                return Reply.only("Write how far down to look, from 10 mm to 200 mm.");
            }
            setup.car().letDown(down);
        } catch (QuantityException wrong) {
            return Reply.only("How far down: it " + wrong.getMessage() + ".");
        } catch (InvalidValue wrong) {
            return Reply.only("The body cannot go there: " + wrong.component() + " " + wrong.getMessage() + ".");
        }
        LoweringStudy study = LoweringStudy.of(
                setup.car(),
                0,
                down,
                STEP,
                OptionalDouble.empty(),
                asked.work().usualTrial().bothWays(),
                progress);
        List<String> sentences = LoweringWords.of(study, setup.car(), OptionalDouble.empty(), asked.units());
        return new Reply(
                List.of(Said.named(setup) + ": " + LowestWords.of(study, asked.units())),
                List.of(new Reply.Paragraph("On the way down", sentences.subList(0, sentences.size() - 1))),
                charts(asked, setup, study),
                table(study, asked.units()),
                next(asked, setup, study));
    }

    /** The lowest that works, as a set-up of its own. */
    private static List<Reply.Next> next(Asked asked, Setup setup, LoweringStudy study) {
        if (study.lowest().isEmpty() || study.lowest().getAsDouble() < STEP) {
            return List.of();
        }
        double whole = Math.floor(study.lowest().getAsDouble() / STEP) * STEP;
        Car car = setup.car();
        Map<String, String> changes = Map.of(
                "front.lowered", lowered(car.front().lowered() + whole),
                "rear.lowered", lowered(car.rear().lowered() + whole));
        String name = Names.free(asked.work(), setup.name() + ", " + lowered(whole) + " lower");
        return List.of(new Reply.Next(
                "add \"" + name + "\": the lowest whole step that works",
                Optional.of(new SetupAct.AddSetup(name, Optional.of(setup.name()), Optional.empty(), changes))));
    }

    private static String lowered(double si) {
        return evenhand.quantity.Quantity.of(Math.round(si * 1000) / 1000.0, Unit.of("mm"))
                .text();
    }

    private static List<Chart> charts(Asked asked, Setup setup, LoweringStudy study) {
        List<Chart> charts = new ArrayList<>();
        SetupStyle style = new SetupStyle(SideBySide.look(asked, setup.name()));
        Units units = asked.units();
        Quantity down = new Quantity("let down by", units.of(Dimension.LENGTH), units == Units.METRIC ? 0 : 2);
        for (Picture picture : PICTURES) {
            List<Figure<Stands>> figures = picture.figures();
            List<Curve> curves = new ArrayList<>();
            for (Figure<Stands> figure : figures) {
                List<Stands> rows = study.rows().stream()
                        .filter(row -> row instanceof Stands stands
                                && figure.si(stands).isPresent())
                        .map(Stands.class::cast)
                        .toList();
                curves.add(new Curve(
                        setup.name(),
                        figures.size() > 1 ? figure.words() : "",
                        style,
                        rows.stream().mapToDouble(Stance::lowered).toArray(),
                        rows.stream()
                                .mapToDouble(row -> figure.si(row).orElse(0))
                                .toArray()));
            }
            Figure<Stands> first = figures.get(0);
            Quantity up = new Quantity(picture.words(), unit(first, units), units.digits(first));
            charts.add(CurveCharts.curves(picture.title(), down, up, curves));
        }
        return charts;
    }

    /** What shakes stands in m/s², what is turned at in g. */
    private static Unit unit(Figure<?> figure, Units units) {
        return figure.dimension() == Dimension.ACCELERATION ? figure.unit() : units.of(figure.dimension());
    }

    private static Table table(LoweringStudy study, Units units) {
        Columns<Stance> table = new Columns<>(
                study.rows(),
                row -> FormField.show(row.lowered(), Dimension.LENGTH, units),
                units,
                figure -> unit(figure, units));
        table.heading("Let down by");
        FIGURES.forEach(figure ->
                table.figureOf(figure, row -> row instanceof Stands stands ? Optional.of(stands) : Optional.empty()));
        return table.table();
    }
}
