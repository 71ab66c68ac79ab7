package evenhand.window.question;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.catalogue.Adjustable;
import evenhand.chart.Chart;
import evenhand.chart.CurveCharts;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What the height that an axle rolls about does to balance and roll, over the range that can be built. */
final class HowHighThePivot implements Question {

    private static final Judged NEAR_LIMIT = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());
    private static final Judged UNDERSTEER = atBriskPace(Criterion.UNDERSTEER);
    private static final Judged ROLL = atBriskPace(Criterion.ROLL_GRADIENT);
    private static final Judged INSIDE_REAR = atBriskPace(Criterion.INSIDE_REAR_LOAD);

    private static Judged atBriskPace(Criterion criterion) {
        return new Judged(criterion, OptionalDouble.of(Trial.BRISK));
    }

    @Override
    public String key() {
        return "pivot";
    }

    @Override
    public Group group() {
        return Group.BALANCE;
    }

    @Override
    public String words() {
        return "How high should the pivot be?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        boolean frontOnly = asking.work().activeSetup().car().front() instanceof Axle.Live
                && !(asking.work().activeSetup().car().rear() instanceof Axle.Live);
        return List.of(new Field(
                "axle", "axle", List.of(End.REAR.key(), End.FRONT.key()), (frontOnly ? End.FRONT : End.REAR).key()));
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.joined(active, Knobs.rollCentres(active), Knobs.heights());
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        Setup setup = asked.active().setup();
        End end = asked.wish(fields(asked.asking()).get(0)).equals(End.FRONT.key()) ? End.FRONT : End.REAR;
        String path = Knobs.rollCentre(setup, end);
        Optional<Adjustable> found = setup.values().stream()
                .filter(value -> value.path().equals(path))
                .findFirst();
        if (found.isEmpty()) {
            return Reply.only("Measured links decide what the " + end.key()
                    + " axle rolls about: there is no one height to move, only their points.");
        }
        Adjustable height = found.get();
        Sweep sweep = Sweep.of(setup.entries(), height, asked.work().usualTrial());
        if (sweep.points().size() < 2) {
            return Reply.only("\"" + setup.name() + "\" has no answer near this height.");
        }
        String what = name(setup, end);
        List<String> headlines = new ArrayList<>();
        headlines.add(slopes(what, sweep, asked.units()));
        headlines.add(reach(what, sweep, asked.units()));
        List<Reply.Next> next = new ArrayList<>();
        sweep.where(NEAR_LIMIT, 0)
                .ifPresent(si -> next.add(new Reply.Next(
                        "put " + what + " at " + Sweep.rounded(height, si) + ": neutral near the limit by this sweep",
                        Optional.of(
                                new EditAct.SetValue(Optional.of(setup.name()), path, Sweep.rounded(height, si))))));
        return new Reply(
                headlines,
                List.of(new Reply.Paragraph(
                        "What it does not do",
                        List.of("In a gentle turn the height hardly moves the understeer gradient: there tyres, weights"
                                + " and steer effects decide. It moves the brisk balance and that near the limit, through the"
                                + " load that each axle carries across."))),
                List.of(
                        chart(asked, setup, sweep, NEAR_LIMIT, what),
                        chart(asked, setup, sweep, UNDERSTEER, what),
                        chart(asked, setup, sweep, ROLL, what),
                        chart(asked, setup, sweep, INSIDE_REAR, what)),
                table(sweep, asked.units()),
                next);
    }

    private static String name(Setup setup, End end) {
        String axle = "the " + end.key() + " ";
        if (setup.car().axle(end) instanceof Axle.Live live) {
            LateralLocator locator = live.lateralLocator();
            return axle
                    + (locator instanceof LateralLocator.WattsLinkage
                                    || live.links().isPresent()
                            ? "pivot"
                            : locator instanceof LateralLocator.PanhardRod ? "rod" : "leaves' roll height");
        }
        return axle + "roll centre";
    }

    private static String slopes(String what, Sweep sweep, Units units) {
        double step = units == Units.METRIC ? 0.01 : Unit.of("in").toSi(0.5);
        String by = units == Units.METRIC ? "10 mm" : "0.5 in";
        List<String> moves = new ArrayList<>();
        for (Judged judged : List.of(NEAR_LIMIT, UNDERSTEER, ROLL)) {
            sweep.slope(judged).ifPresent(slope -> {
                Unit unit = units.of(judged.criterion());
                moves.add((judged.criterion().atLimit()
                                ? "the understeer near the limit"
                                : "the " + judged.criterion().name() + " " + JudgedWords.pace(judged))
                        + " by "
                        + Numbers.signed(
                                unit.fromSi(slope * step), judged.criterion().digits()) + " " + unit.symbol());
            });
        }
        return "Raising " + what + " by " + by + " from where it is moves " + String.join(", ", moves) + ".";
    }

    private static String reach(String what, Sweep sweep, Units units) {
        Sweep.Point low = sweep.points().get(0);
        Sweep.Point high = sweep.points().get(sweep.points().size() - 1);
        Function<Double, String> height = si -> units.show(si, Dimension.LENGTH, units == Units.METRIC ? 0 : 2);
        OptionalDouble from = NEAR_LIMIT.si(low.answers());
        OptionalDouble to = NEAR_LIMIT.si(high.answers());
        String range = "From " + height.apply(low.si()) + " to " + height.apply(high.si())
                + " the understeer near the limit goes from " + gradient(from, units) + " to " + gradient(to, units);
        return sweep.where(NEAR_LIMIT, 0)
                .map(si ->
                        range + "; with " + what + " at about " + height.apply(si) + " it is neutral near the limit.")
                .orElse(range
                        + ": no height in between makes it neutral near the limit; that takes springs, bars or tyres.");
    }

    private static String gradient(OptionalDouble si, Units units) {
        return si.isPresent() ? units.show(si.getAsDouble(), Criterion.NEAR_UNDERSTEER) : "no value";
    }

    private static Chart chart(Asked asked, Setup setup, Sweep sweep, Judged judged, String what) {
        Unit unit = asked.units().of(judged.criterion());
        String figure =
                judged.criterion().name() + (judged.criterion().atLimit() ? "" : " " + JudgedWords.pace(judged));
        Unit length = asked.units().of(Dimension.LENGTH);
        return CurveCharts.search(
                figure.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + figure.substring(1) + " against height",
                new CurveCharts.Quantity("height of " + what, length, asked.units() == Units.METRIC ? 0 : 2),
                new CurveCharts.Quantity(figure, unit, judged.criterion().digits()),
                new CurveCharts.Search(
                        setup.name(),
                        new SetupStyle(SideBySide.look(asked, setup.name())),
                        sweep.values(judged, Sweep.Point::si),
                        sweep.values(judged, point -> judged.si(point.answers()).orElse(Double.NaN)),
                        judged.criterion().atLimit() ? OptionalDouble.of(0) : OptionalDouble.empty(),
                        judged.criterion().atLimit()
                                ? sweep.where(judged, 0).map(List::of).orElse(List.of())
                                : List.of(),
                        OptionalDouble.of(sweep.now())));
    }

    private static Table table(Sweep sweep, Units units) {
        List<Sweep.Point> shown = sweep.someOf(5);
        Table.Builder table = new Table.Builder(shown.stream()
                .map(point -> units.show(point.si(), Dimension.LENGTH, units == Units.METRIC ? 0 : 2))
                .toList());
        table.heading("With the height at");
        for (Judged judged : List.of(NEAR_LIMIT, UNDERSTEER, ROLL, INSIDE_REAR)) {
            Unit unit = units.of(judged.criterion());
            table.row(
                    judged.criterion().name() + (judged.criterion().atLimit() ? "" : " " + JudgedWords.pace(judged)),
                    unit.symbol(),
                    shown.stream()
                            .map(point -> judged.si(point.answers()))
                            .map(si -> si.isPresent()
                                    ? Numbers.fixed(
                                            unit.fromSi(si.getAsDouble()),
                                            judged.criterion().digits())
                                    : "–")
                            .toList());
        }
        return table.build();
    }
}
