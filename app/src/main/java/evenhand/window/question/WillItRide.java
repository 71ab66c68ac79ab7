package evenhand.window.question;

import evenhand.answers.Figure;
import evenhand.answers.FirstStops;
import evenhand.answers.Progress;
import evenhand.answers.RideFigures;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.chart.Chart;
import evenhand.chart.RideCharts;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.BodyOverHump;
import evenhand.ride.Ride;
import evenhand.ride.RideAnswer;
import evenhand.ride.RoadClass;
import evenhand.ride.RoadResponse;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Figures;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.Numbers;
import evenhand.words.RideWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** How it rides on a road: frequencies, damping, travel left, comfort against grip. */
final class WillItRide implements Question {
    private static final int SAID_FIRST = 2;

    private static final Field ROAD = new Field(
            "road",
            "on a road of class",
            Arrays.stream(RoadClass.values()).map(Enum::name).toList(),
            "B");
    private static final Field SPEED = new Field("speed", "at", List.of(), "80 km/h");

    private static final List<Double> HUMP_SPEEDS = Stream.iterate(30, kmh -> kmh <= 130, kmh -> kmh + 10)
            .map(kmh -> Unit.of("km/h").toSi(kmh))
            .toList();

    @Override
    public String key() {
        return "ride";
    }

    @Override
    public String words() {
        return "Will it ride?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return List.of(ROAD, SPEED);
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.here(
                active,
                Stream.of(
                        "front.spring.rate",
                        "rear.spring.rate",
                        "front.lowered",
                        "rear.lowered",
                        "front.bumpStop.gap",
                        "rear.bumpStop.gap"));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        RoadClass road = RoadClass.valueOf(asked.wish(ROAD));
        double speed;
        try {
            speed = Quantity.parse(asked.wish(SPEED), Dimension.SPEED).si();
        } catch (QuantityException wrong) {
            return Reply.only("The speed " + wrong.getMessage() + ".");
        }
        if (!(speed > 0)) {
            return Reply.only("The speed must be above zero, for example 80 km/h.");
        }
        List<String> headlines = new ArrayList<>();
        List<Reply.Paragraph> more = new ArrayList<>();
        Map<TurnedSetup, Ride> rides = new LinkedHashMap<>();
        for (TurnedSetup one : asked.shown()) {
            boolean foremost = one.setup().name().equals(asked.work().active());
            RideAnswer answer = Ride.of(one.standing(), road, speed);
            if (answer instanceof RideAnswer.NoRide none) {
                headlines.add(Said.named(one.setup()) + ": No answer: " + none.text() + ".");
            } else if (answer instanceof Ride ride) {
                rides.put(one, ride);
                List<String> sentences = words(one.standing(), ride, road, asked.units());
                // The one that is adjusted is said large; the others are read below, and compared in the figures.
                int large = foremost ? Math.min(SAID_FIRST, sentences.size()) : 0;
                if (foremost) {
                    headlines.add(Said.named(one.setup()) + ": " + String.join(" ", sentences.subList(0, large)));
                }
                more.add(new Reply.Paragraph(one.setup().name(), sentences.subList(large, sentences.size())));
            }
        }
        more.add(new Reply.Paragraph("What the verdicts rest on", List.of(RideWords.PRACTICE)));
        return new Reply(headlines, more, charts(asked, rides), table(rides, asked.units()), List.of());
    }

    private static List<String> words(Car car, Ride ride, RoadClass road, Units units) {
        return RideWords.of(
                car,
                ride,
                FirstStops.of(car),
                BodyOverHump.over(car, ride, 0.02, 1.0, HUMP_SPEEDS),
                "a class " + road.name() + " road (" + RideWords.like(road) + ")",
                units);
    }

    private static List<Chart> charts(Asked asked, Map<TurnedSetup, Ride> rides) {
        List<RideCharts.Riding> riding = rides.entrySet().stream()
                .map(one -> new RideCharts.Riding(
                        one.getKey().setup().name(),
                        new SetupStyle(
                                SideBySide.index(asked, one.getKey().setup().name())),
                        one.getKey().standing(),
                        one.getValue()))
                .toList();
        return List.of(
                RideCharts.comfortAgainstGrip(riding, End.FRONT),
                RideCharts.comfortAgainstGrip(riding, End.REAR),
                RideCharts.bodyOverRoad(riding),
                RideCharts.tyreOverRoad(riding),
                RideCharts.roadResponse(riding));
    }

    private static Figures table(Map<TurnedSetup, Ride> rides, Units units) {
        Figures.Builder table = new Figures.Builder(
                rides.keySet().stream().map(one -> one.setup().name()).toList());
        for (End end : End.values()) {
            table.heading(end == End.FRONT ? "Front" : "Rear");
            for (Figure<AxleRide> figure : RideFigures.AXLE) {
                row(table, figure, rides, units, ride -> Optional.of(ride.axle(end)));
            }
            for (Figure<RoadResponse> figure : RideFigures.ROAD) {
                row(table, figure, rides, units, ride -> ride.axle(end).damped().map(AxleRide.Damped::road));
            }
        }
        return table.build();
    }

    private static <T> void row(
            Figures.Builder table,
            Figure<T> figure,
            Map<TurnedSetup, Ride> rides,
            Units units,
            Function<Ride, Optional<T>> part) {
        Unit unit = units.of(figure.dimension());
        List<String> cells = new ArrayList<>();
        for (Ride ride : rides.values()) {
            OptionalDouble value =
                    part.apply(ride).map(own -> figure.in(unit, own)).orElse(OptionalDouble.empty());
            cells.add(value.isPresent() ? Numbers.fixed(value.getAsDouble(), units.digits(figure)) : "–");
        }
        if (cells.stream().anyMatch(cell -> !cell.equals("–"))) {
            table.row(figure.words(), figure.symbol(unit), cells);
        }
    }
}
