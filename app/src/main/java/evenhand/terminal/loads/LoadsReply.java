package evenhand.terminal.loads;

import evenhand.answers.Figure;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.forms.Contents;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.scenario.Scenario;
import evenhand.structure.Act;
import evenhand.structure.AxleLoads;
import evenhand.structure.CarLoads;
import evenhand.structure.EndLoad;
import evenhand.structure.MemberLoad;
import evenhand.structure.MountFigure;
import evenhand.structure.MountLoad;
import evenhand.structure.Note;
import evenhand.structure.Peak;
import evenhand.structure.UseAnswer;
import evenhand.structure.WorstMember;
import evenhand.structure.WorstMount;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SharedParts;
import evenhand.terminal.reply.Written;
import evenhand.words.Units;
import evenhand.words.loads.LoadedSetup.Loaded;
import evenhand.words.loads.LoadsAsked;
import evenhand.words.loads.LoadsDifference;
import evenhand.words.loads.LoadsWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What the command answers. */
record LoadsReply(Scenario scenario, Optional<LoadCase> load, LoadsAsked asked, List<SetupLoads> setups)
        implements Reply {
    private static final Contents<Act> ACT = Contents.of(Act.class)
            .text("on", Act::on)
            .text("what", Act::what)
            .numbers("at_m", act -> xyz(act.at()))
            .numbers("force_N", act -> xyz(act.force()))
            .numbers("moment_Nm", act -> xyz(act.moment()));

    private static final Contents<AxleLoads> AXLE = Contents.of(AxleLoads.class)
            .number("leftTravel_m", AxleLoads::leftTravel)
            .number("rightTravel_m", AxleLoads::rightTravel)
            .list("acts", AxleLoads::acts, ACT);

    private static final Contents<EndLoad> END = Contents.of(EndLoad.class)
            .text("end", EndLoad::end)
            .text("on", EndLoad::on)
            .numbers("at_m", end -> xyz(end.at()))
            .numbers("force_N", end -> xyz(end.force()))
            .numbers("moment_Nm", end -> xyz(end.moment()));

    private static final Contents<MemberLoad> MEMBER = Contents.of(MemberLoad.class)
            .text("member", MemberLoad::part)
            .numberIfAny("axial_N", MemberLoad::axial)
            .mark("handSum", MemberLoad::handSum)
            .list("ends", MemberLoad::ends, END);

    private static final Contents<MountLoad> MOUNT = Contents.of(MountLoad.class)
            .text("mount", MountLoad::mount)
            .numbers("at_m", mount -> xyz(mount.at()))
            .numbers("force_N", mount -> xyz(mount.force()))
            .numbers("moment_Nm", mount -> xyz(mount.moment()))
            .number("along_N", MountLoad::along)
            .number("across_N", MountLoad::across)
            .number("total_N", MountLoad::total)
            .withIfAny(
                    MountLoad::pin,
                    Contents.of(MountLoad.OfPin.class)
                            .number("bending_Nm", MountLoad.OfPin::bending)
                            .number("bendingStress_Pa", MountLoad.OfPin::bendingStress)
                            .number("shearStress_Pa", MountLoad.OfPin::shearStress)
                            .number("tensionStress_Pa", MountLoad.OfPin::tensionStress)
                            .number("combinedStress_Pa", MountLoad.OfPin::combinedStress)
                            .numberIfAny("yieldUsed", MountLoad.OfPin::yieldUsed))
            .withIfAny(
                    MountLoad::spread,
                    Contents.of(MountLoad.OfSpread.class)
                            .number("area_m2", MountLoad.OfSpread::area)
                            .number("pressure_Pa", MountLoad.OfSpread::pressure)
                            .number("greatestPressure_Pa", MountLoad.OfSpread::greatestPressure)
                            .numberIfAny("edgeShear_Pa", MountLoad.OfSpread::edgeShear))
            .withIfAny(
                    MountLoad::eye,
                    Contents.of(MountLoad.OfEye.class)
                            .number(
                                    "eyeAngle_deg",
                                    eye -> Dimension.ANGLE.metric().fromSi(eye.angle()))
                            .number("eyeMoment_Nm", MountLoad.OfEye::moment))
            .withIfAny(
                    MountLoad::beam,
                    Contents.of(MountLoad.OfBeam.class)
                            .numbers("left_N", beam -> xyz(beam.left()))
                            .numbers("right_N", beam -> xyz(beam.right()))
                            .number("twist_Nm", MountLoad.OfBeam::twist))
            .numberIfAny("ratedUsed", MountLoad::ratedUsed);

    private static final Contents<Map<End, AxleLoads>> AXLES = Contents.<Map<End, AxleLoads>>ofAny()
            .partIfAny("front", axles -> Optional.ofNullable(axles.get(End.FRONT)), AXLE)
            .partIfAny("rear", axles -> Optional.ofNullable(axles.get(End.REAR)), AXLE);

    private static final Contents<UseAnswer.Carried> CARRIED = Contents.of(UseAnswer.Carried.class)
            .partIfAny("axles", one -> Optional.of(one.axles()).filter(axles -> !axles.isEmpty()), AXLES)
            .list("members", UseAnswer.Carried::members, MEMBER)
            .listIfAny("mounts", UseAnswer.Carried::mounts, MOUNT)
            .textsIfAny("notes", LoadsReply::notes);

    private static final Contents<UseAnswer> CASE = Contents.of(UseAnswer.class)
            .text("case", one -> one.use().name())
            .text("kind", one -> one.use().kind())
            .textIfAny("hand", one -> one.hand().map(LoadsCommand::word))
            .number("factor", one -> one.use().factor())
            .where(UseAnswer.Carried.class, CARRIED)
            .where(
                    UseAnswer.NoState.class,
                    Contents.of(UseAnswer.NoState.class)
                            .part(
                                    "noAnswer",
                                    none -> none,
                                    Contents.of(UseAnswer.NoState.class)
                                            .text("reason", none -> "noState")
                                            .text("text", UseAnswer.NoState::why)));

    private static final Contents<WorstMember> WORST_MEMBER = peak(
            peak(
                    peak(
                            Contents.of(WorstMember.class).text("member", WorstMember::part),
                            "greatest",
                            "_N",
                            member -> Optional.of(member.greatest())),
                    "tension",
                    "_N",
                    WorstMember::tension),
            "compression",
            "_N",
            WorstMember::compression);

    private static final Contents<CarLoads> WORST = Contents.of(CarLoads.class)
            .list("members", CarLoads::worstMembers, WORST_MEMBER)
            .listIfAny("mounts", CarLoads::worstMounts, worstMount());

    private static final Contents<LoadsDifference> DIFFERENCE = Contents.of(LoadsDifference.class)
            .text("part", LoadsDifference::part)
            .text(
                    "figure",
                    difference -> difference.isMount()
                            ? difference.figure().key() + suffix(difference.figure())
                            : "greatest_N")
            .number("base", LoadsDifference::base)
            .number("value", LoadsDifference::value)
            .number("difference", LoadsDifference::difference);

    /** A set-up against the first that has an answer. */
    private record Beside(Loaded loaded, Optional<Loaded> first) {
        List<LoadsDifference> differences() {
            return first.map(one -> LoadsDifference.between(one.loads(), loaded.loads()))
                    .orElse(List.of());
        }
    }

    private static final Contents<Beside> LOADED = Contents.of(Beside.class)
            .sentences(
                    "words",
                    one -> Stream.concat(
                                    one.loaded().words(one.first(), Units.METRIC).stream(),
                                    LoadsWords.CAUTIONS.stream())
                            .toList())
            .list(
                    "cases",
                    one -> one.loaded().loads().cases().stream()
                            .filter(answer -> !(answer instanceof UseAnswer.LeftOut))
                            .toList(),
                    CASE)
            .part("worst", one -> one.loaded().loads(), WORST)
            .listIfAny("differences", Beside::differences, DIFFERENCE);

    private static final int DIGITS = 0;

    /** A row of a spreadsheet: an end of a member in a case. */
    private record EndRow(String setup, UseAnswer.Carried answer, MemberLoad member, EndLoad end) {}

    private static final Figure<EndRow> AXIAL = new Figure<>(
            "axial",
            "along itself",
            Dimension.FORCE,
            Unit.of("N"),
            false,
            DIGITS,
            row -> row.member().axial());

    private static final Contents<EndRow> ROWS = vector(
            vector(
                    vector(
                            Contents.of(EndRow.class)
                                    .text("setup", EndRow::setup)
                                    .text("case", row -> row.answer().use().name())
                                    .text("kind", row -> row.answer().use().kind())
                                    .textIfAny(
                                            "hand", row -> row.answer().hand().map(LoadsCommand::word))
                                    .number("factor", row -> row.answer().use().factor())
                                    .text("member", row -> row.member().part())
                                    .figure(AXIAL)
                                    .text("end", row -> row.end().end())
                                    .text("on", row -> row.end().on()),
                            "at",
                            Dimension.LENGTH,
                            row -> row.end().at()),
                    "force",
                    Dimension.FORCE,
                    row -> row.end().force()),
            "moment",
            Dimension.MOMENT,
            row -> row.end().moment());

    LoadsReply {
        setups = List.copyOf(setups);
    }

    private static Contents<EndRow> vector(
            Contents<EndRow> before, String name, Dimension dimension, Function<EndRow, Vector3D> of) {
        return before.figure(part(name + "X", dimension, row -> of.apply(row).getX()))
                .figure(part(name + "Y", dimension, row -> of.apply(row).getY()))
                .figure(part(name + "Z", dimension, row -> of.apply(row).getZ()));
    }

    private static Figure<EndRow> part(String name, Dimension dimension, ToDoubleFunction<EndRow> si) {
        return Figure.of(name, name, dimension, dimension.jsonUnit(), DIGITS, si);
    }

    private static <T> Contents<T> peak(
            Contents<T> before, String key, String unit, Function<T, Optional<Peak>> reading) {
        return before.numberIfAny(
                        key + unit,
                        one -> reading.apply(one)
                                .map(peak -> OptionalDouble.of(peak.value()))
                                .orElseGet(OptionalDouble::empty))
                .textIfAny(key + "Case", one -> reading.apply(one).map(Peak::title));
    }

    private static Contents<WorstMount> worstMount() {
        Contents<WorstMount> all = Contents.of(WorstMount.class).text("mount", WorstMount::mount);
        for (MountFigure figure : MountFigure.values()) {
            all = peak(
                    all,
                    figure.key(),
                    suffix(figure),
                    mount -> Optional.ofNullable(mount.peaks().get(figure)));
        }
        return all;
    }

    private static String suffix(MountFigure figure) {
        return switch (figure) {
            case TOTAL -> "_N";
            case PRESSURE, GREATEST_PRESSURE, EDGE_SHEAR, COMBINED_STRESS -> "_Pa";
            case YIELD_USED, RATED_USED -> "";
            case EYE_MOMENT -> "_Nm";
        };
    }

    private static List<Double> xyz(Vector3D vector) {
        return List.of(vector.getX(), vector.getY(), vector.getZ());
    }

    private static List<String> notes(UseAnswer.Carried one) {
        return one.notes().stream().sorted().map(Note::key).toList();
    }

    /** The first that has an answer, with which the others are compared; none for itself. */
    Optional<Loaded> first(Loaded other) {
        return setups.stream()
                .flatMap(one -> one.loaded().stream())
                .findFirst()
                .filter(first -> !first.name().equals(other.name()));
    }

    private List<EndRow> rows() {
        List<EndRow> rows = new ArrayList<>();
        for (SetupLoads setup : setups) {
            setup.loaded()
                    .ifPresent(loaded -> loaded.loads()
                            .carried()
                            .forEach(one -> one.members()
                                    .forEach(member -> member.ends()
                                            .forEach(end -> rows.add(new EndRow(loaded.name(), one, member, end))))));
        }
        return rows;
    }

    @Override
    public boolean complete() {
        return setups.stream()
                .allMatch(one -> one.loaded().isPresent() && one.loaded().get().complete());
    }

    @Override
    public List<String> silent(Units units) {
        List<String> lines = new ArrayList<>(Reply.super.silent(units));
        for (SetupLoads one : setups) {
            one.loaded()
                    .ifPresent(loaded -> loaded.leftOut()
                            .forEach(why -> lines.add("evenhand loads: \"" + loaded.name() + "\": " + why)));
        }
        return lines;
    }

    @Override
    public Written written() {
        Contents<LoadsReply> reply = Contents.of(LoadsReply.class)
                .with(one -> one, SharedParts.OPENING)
                .number("radius_m", one -> one.asked().radius())
                .list(
                        "setups",
                        LoadsReply::setups,
                        SharedParts.setup(
                                SetupLoads.class,
                                Contents.of(SetupLoads.class)
                                        .withIfAny(
                                                one -> one.loaded().map(loaded -> new Beside(loaded, first(loaded))),
                                                LOADED)));
        return Written.of(
                "loads",
                reply,
                this,
                Written.Csv.of(ROWS, this::rows),
                (console, units) -> new LoadsTables(console, units, this).write());
    }
}
