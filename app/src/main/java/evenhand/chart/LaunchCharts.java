package evenhand.chart;

import evenhand.car.Car;
import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Mark;
import evenhand.chart.Part.Point;
import evenhand.chart.Part.Rule;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.straight.Driving;
import evenhand.turn.Wheel;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/** What grip and gears give off the line, and what the wheels carry there. */
public final class LaunchCharts {
    private static final Unit G = Unit.of("g");
    private static final String TOO_MUCH = "more than grip allows";

    private LaunchCharts() {}

    /** A set-up that pulls away, at rest with its load. */
    public record Launching(String name, SetupStyle style, Car car, Driving.Answer answer) {
        private Optional<Driving.Launch> launch() {
            return answer.launch();
        }

        private OptionalDouble grip() {
            return launch().map(Driving.Launch::grip).orElseGet(OptionalDouble::empty);
        }

        private Optional<Driving.Pulls> pulls(int gear) {
            return answer.gears().stream()
                    .filter(one -> one.gear() == gear)
                    .findFirst()
                    .flatMap(Driving.Gear::pull);
        }
    }

    /** Acceleration off the line that grip allows: as it is, and through other differentials. */
    public static Chart grip(List<Launching> cars) {
        Map<String, Function<Launching, OptionalDouble>> limits = new LinkedHashMap<>();
        limits.put("as it is", Launching::grip);
        limits.put("differential open", car -> car.answer().openGrip());
        limits.put("locked", car -> car.answer().lockedGrip());
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        limits.forEach((words, reading) -> {
            for (int lane = 0; lane < cars.size(); lane++) {
                OptionalDouble limit = reading.apply(cars.get(lane));
                if (limit.isPresent()) {
                    parts.add(bar(rows.size(), lane, cars, G.fromSi(limit.getAsDouble()), said(limit.getAsDouble())));
                }
            }
            rows.add(new Axis.Row(words, ""));
        });
        return chart("What grip allows off the line", "acceleration", G, 3, rows, parts, List.of());
    }

    /** Acceleration of each gear at the engine's best torque against what grip allows off the line. */
    public static Chart gears(List<Launching> cars) {
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        int gears =
                cars.stream().mapToInt(car -> car.answer().gears().size()).max().orElse(0);
        for (int gear = 1; gear <= gears; gear++) {
            boolean pulls = false;
            for (int lane = 0; lane < cars.size(); lane++) {
                Optional<Driving.Pulls> pull = cars.get(lane).pulls(gear);
                if (pull.isPresent()) {
                    gear(rows.size(), lane, cars, pull.get(), parts);
                    pulls = true;
                }
            }
            if (pulls) {
                rows.add(new Axis.Row("gear " + gear, ""));
            }
        }
        return chart("What each gear gives", "acceleration at the engine's best torque", G, 3, rows, parts, List.of());
    }

    /** A bar for what a gear gives; what is more than grip allows stands apart in it. */
    private static void gear(int row, int lane, List<Launching> cars, Driving.Pulls pull, List<Part> parts) {
        Launching car = cars.get(lane);
        double all = G.fromSi(pull.acceleration());
        double grip = G.fromSi(car.grip().orElse(pull.acceleration()));
        String words = said(pull.acceleration());
        if (all <= grip) {
            parts.add(bar(row, lane, cars, all, words));
            return;
        }
        parts.add(bar(row, lane, cars, grip, ""));
        parts.add(new Bar(row, lane, cars.size(), car.name(), TOO_MUCH, car.style(), Hatch.RISING, grip, all, words));
    }

    private static String said(double acceleration) {
        return Units.exactPace(acceleration);
    }

    private static Bar bar(int row, int lane, List<Launching> cars, double value, String words) {
        Launching car = cars.get(lane);
        return new Bar(row, lane, cars.size(), car.name(), "", car.style(), Hatch.FULL, 0, value, words);
    }

    /** What each wheel carries as it pulls away, a stroke where it carries at rest. */
    public static Chart wheelLoads(List<Launching> cars, Units units) {
        Unit unit = units.of(Dimension.FORCE);
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        List<Part> atRest = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            for (int lane = 0; lane < cars.size(); lane++) {
                Launching car = cars.get(lane);
                if (car.launch().isPresent()) {
                    double load = car.launch()
                            .get()
                            .state()
                            .wheels()
                            .get(wheel.index())
                            .load();
                    Bar bar = bar(rows.size(), lane, cars, unit.fromSi(load), units.show(load, Dimension.FORCE, 0));
                    parts.add(bar);
                    double rest = car.car().staticLoad(wheel.end(), wheel.side());
                    atRest.add(new Mark(
                            Mark.Kind.LIMIT,
                            car.name(),
                            SetupStyle.PLAIN,
                            new Point(unit.fromSi(rest), bar.middle()),
                            ""));
                }
            }
            rows.add(new Axis.Row(wheel.words(), ""));
        }
        parts.addAll(atRest);
        return chart(
                "What the wheels carry off the line",
                "wheel load",
                unit,
                0,
                rows,
                parts,
                List.of("Stroke: what the wheel carries at rest."));
    }

    private static Chart chart(
            String title,
            String words,
            Unit unit,
            int digits,
            List<Axis.Row> rows,
            List<Part> parts,
            List<String> notes) {
        Span span = Span.around(parts.stream()
                        .flatMapToDouble(part -> part instanceof Bar bar
                                ? DoubleStream.of(bar.to())
                                : part instanceof Mark mark
                                        ? DoubleStream.of(mark.at().x())
                                        : DoubleStream.empty()))
                .including(0)
                .loosened(0.2)
                .rounded();
        List<Part> all = new ArrayList<>(parts);
        all.add(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        return new Chart(title, Axis.Measure.of(words, unit, digits, span), new Axis.Rows("", rows), all, notes);
    }
}
