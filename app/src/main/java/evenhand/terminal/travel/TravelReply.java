package evenhand.terminal.travel;

import evenhand.answers.TravelFigures;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.forms.Contents;
import evenhand.linkage.AxleState;
import evenhand.linkage.AxleState.LiveFigures;
import evenhand.linkage.AxleState.OwnLinks;
import evenhand.linkage.AxleState.ShaftFigures;
import evenhand.linkage.AxleState.WheelFigures;
import evenhand.linkage.LinkAnswer;
import evenhand.linkage.LinkSlopes;
import evenhand.linkage.Ranges;
import evenhand.linkage.TravelAnswer;
import evenhand.linkage.TravelLimit;
import evenhand.quantity.Dimension;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.words.Units;
import evenhand.words.travel.AxleTravel;
import evenhand.words.travel.TravelWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;

/** What {@code travel} answers. */
record TravelReply(Scenario scenario, List<SetupTravel> setups) implements Reply {
    /** A set-up and those of its axles whose links are known by points and were asked for. */
    record SetupTravel(Setup setup, List<AxleTravel> axles) implements SetupAnswer {
        SetupTravel {
            axles = List.copyOf(axles);
        }

        Optional<AxleTravel> axle(End end) {
            return axles.stream().filter(axle -> axle.end() == end).findFirst();
        }

        List<String> words(Units units) {
            return axles.stream()
                    .flatMap(axle -> TravelWords.of(axle, units).stream())
                    .toList();
        }

        @Override
        public SharedParts.Remarks remarks() {
            List<Adjustable> estimated = new ArrayList<>(setup.estimated());
            estimated.addAll(Catalogue.estimatedForTravel(setup.car()));
            return SharedParts.Remarks.of(setup, estimated, List.of());
        }
    }

    /** A row of a spreadsheet. */
    private record Row(SetupTravel setup, AxleTravel axle, String motion, AxleState state) {}

    /** Every name that a link can have. */
    private static final List<String> LINKS = List.of(
            "lowerLinkLeft",
            "lowerLinkRight",
            "upperLinkLeft",
            "upperLinkRight",
            "middleLink",
            "dropLink",
            "panhardRod",
            "upperRod",
            "lowerRod",
            "tieRodLeft",
            "tieRodRight");

    private static final Contents<WheelFigures> WHEEL = Contents.of(WheelFigures.class)
            .figures(TravelFigures.WHEEL)
            .withIfAny(WheelFigures::own, Contents.of(OwnLinks.class).figures(TravelFigures.OWN));

    private static final Contents<AxleState> STATE_OF_AXLE = Contents.of(AxleState.class)
            .figures(TravelFigures.STATE)
            .withIfAny(AxleState::live, Contents.of(LiveFigures.class).figures(TravelFigures.LIVE))
            .withIfAny(TravelReply::shaft, Contents.of(ShaftFigures.class).figures(TravelFigures.SHAFT));

    private static final Contents<AxleState> STATE = STATE_OF_AXLE
            .numbersIfKnown("jointAngles_deg", state -> shaft(state).map(TravelReply::jointAngles))
            .part("left", AxleState::left, WHEEL)
            .part("right", AxleState::right, WHEEL);

    private static final Contents<Ranges> RANGE = Contents.of(Ranges.class)
            .number("bump_m", Ranges::bump)
            .number("droop_m", Ranges::droop)
            .number("roll_deg", ranges -> degrees(ranges.roll()));

    private static final Contents<AxleTravel> RANGES = Contents.of(AxleTravel.class)
            .with(axle -> axle.followed().range(), RANGE)
            .numberIfAny(
                    "steer_deg",
                    axle -> axle.followed().steer().isEmpty()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(degrees(axle.followed().range().steer())));

    private static final Contents<AxleTravel> REST = Contents.of(AxleTravel.class)
            .with(axle -> axle.followed().rest(), STATE)
            .numberIfAny("rollCentrePerBump", axle -> axle.followed().rollCentrePerBump());

    private static final Contents<LinkSlopes> SLOPES = Contents.of(LinkSlopes.class)
            .where(
                    LinkSlopes.Along.class,
                    Contents.of(LinkSlopes.Along.class)
                            .number("sideSlope_deg", slopes -> degrees(slopes.sideSlope()))
                            .number("planSlope_deg", slopes -> degrees(slopes.planSlope())))
            .where(
                    LinkSlopes.Across.class,
                    Contents.of(LinkSlopes.Across.class)
                            .number("rearSlope_deg", slopes -> degrees(slopes.rearSlope()))
                            .number("planSlope_deg", slopes -> degrees(slopes.planSlope())))
            .where(
                    LinkSlopes.Upright.class,
                    Contents.of(LinkSlopes.Upright.class)
                            .number("leanForward_deg", slopes -> degrees(slopes.leanForward()))
                            .number("leanLeft_deg", slopes -> degrees(slopes.leanLeft())));

    private static final Contents<AxleTravel> ALL_LINKS = links();

    private static final Contents<TravelAnswer.GapAnswer> CLEARANCE = Contents.of(TravelAnswer.GapAnswer.class)
            .text("name", TravelAnswer.GapAnswer::name)
            .number("rest_m", TravelAnswer.GapAnswer::rest)
            .number("least_m", TravelAnswer.GapAnswer::least);

    private static final Contents<TravelLimit> LIMIT = Contents.of(TravelLimit.class)
            .text("motion", limit -> limit.motion().key())
            .numberIfAny("travel_m", limit -> where(!limit.motion().isRoll(), limit.at()))
            .numberIfAny("roll_deg", limit -> where(limit.motion().isRoll(), degrees(limit.at())))
            .text("what", limit -> limit.kind().key())
            .textIfAny("part", limit -> Optional.of(limit.part()).filter(part -> !part.isEmpty()))
            .text("text", limit -> TravelWords.limit(limit, Units.METRIC));

