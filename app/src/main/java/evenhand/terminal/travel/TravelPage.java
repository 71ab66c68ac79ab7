package evenhand.terminal.travel;

import evenhand.answers.Figure;
import evenhand.answers.TravelFigures;
import evenhand.car.Side;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.forms.Table;
import evenhand.linkage.AxleState;
import evenhand.linkage.LinkAnswer;
import evenhand.linkage.LinkSlopes;
import evenhand.linkage.TravelLimit;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.travel.AxleTravel;
import evenhand.words.travel.TravelWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The answers of {@code travel} for people: in words, then a table for each motion, links and limits. */
final class TravelPage {
    private final Page page;
    private final Units units;
    private final TravelReply reply;

    TravelPage(Console console, Units units, TravelReply reply) {
        this.page = new Page(console);
        this.units = units;
        this.reply = reply;
    }

    /** A column: its head, and what stands in it. */
    private record Column(String head, Function<AxleState, String> cell) {}

    String write() {
        page.title(reply.scenario().title());
        for (TravelReply.SetupTravel setup : reply.setups()) {
            page.heading(setup.setup().name());
            setup.setup().note().ifPresent(note -> page.paragraph("  ", "(" + note + ")"));
            for (AxleTravel axle : setup.axles()) {
                page.sentences(alike(setup, axle)
                        .map(other ->
                                List.of("Its " + axle.end().key() + " links do what they do in \"" + other + "\"."))
                        .orElseGet(() -> TravelWords.of(axle, units)));
            }
        }
        for (TravelReply.SetupTravel setup : reply.setups()) {
            setup.axles().stream()
                    .filter(axle -> alike(setup, axle).isEmpty())
                    .forEach(axle ->
                            tables(setup.setup().name() + ", " + axle.end().key(), axle));
        }
        SetupNotes notes = new SetupNotes(page, units);
        notes.estimated(reply.setups());
        List<Setup> asked =
                reply.setups().stream().map(TravelReply.SetupTravel::setup).toList();
        notes.notGiven(asked);
        return page.text();
    }

    /** The first of the set-ups before this one whose axle does the same to the last digit. */
    private Optional<String> alike(TravelReply.SetupTravel setup, AxleTravel axle) {
        return reply.setups().stream()
                .takeWhile(other -> !other.setup().name().equals(setup.setup().name()))
                .filter(other ->
                        other.axle(axle.end()).map(AxleTravel::followed).equals(Optional.of(axle.followed())))
                .map(other -> other.setup().name())
                .findFirst();
    }

    private void tables(String whose, AxleTravel axle) {
        boolean live = axle.linked() instanceof LinkedLiveAxle;
        List<Column> both = live ? liveColumns() : wheelColumns();
        List<Column> apart = live ? liveColumns() : eachWheelColumns();
        motion(whose + ": heave", axle.followed().heave(), this::travel, both);
        motion(whose + ": roll, right side down positive", axle.followed().roll(), state -> roll(axle, state), apart);
        motion(whose + ": left wheel alone", axle.followed().oneWheel(), this::travel, apart);
        motion(whose + ": steer", axle.followed().steer(), TravelPage::steer, steerColumns());
        links(whose, axle);
        limits(whose, axle);
    }

    private void motion(
            String heading, List<AxleState> states, Function<AxleState, String> place, List<Column> columns) {
        List<Column> known = columns.stream()
                .filter(column -> states.stream()
                        .anyMatch(state -> !column.cell().apply(state).equals(Table.NOTHING)))
                .toList();
        if (states.isEmpty() || known.isEmpty()) {
            return;
        }
        Table.Builder table = new Table.Builder(known.stream().map(Column::head).toList());
        table.heading(heading);
        for (AxleState state : states) {
            table.row(
                    place.apply(state),
                    "",
                    known.stream().map(column -> column.cell().apply(state)).toList());
        }
        page.table(table.build());
    }

    private String travel(AxleState state) {
        return units.show(state.leftTravel(), Dimension.LENGTH, units == Units.METRIC ? 0 : 2);
    }

    private static String roll(AxleTravel axle, AxleState state) {
        double half = axle.linked().stance().track() / 2;
        return Numbers.fixed(Math.toDegrees(Math.atan(state.rightTravel() / half)), 1) + " deg";
    }

    private static String steer(AxleState state) {
        return state.steering()
                .map(steering -> Numbers.fixed(Math.toDegrees(steering.referenceSteer()), 0) + " deg")
                .orElse(Table.NOTHING);
    }

    private List<Column> liveColumns() {
        return List.of(
                axle(TravelFigures.ROLL_CENTRE),
                axle(TravelFigures.ROLL_STEER),
                axle(TravelFigures.AXLE_STEER.within(AxleState::live)),
                axle(TravelFigures.SIDE_SHIFT.within(AxleState::live)),
                axle(TravelFigures.FORE_AFT.within(AxleState::live)),
                axle(TravelFigures.CRANK.within(AxleState::live)),
                axle(TravelFigures.PINION_SLOPE.within(state -> state.live().flatMap(AxleState.LiveFigures::shaft))),
                axle(TravelFigures.RESIDUAL_JOINT_ANGLE.within(
                        state -> state.live().flatMap(AxleState.LiveFigures::shaft))),
                wheel(TravelFigures.SPRING_RATIO, Side.LEFT, "spring ratio"),
                wheel(TravelFigures.DAMPER_LENGTH, Side.LEFT, "left damper"));
    }

