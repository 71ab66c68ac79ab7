package evenhand.window.question;

import evenhand.answers.Figure;
import evenhand.answers.Progress;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.chart.Chart;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.linkage.AxleMotion;
import evenhand.linkage.AxleState;
import evenhand.linkage.Ranges;
import evenhand.linkage.TravelLimit;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.question.LinkFigure.Guided;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.travel.PlaceWords;
import evenhand.words.travel.TravelWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An axle moved through its travel on the links that were measured: what it does there, and what ends it. */
final class WhatTheLinksDo implements Question {
    @Override
    public String key() {
        return "links";
    }

    @Override
    public Group group() {
        return Group.LINKS;
    }

    @Override
    public String words() {
        return "What do the links do?";
    }

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    @Override
    public List<Field> fields(Asking asking) {
        Setup active = asking.work().activeSetup();
        List<Field> fields = new ArrayList<>(List.of(axleField(active.car())));
        End end = end(asking);
        Optional<LinkedAxle> linked = active.car().linked(end);
        if (linked.isEmpty()) {
            return fields;
        }
        Field motion = motionField(linked.get());
        fields.add(motion);
        Moved moved = moved(asking, linked.get());
        fields.add(slideField(asking, active.car(), end, moved));
        fields.addAll(figureFields(linked.get(), moved));
        return fields;
    }

    private static Field axleField(Car car) {
        boolean frontOnly =
                car.front().links().isPresent() && car.rear().links().isEmpty();
        return new Field(
                "axle", "axle", List.of(End.REAR.key(), End.FRONT.key()), (frontOnly ? End.FRONT : End.REAR).key());
    }

    private static String wish(Asking asking, Field field) {
        return asking.wish(field.key()).orElse(field.start());
    }

    private static End end(Asking asking) {
        Field field = axleField(asking.work().activeSetup().car());
        return wish(asking, field).equals(End.FRONT.key()) ? End.FRONT : End.REAR;
    }

    private static Guided guided(LinkedAxle linked) {
        return linked instanceof LinkedLiveAxle
                ? Guided.LIVE
                : linked.stance().end() == End.FRONT ? Guided.STEERED : Guided.WHEELS;
    }

    private static Field motionField(LinkedAxle linked) {
        Guided guided = guided(linked);
        List<String> choices = Arrays.stream(Moved.values())
                .filter(moved -> guided == Guided.STEERED || moved != Moved.STEER)
                .map(moved -> moved.words)
                .toList();
        return new Field("motion " + guided.key(), "through", choices, Moved.HEAVE.words);
    }

    private static Moved moved(Asking asking, LinkedAxle linked) {
        String chosen = wish(asking, motionField(linked));
        return Arrays.stream(Moved.values())
                .filter(moved -> moved.words.equals(chosen))
                .findFirst()
                .orElse(Moved.HEAVE);
    }

    private static Field slideField(Asking asking, Car car, End end, Moved moved) {
        Ranges range = Ranges.of(car.settled().axle(end).stops());
        Unit unit = asking.units().of(moved.dimension());
        boolean inches = !moved.motion.isAngle() && asking.units() != Units.METRIC;
        double step = moved == Moved.STEER ? 1 : moved == Moved.ROLL ? 0.1 : inches ? 0.05 : 1;
        return Field.sliding(
                "place " + end.key() + " " + moved.words,
                moved.slide,
                new Slide(
                        -unit.fromSi(moved.motion.furthest(range, false)),
                        unit.fromSi(moved.motion.furthest(range, true)),
                        step,
                        unit,
                        inches ? 2 : 1));
    }

    /** The two figures that are drawn over the travel, with what is most telling at first. */
    private static List<Field> figureFields(LinkedAxle linked, Moved moved) {
        Guided guided = guided(linked);
        List<String> all = LinkFigure.words(LinkFigure.of(guided));
        String first = guided == Guided.LIVE ? "roll centre" : moved == Moved.STEER ? "share of Ackermann" : "toe";
        String second = guided != Guided.LIVE
                ? "camber"
                : moved != Moved.HEAVE
                        ? "axle steer"
                        : ((LinkedLiveAxle) linked).propShaft().isPresent() ? "pinion slope" : "axle to the left";
        return List.of(
                new Field("first " + guided.key(), "curves of", all, first).beginningALine(),
                new Field("second " + guided.key(), "and of", all, second));
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.ofLinks(active);
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        End end = end(asked.asking());
        TurnedSetup active = asked.active();
        Optional<LinkedAxle> linked = Posed.car(asked, active).linked(end);
        if (linked.isEmpty()) {
            return NotMeasured.reply(active.setup().car(), List.of(end));
        }
        Moved moved = moved(asked.asking(), linked.get());
        Field slide = slideField(asked.asking(), active.setup().car(), end, moved);
        Slide track = slide.slide().orElseThrow();
        double place = track.unit().toSi(track.number(wish(asked.asking(), slide)));
        Posed leading = Posed.at(asked, active, linked.get(), moved.motion, place);
        List<Posed> all = new ArrayList<>();
        List<String> without = new ArrayList<>();
        for (TurnedSetup one : asked.shown()) {
            if (one.setup().name().equals(active.setup().name())) {
                all.add(leading);
                continue;
            }
            Posed.car(asked, one)
                    .linked(end)
                    .ifPresentOrElse(
                            axle -> all.add(Posed.at(asked, one, axle, moved.motion, place)),
                            () -> without.add(Said.named(one.setup())));
        }
        if (!all.contains(leading)) {
            all.add(0, leading);
        }
        List<LinkFigure> figures = LinkFigure.of(guided(linked.get()));
        List<Chart> charts = figureFields(linked.get(), moved).stream()
                .map(field -> LinkFigure.named(figures, wish(asked.asking(), field)))
                .map(figure -> LinkPictures.chart(asked, figure, moved, all, leading))
                .toList();
        return new Reply(
                headlines(asked, leading, moved, place),
                paragraphs(asked, all, leading, without),
                charts,
                LinkPictures.drawings(asked, leading, moved),
                table(asked.units(), all, figures, moved, place),
                List.of());
    }