    private static final Contents<AxleTravel> AXLE = Contents.of(AxleTravel.class)
            .part("range", axle -> axle, RANGES)
            .part("rest", axle -> axle, REST)
            .list("heave", axle -> axle.followed().heave(), STATE)
            .list("roll", axle -> axle.followed().roll(), STATE)
            .list("oneWheel", axle -> axle.followed().oneWheel(), STATE)
            .listIfAny("steer", axle -> axle.followed().steer(), STATE)
            .part("links", axle -> axle, ALL_LINKS)
            .numberIfAny(
                    "bindRollStiffness_Nm_per_deg",
                    axle -> in(axle.followed().bindRollStiffness(), Dimension.ROLL_STIFFNESS))
            .numberIfAny("bindHeaveRate_N_per_m", axle -> axle.followed().bindHeaveRate())
            .numberIfAny("standsAt_m", axle -> axle.followed().standsAt())
            .listIfAny("clearances", axle -> axle.followed().clearances(), CLEARANCE)
            .list("limits", axle -> axle.followed().limits(), LIMIT);

    private static final Contents<SetupTravel> SETUP = Contents.of(SetupTravel.class)
            .sentences("words", setup -> setup.words(Units.METRIC))
            .partIfAny(End.FRONT.key(), setup -> setup.axle(End.FRONT), AXLE)
            .partIfAny(End.REAR.key(), setup -> setup.axle(End.REAR), AXLE);

    private static final Contents<TravelReply> REPLY = Contents.of(TravelReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .list("setups", TravelReply::setups, SharedParts.setup(SetupTravel.class, SETUP));

    /** In CSV a row per place of each motion. */
    private static final Contents<Row> ROW = Contents.of(Row.class)
            .text("setup", row -> row.setup().setup().name())
            .text("axle", row -> row.axle().end().key())
            .text("motion", Row::motion)
            .with(
                    Row::state,
                    STATE_OF_AXLE
                            .numberIfAny("jointAngle1_deg", state -> jointAngle(state, 0))
                            .numberIfAny("jointAngle2_deg", state -> jointAngle(state, 1))
                            .numberIfAny("jointAngle3_deg", state -> jointAngle(state, 2))
                            .part("left", AxleState::left, WHEEL)
                            .part("right", AxleState::right, WHEEL));

    TravelReply {
        setups = List.copyOf(setups);
    }

    private static Contents<AxleTravel> links() {
        Contents<AxleTravel> links = Contents.of(AxleTravel.class);
        for (String name : LINKS) {
            links = links.partIfAny(
                    name,
                    axle -> axle.followed().links().stream()
                            .filter(link -> link.name().equals(name))
                            .findFirst()
                            .map(link -> new LinkOf(axle, link)),
                    LinkOf.CONTENTS);
        }
        return links;
    }

    /** A link of an axle. */
    private record LinkOf(AxleTravel axle, LinkAnswer link) {
        static final Contents<LinkOf> CONTENTS = Contents.of(LinkOf.class)
                .number("length_m", of -> of.link().length())
                .with(of -> of.link().slopes(), SLOPES)
                .number("bodyJoint_deg", of -> degrees(of.link().bodyJoint()))
                .numberIfAny("axleJoint_deg", of -> of.moving(true))
                .numberIfAny("wheelJoint_deg", of -> of.moving(false))
                .numberIfAny("turns", of -> of.link().turns());

        private OptionalDouble moving(boolean ofLiveAxle) {
            return axle.linked() instanceof LinkedLiveAxle == ofLiveAxle
                    ? OptionalDouble.of(degrees(link.movingJoint()))
                    : OptionalDouble.empty();
        }
    }

    private static Optional<ShaftFigures> shaft(AxleState state) {
        return state.live().flatMap(LiveFigures::shaft);
    }

    private static List<Double> jointAngles(ShaftFigures shaft) {
        return shaft.jointAngles().stream().map(TravelReply::degrees).toList();
    }

    private static OptionalDouble jointAngle(AxleState state, int index) {
        List<Double> angles = shaft(state).map(TravelReply::jointAngles).orElse(List.of());
        return index < angles.size() ? OptionalDouble.of(angles.get(index)) : OptionalDouble.empty();
    }

    private static double degrees(double angle) {
        return Dimension.ANGLE.metric().fromSi(angle);
    }

    private static OptionalDouble in(OptionalDouble si, Dimension dimension) {
        return si.isPresent() ? OptionalDouble.of(dimension.metric().fromSi(si.getAsDouble())) : si;
    }

    private static OptionalDouble where(boolean holds, double place) {
        return holds ? OptionalDouble.of(place) : OptionalDouble.empty();
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (SetupTravel setup : setups) {
            for (AxleTravel axle : setup.axles()) {
                TravelAnswer.Followed followed = axle.followed();
                Function<String, Consumer<AxleState>> add =
                        motion -> state -> rows.add(new Row(setup, axle, motion, state));
                followed.heave().forEach(add.apply("heave"));
                followed.roll().forEach(add.apply("roll"));
                followed.oneWheel().forEach(add.apply("oneWheel"));
                followed.steer().forEach(add.apply("steer"));
            }
        }
        return rows;
    }

    @Override
    public Optional<LoadCase> load() {
        return Optional.empty();
    }

    @Override
    public Written written() {
        return Written.of(
                "travel",
                REPLY,
                this,
                Written.Csv.of(ROW, this::rows),
                (console, units) -> new TravelPage(console, units, this).write());
    }
}
