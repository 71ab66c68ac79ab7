package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.car.End;
import evenhand.chart.Chart;
import evenhand.chart.DamperCharts;
import evenhand.chart.DamperCharts.Damped;
import evenhand.chart.RideCharts.Riding;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.DamperChoice;
import evenhand.ride.DamperChoice.Fitted;
import evenhand.ride.Ride;
import evenhand.ride.RideAnswer;
import evenhand.ride.RoadClass;
import evenhand.scenario.ScenarioWriter;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.EventWords;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.ride.DamperWords;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Which setting the dampers should have on this spring, and what one click costs in comfort and in grip. */
final class WhichDamper implements Question {
    private static final Field SPEED = SpeedField.at("80 km/h");

    /** A set-up that rides, and what its dampers can be set to. */
    private record Choosing(TurnedSetup setup, Riding riding, Map<End, DamperChoice> choices) {
        Damped at(End end) {
            return new Damped(riding, choice(end));
        }

        DamperChoice choice(End end) {
            return java.util.Objects.requireNonNull(choices.get(end));
        }
    }

    @Override
    public String key() {
        return "damper";
    }

    @Override
    public Group group() {
        return Group.RIDE;
    }

    @Override
    public String words() {
        return "Which damper setting?";
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
                        "front.damper.motionRatio",
                        "rear.damper.motionRatio",
                        "front.damper.lean",
                        "rear.damper.lean"));
    }

    @Override
    public boolean drawsTheCar() {
        return false;
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
        List<Choosing> choosing = new ArrayList<>();
        List<Reply.Next> next = new ArrayList<>();
        for (TurnedSetup one : asked.shown()) {
            RideAnswer answer = RoadField.ride(asked, one, speed);
            if (answer instanceof RideAnswer.NoRide none) {
                headlines.add(Said.named(one.setup()) + ": No answer: " + none.text() + ".");
            } else if (answer instanceof Ride ride) {
                Choosing own = choosing(asked, one, ride);
                choosing.add(own);
                if (one.setup().name().equals(asked.work().active())) {
                    headlines.add(Said.named(one.setup()) + ", on " + RoadField.words(road) + " at " + asked.wish(SPEED)
                            + ":");
                    for (End end : End.values()) {
                        headlines.add(DamperWords.verdict(one.standing(), ride, end, own.choice(end), asked.units()));
                    }
                    next = next(asked, own);
                }
                said(own, more, asked.units());
            }
        }
        more.add(new Reply.Paragraph("What the verdicts rest on", List.of(DamperWords.BASIS)));
        return new Reply(headlines, more, charts(asked, choosing), table(choosing, asked.units()), next);
    }

    private static Choosing choosing(Asked asked, TurnedSetup one, Ride ride) {
        Map<End, DamperChoice> choices = new EnumMap<>(End.class);
        for (End end : End.values()) {
            choices.put(end, DamperChoice.of(one.standing(), ride.axle(end), ride.road(), ride.speed()));
        }
        String name = one.setup().name();
        return new Choosing(
                one, new Riding(name, new SetupStyle(SideBySide.look(asked, name)), one.standing(), ride), choices);
    }

    /** All that is to be said of a set-up; of one like an earlier one, that it is. */
    private static void said(Choosing own, List<Reply.Paragraph> more, Units units) {
        List<String> sentences = new ArrayList<>();
        for (End end : End.values()) {
            sentences.addAll(DamperWords.of(own.setup().standing(), own.riding().ride(), end, own.choice(end), units));
        }
        Optional<String> alike = more.stream()
                .filter(before -> before.sentences().equals(sentences))
                .map(Reply.Paragraph::heading)
                .findFirst();
        more.add(new Reply.Paragraph(
                own.riding().name(),
                alike.map(name -> List.of("The dampers do here what they do in \"" + name + "\"."))
                        .orElse(sentences)));
    }

    private static List<Chart> charts(Asked asked, List<Choosing> choosing) {
        List<Chart> charts = new ArrayList<>();
        for (End end : End.values()) {
            charts.add(DamperCharts.comfortAgainstGrip(damped(choosing, end), end));
        }
        for (End end : End.values()) {
            Chart forces =
                    DamperCharts.forces(damped(choosing, end), end, asked.work().active(), asked.units());
            if (!forces.isEmpty()) {
                charts.add(forces);
            }
        }
        return choosing.isEmpty() ? List.of() : charts;
    }

    private static List<Damped> damped(List<Choosing> choosing, End end) {
        return choosing.stream().map(one -> one.at(end)).toList();
    }

    /** A row for every setting, as set-ups need not have the same. */
    private static Table table(List<Choosing> choosing, Units units) {
        Unit rate = units.of(Dimension.DAMPING);
        Table.Builder table = new Table.Builder(List.of(
                "body ratio",
                "in bump",
                "in rebound",
                "wheel ratio",
                "rate, " + InPrint.symbol(rate),
                "felt above the axle, m/s²",
                "tyre load, %"));
        for (End end : End.values()) {
            Map<List<Table.Row>, List<String>> owners = new LinkedHashMap<>();
            for (Choosing own : choosing) {
                List<Table.Row> rows = own.choice(end).settings().stream()
                        .map(one -> row(one, rate, units))
                        .toList();
                owners.computeIfAbsent(rows, key -> new ArrayList<>())
                        .add(own.riding().name());
            }
            String where = end == End.FRONT ? "Front" : "Rear";
            owners.forEach((rows, names) -> {
                if (!rows.isEmpty()) {
                    table.heading(owners.size() > 1 ? where + ", " + String.join("; ", names) : where);
                    rows.forEach(row -> table.row(row.words(), row.unit(), row.cells()));
                }
            });
        }
        Table figures = table.build();
        return figures.lines().isEmpty() ? Table.NONE : figures;
    }

    private static Table.Row row(Fitted one, Unit rate, Units units) {
        return new Table.Row(
                one.name().orElse("as it is") + (one.set() && one.name().isPresent() ? ", set now" : ""),
                "",
                List.of(
                        Numbers.fixed(one.bodyRatio(), 2),
                        Numbers.fixed(one.bySpeed().bump(), 2),
                        Numbers.fixed(one.bySpeed().rebound(), 2),
                        Numbers.fixed(one.hopRatio(), 2),
                        Numbers.fixed(rate.fromSi(one.point().dampingRate()), units == Units.METRIC ? 0 : 1),
                        Numbers.fixed(one.point().weightedAcceleration(), 3),
                        Numbers.fixed(Unit.of("%").fromSi(one.point().tyreLoadVariation()), 1)));
    }

    /** The settings that are best for comfort and for grip, each an act where it is not set. */
    private static List<Reply.Next> next(Asked asked, Choosing own) {
        List<Reply.Next> next = new ArrayList<>();
        for (End end : End.values()) {
            DamperChoice choice = own.choice(end);
            Optional<Fitted> comfort = choice.forComfort();
            Optional<Fitted> grip = choice.forGrip();
            if (comfort.isPresent() && comfort.equals(grip)) {
                next(asked, end, choice, comfort.get(), "for comfort and for grip")
                        .ifPresent(next::add);
            } else {
                comfort.flatMap(one -> next(asked, end, choice, one, "for comfort"))
                        .ifPresent(next::add);
                grip.flatMap(one -> next(asked, end, choice, one, "for grip")).ifPresent(next::add);
            }
        }
        return next;
    }

    private static Optional<Reply.Next> next(Asked asked, End end, DamperChoice choice, Fitted one, String why) {
        if (one.set() || one.name().isEmpty()) {
            return Optional.empty();
        }
        String where = EventWords.end(end);
        String words = "set the " + where + " dampers to " + DamperWords.named(one) + " " + why
                + choice.now()
                        .map(now -> ": the body above the axle shakes with " + DamperWords.comfortAgainst(one, now)
                                + ", " + DamperWords.gripAgainst(one, now))
                        .orElse("");
        return Optional.of(new Reply.Next(
                words,
                Optional.of(new EditAct.SetJson(
                        Optional.of(asked.work().active()),
                        where + ".damper.setting",
                        ScenarioWriter.quoted(one.name().get())))));
    }
}