    private List<Column> wheelColumns() {
        return List.of(
                axle(TravelFigures.ROLL_CENTRE),
                axle(TravelFigures.ROLL_STEER),
                wheel(TravelFigures.TOE, Side.LEFT, "toe"),
                wheel(TravelFigures.CAMBER, Side.LEFT, "camber"),
                own(TravelFigures.CASTER, Side.LEFT, "castor"),
                wheel(TravelFigures.SPRING_RATIO, Side.LEFT, "spring ratio"),
                wheel(TravelFigures.DAMPER_LENGTH, Side.LEFT, "left damper"));
    }

    private List<Column> eachWheelColumns() {
        List<Column> columns =
                new ArrayList<>(List.of(axle(TravelFigures.ROLL_CENTRE), axle(TravelFigures.ROLL_CENTRE_OFFSET)));
        for (Side side : Side.values()) {
            String name = side.name().toLowerCase(Locale.ROOT);
            columns.add(wheel(TravelFigures.TOE, side, "toe, " + name));
            columns.add(wheel(TravelFigures.CAMBER, side, "camber, " + name));
        }
        return columns;
    }

    private List<Column> steerColumns() {
        List<Column> columns = new ArrayList<>();
        for (Side side : Side.values()) {
            String name = side.name().toLowerCase(Locale.ROOT);
            columns.add(own(TravelFigures.STEER, side, "steer, " + name));
            columns.add(wheel(TravelFigures.CAMBER, side, "camber, " + name));
            columns.add(own(TravelFigures.TRAIL, side, "trail, " + name));
        }
        columns.add(axle(TravelFigures.ACKERMANN));
        return columns;
    }

    private Column axle(Figure<AxleState> figure) {
        return column(figure, figure.words());
    }

    private Column wheel(Figure<AxleState.WheelFigures> figure, Side side, String head) {
        return column(figure.within(state -> Optional.of(of(state, side))), head);
    }

    private Column own(Figure<AxleState.OwnLinks> figure, Side side, String head) {
        return column(figure.within(state -> of(state, side).own()), head);
    }

    private static AxleState.WheelFigures of(AxleState state, Side side) {
        return side == Side.LEFT ? state.left() : state.right();
    }

    private Column column(Figure<AxleState> figure, String words) {
        Unit unit = figure.dimension() == Dimension.RATIO && figure.digits() == 3
                ? figure.unit()
                : units.of(figure.dimension());
        String symbol = unit.symbol();
        return new Column(words + (symbol.isEmpty() ? "" : ", " + symbol), state -> {
            OptionalDouble value = figure.in(unit, state);
            return value.isPresent() ? Numbers.fixed(value.getAsDouble(), units.digits(figure)) : Table.NOTHING;
        });
    }

    private void links(String whose, AxleTravel axle) {
        if (axle.followed().links().isEmpty()) {
            return;
        }
        String unit = units.of(Dimension.LENGTH).symbol();
        Table.Builder table = new Table.Builder(List.of(
                "length, " + unit, "slope, deg", "in plan, deg", "joint on body, deg", "other joint, deg", "turns"));
        table.heading(whose + ": links, and how far their joints go");
        for (LinkAnswer link : axle.followed().links()) {
            table.row(link.name(), "", cells(link));
        }
        page.table(table.build());
    }

    private List<String> cells(LinkAnswer link) {
        double first;
        double second;
        if (link.slopes() instanceof LinkSlopes.Along along) {
            first = along.sideSlope();
            second = along.planSlope();
        } else if (link.slopes() instanceof LinkSlopes.Across across) {
            first = across.rearSlope();
            second = across.planSlope();
        } else {
            LinkSlopes.Upright upright = (LinkSlopes.Upright) link.slopes();
            first = upright.leanForward();
            second = upright.leanLeft();
        }
        return List.of(
                Numbers.fixed(units.of(Dimension.LENGTH).fromSi(link.length()), units == Units.METRIC ? 1 : 3),
                deg(first),
                deg(second),
                deg(link.bodyJoint()),
                deg(link.movingJoint()),
                link.turns().isPresent() ? Numbers.fixed(link.turns().getAsDouble(), 2) : Table.NOTHING);
    }

    private static String deg(double angle) {
        return Numbers.fixed(Math.toDegrees(angle), 2);
    }

    private void limits(String whose, AxleTravel axle) {
        List<TravelLimit> limits = axle.followed().limits();
        if (limits.isEmpty() && axle.followed().clearances().isEmpty()) {
            return;
        }
        page.heading(whose + ": what ends the travel");
        limits.forEach(limit -> page.paragraph("  ", TravelWords.limit(limit, units)));
        axle.followed()
                .clearances()
                .forEach(gap -> page.paragraph(
                        "  ",
                        "Gap \"" + gap.name() + "\": " + gap(gap.rest()) + " at rest, " + gap(gap.least())
                                + " at least."));
    }

    private String gap(double si) {
        return units.show(si, Dimension.LENGTH, units == Units.METRIC ? 1 : 2);
    }
}
