package evenhand.chart;

import evenhand.answers.Balance;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.car.End;
import evenhand.choice.Effect;
import evenhand.look.SetupStyle;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.straight.Driving;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Charts of the demo cars. */
final class DemoCharts {
    static final double BRISK = Unit.of("g").toSi(0.5);
    static final List<Double> PACES = List.of(Unit.of("g").toSi(0.2), BRISK);
    static final double RADIUS = 40;

    private DemoCharts() {}

    static List<Shown> shown(String demo, Direction direction) {
        List<Shown> cars = new ArrayList<>();
        for (Setup setup : Demo.read(demo).setups()) {
            cars.add(Shown.of(
                    setup.name(), cars.size(), setup.car(), Balance.of(setup.car(), PACES, RADIUS, direction)));
        }
        return cars;
    }

    static TurnAnswer.Turns turn(Shown car) {
        return (TurnAnswer.Turns) car.turn();
    }

    /** Every chart that can be made of these cars. */
    static Map<String, Chart> all(List<Shown> cars, Units units) {
        Map<String, Chart> charts = new LinkedHashMap<>();
        charts.put("steer", TurnCharts.steer(cars, units));
        charts.put("understeer gradient", TurnCharts.understeerGradient(cars, units));
        charts.put("grip used", TurnCharts.gripUsed(cars, units));
        charts.put("grip in hand", NearLimit.gripInHand(cars, units));
        charts.put(
                "understeer from base",
                TurnCharts.understeerFromBase(cars, cars.get(0).name(), units));
        charts.put("wheel loads", TurnCharts.wheelLoads(cars, units));
        charts.put("front wheel loads", TurnCharts.wheelLoads(cars, End.FRONT, units));
        charts.put("roll", TurnCharts.roll(cars, units));
        charts.put("sideslip", TurnCharts.sideslip(cars, units));
        charts.put("load transfer", CauseCharts.loadTransfer(cars, BRISK, units));
        charts.put("budget", CauseCharts.budget(cars, BRISK, units));
        charts.put("brake forces", BrakeCharts.forces(stopping(cars), units));
        charts.put("adhesion used", BrakeCharts.adhesion(stopping(cars), units));
        charts.put("grip at launch", LaunchCharts.grip(launching(cars)));
        charts.put("wheels at launch", LaunchCharts.wheelLoads(launching(cars), units));
        charts.put("search", search(units));
        charts.put("frequencies", frequencies(units));
        return charts;
    }

    static List<BrakeCharts.Stopping> stopping(List<Shown> cars) {
        Braking.Asked asked = new Braking.Asked(List.of(), List.of(), List.of(), 20, true);
        return cars.stream()
                .map(car -> new BrakeCharts.Stopping(car.name(), car.style(), new Braking(car.car()).answer(asked)))
                .toList();
    }

    static List<LaunchCharts.Launching> launching(List<Shown> cars) {
        return cars.stream()
                .map(car -> new LaunchCharts.Launching(
                        car.name(), car.style(), car.car(), new Driving(car.car()).answer(20)))
                .toList();
    }

    static Chart effects(String demo, int most, Units units) {
        Setup setup = Demo.read(demo).setups().get(0);
        Trial trial = new Trial(PACES, RADIUS, Direction.LEFT);
        List<Effect> effects = Effect.each(setup.entries(), trial, trial.ask(setup.car()));
        Judged understeer = new Judged(Criterion.UNDERSTEER, OptionalDouble.of(BRISK));
        return EffectCharts.effects(setup.name(), new SetupStyle(0), effects, understeer, most, units);
    }

    static Chart search(Units units) {
        double[] height = {0.2, 0.25, 0.3};
        double[] gradient = {0.006, 0.004, 0.001};
        return CurveCharts.search(
                "Understeer against the locator's height",
                new CurveCharts.Quantity(
                        "rear lateral locator height", units.of(evenhand.quantity.Dimension.LENGTH), 1),
                new CurveCharts.Quantity("understeer gradient at 0.5 g", Unit.of("deg/g"), 2),
                new CurveCharts.Search(
                        "As bought",
                        new SetupStyle(0),
                        height,
                        gradient,
                        OptionalDouble.of(0.005),
                        List.of(0.225),
                        OptionalDouble.of(0.21)));
    }

    static Chart frequencies(Units units) {
        double[] frequency = {0.5, 1, 2, 5, 10, 20};
        double[] front = {1.1, 1.8, 1.2, 0.4, 0.2, 0.05};
        double[] less = {1.0, 1.5, 1.0, 0.3, 0.1, 0.02};
        double[] more = {1.2, 2.1, 1.4, 0.5, 0.3, 0.08};
        CurveCharts.Quantity across = new CurveCharts.Quantity("frequency", Unit.of("Hz"), 2);
        CurveCharts.Quantity up =
                new CurveCharts.Quantity("body over road", units.of(evenhand.quantity.Dimension.RATIO), 0);
        CurveCharts.Curve curve = new CurveCharts.Curve("As bought", "front", new SetupStyle(0), frequency, front);
        return CurveCharts.overFrequency("How the body follows the road", across, up, List.of(curve))
                .behind(List.of(CurveCharts.band(curve, less, more, across, up)));
    }
}
