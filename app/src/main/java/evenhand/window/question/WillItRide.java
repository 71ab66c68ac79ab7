package evenhand.window.question;

import evenhand.answers.FirstStops;
import evenhand.answers.FlatRide;
import evenhand.answers.Progress;
import evenhand.answers.RideFigures;
import evenhand.bump.BodyOverHump;
import evenhand.car.End;
import evenhand.chart.Chart;
import evenhand.chart.RideCharts;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.ride.AxleRide;
import evenhand.ride.Ride;
import evenhand.ride.RideAnswer;
import evenhand.ride.RoadClass;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Verdict;
import evenhand.words.Units;
import evenhand.words.compare.RideComparisonWords;
import evenhand.words.ride.RideWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How it rides on a road: frequencies, how it follows the road, whether it pitches, travel left. */
final class WillItRide implements Question {
    private static final int SAID_FIRST = 2;

    private static final Field SPEED = SpeedField.at("80 km/h");

    /** What one set-up answers. */
    private record Riding(TurnedSetup setup, Ride ride, List<BodyOverHump.Passage> passages) {}

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
        return List.of(RoadField.ROAD, SPEED);
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
        Optional<String> noSpeed = SpeedField.refusal(asked.wish(SPEED));
        if (noSpeed.isPresent()) {
            return Reply.only(noSpeed.get());
        }
        RoadClass road = RoadField.of(asked);
        double speed = SpeedField.speed(asked.wish(SPEED));
        List<String> headlines = new ArrayList<>();
        List<Reply.Paragraph> more = new ArrayList<>();
        List<Riding> rides = new ArrayList<>();
        String base = asked.work().base();
        RideAnswer ofBase = RoadField.ride(asked, asked.base(), speed);
        for (TurnedSetup one : asked.shown()) {
            boolean foremost = one.setup().name().equals(asked.work().active());
            RideAnswer answer = RoadField.ride(asked, one, speed);
            if (answer instanceof RideAnswer.NoRide none) {
                headlines.add(Said.named(one.setup()) + ": No answer: " + none.text() + ".");
            } else if (answer instanceof Ride ride) {
                List<BodyOverHump.Passage> passages = FlatRide.over(one.standing(), ride);
                rides.add(new Riding(one, ride, passages));
                List<String> sentences = new ArrayList<>(RideWords.withoutSettings(
                        one.standing(),
                        ride,
                        FirstStops.of(one.standing()),
                        passages,
                        RoadField.words(road),
                        asked.units()));
                if (ofBase instanceof Ride before && !one.setup().name().equals(base)) {
                    sentences.add(0, RideComparisonWords.against(base, before, ride, asked.units()));
                }
                // The one that is adjusted is said large; the others are read below, and compared in the figures.
                int large = foremost ? Math.min(SAID_FIRST, sentences.size()) : 0;
                if (foremost) {
                    headlines.add(Said.named(one.setup()) + ": " + String.join(" ", sentences.subList(0, large)));
                }
                more.add(new Reply.Paragraph(one.setup().name(), sentences.subList(large, sentences.size())));
            }
        }
        more.add(new Reply.Paragraph("What the verdicts rest on", List.of(RideWords.PRACTICE)));
        return new Reply(headlines, more, charts(asked, rides), table(rides, asked.units()), List.of())
                .with(verdict(rides, asked.units()));
    }

    private static Optional<Verdict> verdict(List<Riding> rides, Units units) {
        Lines<Riding> lines = new Lines<>(rides, one -> one.setup().setup(), units, units::ofRide);
        for (End end : End.values()) {
            lines.figure(
                    end.key() + " swings",
                    "How often the body swings on its springs above this axle: near 1 a saloon at ease, 1.5 a fast road car,"
                            + " 2 and more a car for the track.",
                    RideFigures.BODY_FREQUENCY,
                    one -> Optional.of(one.ride().axle(end)));
            lines.figure(
                    end.key() + " damping",
                    "Part of the damping that would just stop the swinging: 0.2 floats, 0.3 to 0.4 is usual on the road,"
                            + " more is firm.",
                    RideFigures.BODY_DAMPING,
                    one -> Optional.of(one.ride().axle(end)));
        }
        return lines.figure(
                        "shakes the driver",
                        "What comes through to the seat's mounting on this road, weighted as people feel it: below 0.3 hardly"
                                + " felt, above 0.8 uncomfortable.",
                        RideFigures.SEAT_COMFORT,
                        one -> Optional.of(one.ride()))
                .verdict();
    }

    private static List<Chart> charts(Asked asked, List<Riding> rides) {
        List<RideCharts.Riding> riding = rides.stream()
                .map(one -> new RideCharts.Riding(
                        one.setup().setup().name(),
                        new SetupStyle(
                                SideBySide.look(asked, one.setup().setup().name())),
                        one.setup().standing(),
                        one.ride()))
                .toList();
        return Stream.of(
                        RideCharts.bodyOverRoad(riding),
                        RideCharts.tyreOverRoad(riding),
                        RideCharts.roadResponse(riding),
                        RideCharts.pitchOverHump(
                                riding, rides.stream().map(Riding::passages).toList(), asked.units()))
                .filter(chart -> !chart.isEmpty())
                .toList();
    }

    private static Table table(List<Riding> rides, Units units) {
        Columns<Riding> table = new Columns<>(rides, one -> one.setup().setup().name(), units, units::ofRide);
        for (End end : End.values()) {
            table.heading(end == End.FRONT ? "Front" : "Rear");
            RideFigures.AXLE.forEach(figure ->
                    table.figureIfAny(figure, one -> Optional.of(one.ride().axle(end))));
            RideFigures.ROAD.forEach(figure -> table.figureIfAny(
                    figure, one -> one.ride().axle(end).damped().map(AxleRide.Damped::road)));
        }
        table.heading("Where the driver sits");
        RideFigures.SEAT.forEach(
                figure -> table.figureIfAny(figure, one -> one.ride().seat()));
        return table.table();
    }
}