    private static List<String> headlines(Asked asked, Posed leading, Moved moved, double wanted) {
        Units units = asked.units();
        List<String> headlines = new ArrayList<>();
        String name = asked.shown().size() > 1 ? Said.named(leading.setup()) + ": " : "";
        headlines.add(name + TravelWords.of(leading.travel(), units).get(0));
        List<String> here = new ArrayList<>();
        here.add(PlaceWords.sentence(leading.travel(), moved.motion, leading.place(), leading.state(), units));
        if (leading.place() != wanted) {
            here.add("The links reach no further than this.");
        }
        List<String> passed = PlaceWords.together(leading.passed(moved.motion)).stream()
                .map(PlaceWords.Together::words)
                .distinct()
                .toList();
        if (!passed.isEmpty()) {
            here.add("Beyond a limit here: " + String.join(", ", passed) + ".");
        }
        headlines.add(String.join(" ", here));
        headlines.addAll(PlaceWords.stops(leading.travel(), moved.motion, units));
        return headlines;
    }

    private static List<Reply.Paragraph> paragraphs(Asked asked, List<Posed> all, Posed leading, List<String> without) {
        List<Reply.Paragraph> paragraphs = new ArrayList<>();
        for (Posed one : all) {
            Optional<Posed> like = all.stream()
                    .takeWhile(other -> !other.is(one))
                    .filter(other ->
                            other.travel().followed().equals(one.travel().followed()))
                    .findFirst();
            List<String> sentences = new ArrayList<>(
                    like.isPresent()
                            ? List.of("Its links do what they do in "
                                    + Said.named(like.get().setup()) + ".")
                            : TravelWords.of(one.travel(), asked.units()));
            if (like.isEmpty()) {
                AxleMotion.ROLL
                        .limits(one.travel().followed())
                        .forEach(limit -> sentences.add(TravelWords.limit(limit, asked.units())));
                one.travel()
                        .followed()
                        .clearances()
                        .forEach(gap -> sentences.add("Gap \"" + gap.name() + "\": " + gap(gap.rest(), asked.units())
                                + " at rest, " + gap(gap.least(), asked.units()) + " at least."));
            }
            paragraphs.add(new Reply.Paragraph(one.setup().name(), sentences));
        }
        if (!without.isEmpty()) {
            paragraphs.add(new Reply.Paragraph(
                    "Not measured",
                    List.of("The " + leading.travel().end().key() + " links of " + String.join(", ", without)
                            + " have no points, so nothing is shown of them.")));
        }
        paragraphs.add(new Reply.Paragraph(
                "In the drawings",
                List.of(
                        "The body stands still and the wheels move; thin outlines are the wheels at rest. A dot is a joint on"
                                + " the body, a ring one that moves. The broken line is the force line: along it a side force moves"
                                + " nothing.",
                        "A joint can be pulled to where a bracket would be, or moved by the arrow keys, a millimetre or with Shift ten at"
                                + " a time; Page Up and Page Down choose another. Its place and the figures that it moves at rest stand"
                                + " beside it.")));
        return paragraphs;
    }

    private static String gap(double si, Units units) {
        return units.show(si, Dimension.LENGTH, units == Units.METRIC ? 1 : 2);
    }

    private static Table table(Units units, List<Posed> all, List<LinkFigure> figures, Moved moved, double place) {
        Columns<Posed> table =
                new Columns<>(all, one -> one.setup().name(), units, figure -> LinkFigure.unit(figure, units));
        String where = PlaceWords.of(moved.motion, place, units);
        table.heading(where.substring(0, 1).toUpperCase(Locale.ROOT) + where.substring(1));
        for (LinkFigure figure : figures) {
            boolean pair = figure.right().isPresent();
            row(table, figure.words() + (pair ? ", left" : ""), figure.left());
            figure.right().ifPresent(right -> row(table, figure.words() + ", right", right));
        }
        if (all.stream().allMatch(one -> one.travel().followed().limits().isEmpty())) {
            return table.table();
        }
        table.heading("What ends the travel first");
        for (boolean up : new boolean[] {true, false}) {
            for (AxleMotion motion : List.of(AxleMotion.HEAVE, AxleMotion.ROLL)) {
                TravelLimit.Motion way = motion.way(up).orElseThrow();
                String unit =
                        motion.isAngle() ? "deg" : units.of(Dimension.LENGTH).symbol();
                table.rowIfAny(
                        way(way),
                        unit,
                        one -> PlaceWords.together(motion.limits(one.travel().followed())).stream()
                                .filter(limit -> limit.first().motion() == way)
                                .findFirst()
                                .map(limit -> Numbers.fixed(
                                                units.of(motion.isAngle() ? Dimension.ANGLE : Dimension.LENGTH)
                                                        .fromSi(limit.first().at()),
                                                units == Units.METRIC ? 1 : 2)
                                        + ", " + limit.words())
                                .orElse(Table.NOTHING));
            }
        }
        return table.table();
    }

    private static String way(TravelLimit.Motion way) {
        return switch (way) {
            case BUMP -> "bump";
            case DROOP -> "droop";
            case ROLL_RIGHT -> "roll, right side down";
            case ROLL_LEFT -> "roll, left side down";
        };
    }

    private static void row(Columns<Posed> table, String words, Figure<AxleState> figure) {
        table.figureIfAny(words, figure, one -> Optional.of(one.state()));
    }
}
