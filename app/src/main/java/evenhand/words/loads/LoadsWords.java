package evenhand.words.loads;

import static java.util.Comparator.comparingDouble;
import static java.util.stream.Collectors.joining;

import evenhand.car.End;
import evenhand.car.links.LinkedWheels;
import evenhand.car.links.WheelLinks;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.Mount;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.structure.MountFigure;
import evenhand.structure.MountLoad;
import evenhand.structure.Note;
import evenhand.structure.Peak;
import evenhand.structure.UseAnswer;
import evenhand.structure.WorstMember;
import evenhand.structure.WorstMount;
import evenhand.words.ChangeWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.loads.LoadedSetup.Loaded;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What parts carry, in sentences. */
public final class LoadsWords {
    /** What stands with every answer. */
    public static final List<String> CAUTIONS = List.of(
            "Load figures compare designs; they are no proof of strength.",
            "Real blows are shorter and harder than any factor here. Fatigue, welds, cracks, corrosion, heat, slack joints,"
                    + " tightening and the shell behind a bracket are not in the sums.",
            "Yield used and rated load used below 100 % clear nothing. Have brackets, welds and bolts checked by a licensed or"
                    + " suitably qualified engineer.");

    /** Figures of a mount that change with others that are said. */
    private static final Set<MountFigure> UNSAID = Set.of(MountFigure.COMBINED_STRESS);

    private static final int MOST_PARTS = 4;
    private static final int MOST_CHANGES = 6;

    /** A change of less is not worth a word, of a force or stress. Common practice, no source. */
    private static final double NOTICEABLE = 0.01;

    /** A smaller force is not worth a word, N. */
    private static final double SLIGHT = 50;

    private static final Unit KN = Unit.of("kN");
    private static final Unit MPA = Unit.of("MPa");
    private static final Unit PSI = Unit.of("psi");

    private final Loaded car;
    private final Units units;

    private LoadsWords(Loaded car, Units units) {
        this.car = car;
        this.units = units;
    }

    static List<String> of(Loaded car, Optional<Loaded> first, Units units) {
        LoadsWords words = new LoadsWords(car, units);
        List<String> sentences = new ArrayList<>();
        words.mounts().ifPresent(sentences::add);
        words.overYield().ifPresent(sentences::add);
        sentences.addAll(words.doubtfulPins());
        words.members().ifPresent(sentences::add);
        words.oneHand().ifPresent(sentences::add);
        first.filter(other -> !car.loads().carried().isEmpty()).ifPresent(other -> sentences.add(words.against(other)));
        words.spread().ifPresent(sentences::add);
        words.pins().ifPresent(sentences::add);
        sentences.addAll(words.notes());
        words.handSums().ifPresent(sentences::add);
        words.strutsWithoutSprings().ifPresent(sentences::add);
        words.tieRods().ifPresent(sentences::add);
        car.leftOut().forEach(why -> sentences.add(why + "."));
        return sentences;
    }

    /** The mounts, the hardest worked first: by yield or rated load where that is known, else by force. */
    private Optional<String> mounts() {
        List<WorstMount> worst = car.loads().worstMounts().stream()
                .sorted(comparingDouble(LoadsWords::used)
                        .thenComparingDouble(
                                mount -> peak(mount, MountFigure.TOTAL).value())
                        .reversed())
                .limit(MOST_PARTS)
                .toList();
        return worst.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Hardest worked: " + worst.stream().map(this::mount).collect(joining("; ")) + ".");
    }

    private static double used(WorstMount mount) {
        double most = -1;
        for (MountFigure figure : List.of(MountFigure.YIELD_USED, MountFigure.RATED_USED)) {
            Peak peak = mount.peaks().get(figure);
            most = peak == null ? most : Math.max(most, peak.value());
        }
        return most;
    }

    private static Peak peak(WorstMount mount, MountFigure figure) {
        Peak peak = mount.peaks().get(figure);
        if (peak == null) {
            throw new IllegalArgumentException(mount.mount() + " has no " + figure.key());
        }
        return peak;
    }

    private String mount(WorstMount mount) {
        List<String> said = new ArrayList<>();
        for (MountFigure figure : List.of(MountFigure.YIELD_USED, MountFigure.RATED_USED, MountFigure.PRESSURE)) {
            Peak peak = mount.peaks().get(figure);
            if (peak != null) {
                said.add(value(figure, peak.value()) + words(figure) + " in " + peak.title());
            }
        }
        Peak stress = mount.peaks().get(MountFigure.COMBINED_STRESS);
        if (stress != null && !mount.peaks().containsKey(MountFigure.YIELD_USED)) {
            said.add(value(MountFigure.COMBINED_STRESS, stress.value()) + " in a pin of unknown steel in "
                    + stress.title());
        }
        if (said.isEmpty()) {
            Peak peak = peak(mount, MountFigure.TOTAL);
            said.add(force(peak.value()) + " in " + peak.title());
        }
        return mount.mount() + ", " + String.join(", ", said);
    }

    private static String words(MountFigure figure) {
        return switch (figure) {
            case YIELD_USED -> " of its pin's yield";
            case RATED_USED -> " of its rated load";
            case PRESSURE -> " under it";
            default -> "";
        };
    }

    /** A figure of a mount with its unit. */
    String value(MountFigure figure, double si) {
        return switch (figure) {
            case TOTAL -> force(si);
            case PRESSURE, GREATEST_PRESSURE, EDGE_SHEAR, COMBINED_STRESS -> stress(si, units);
            case YIELD_USED, RATED_USED -> Numbers.percent(si, 0);
            case EYE_MOMENT -> units.show(si, Dimension.MOMENT, 1);
        };
    }

    /** Pins whose bending is left out for want of a lever, and pins that the load runs along. */
    private List<String> doubtfulPins() {
        List<String> said = new ArrayList<>();
        for (Mount mount : car.rest().car().mounts()) {
            if (mount.pin().isEmpty()
                    || car.loads().worstMounts().stream()
                            .noneMatch(worst -> worst.mount().equals(mount.name()))) {
                continue;
            }
            Mount.Pin pin = mount.pin().get();
            if (pin.overhang() == 0 && pin.span() == 0) {
                said.add("No bending in the pin of " + mount.name() + ": the file gives no "
                        + (pin.shear() == Mount.Shear.SINGLE ? "overhang" : "span")
                        + ", the lever of its load, and bending is most of what a pin feels.");
            }
            boolean along = car.loads().carried().stream()
                    .flatMap(one -> one.mount(mount.name()).stream())
                    .max(comparingDouble(MountLoad::total))
                    .filter(load -> Math.abs(load.along()) > load.across())
                    .isPresent();
            if (along) {
                said.add(
                        "The greatest load of " + mount.name()
                                + " runs along its pin, as a pull, not across it: see that \"faces\" is the way the pin points.");
            }
        }
        return said;
    }

    /** Where one hand alone is asked the other may be the worse. */
    private Optional<String> oneHand() {
        return car.asked().hands().size() == 1
                ? Optional.of("Only one hand is asked: the other may work these parts harder.")
                : Optional.empty();
    }

    private Optional<String> overYield() {
        String over = car.loads().worstMounts().stream()
                .filter(mount -> used(mount) > 1)
                .map(WorstMount::mount)
                .collect(joining(", "));
        return over.isEmpty()
                ? Optional.empty()
                : Optional.of("More than its steel or its maker allows, by these sums: " + over + ".");
    }

    private Optional<String> members() {
        List<WorstMember> sorted = car.loads().worstMembers().stream()
                .filter(member -> member.greatest().value() > SLIGHT)
                .sorted(comparingDouble(
                                (WorstMember member) -> member.greatest().value())
                        .reversed())
                .toList();
        Map<String, WorstMember> bySide = new LinkedHashMap<>(); // of a pair the harder worked
        sorted.forEach(member -> bySide.putIfAbsent(member.part().replaceFirst("(Left|Right)$", ""), member));
        List<String> said = bySide.values().stream()
                .limit(MOST_PARTS)
                .map(member -> ChangeWords.name(member.part()) + " "
                        + force(member.greatest().value()) + " ("
                        + member.greatest().title() + ")")
                .toList();
        return said.isEmpty() ? Optional.empty() : Optional.of("Greatest forces: " + String.join(", ", said) + ".");
    }

    /** What this set-up changes against another, the largest change first. */
    private String against(Loaded other) {
        List<Changed> changed = Changed.ofPairs(Stream.concat(
                        LoadsDifference.between(other.loads(), car.loads()).stream()
                                .filter(difference -> !UNSAID.contains(difference.figure()))
                                .filter(difference -> difference.figure() != MountFigure.GREATEST_PRESSURE
                                        || tilted(car, difference.part())
                                        || tilted(other, difference.part()))
                                .filter(difference ->
                                        Math.max(difference.base(), difference.value()) > least(difference.figure()))
                                .map(LoadsWords::changed),
                        supports(other))
                .filter(difference -> Math.abs(difference.share()) >= NOTICEABLE)
                .sorted(comparingDouble((Changed difference) -> Math.abs(difference.share()))
                        .reversed())
                .toList());
        String against = "Against \"" + other.name() + "\": ";
        if (changed.isEmpty()) {
            return against + "every part carries the same within 1 %.";
        }
        return against
                + changed.stream().limit(MOST_CHANGES).map(Changed::words).collect(joining(", "))
                + (changed.size() > MOST_CHANGES
                        ? "; " + (changed.size() - MOST_CHANGES) + " more change by less"
                        : "; all else the same within 1 %")
                + ".";
    }

    /** Whether a stiff eye presses a mount's seat more at its edge. */
    private static boolean tilted(Loaded of, String mount) {
        return of.loads().worstMounts().stream()
                .filter(worst -> worst.mount().equals(mount))
                .anyMatch(worst -> peak(worst, MountFigure.GREATEST_PRESSURE).value()
                        > (1 + NOTICEABLE) * peak(worst, MountFigure.PRESSURE).value());
    }

    private static Changed changed(LoadsDifference difference) {
        String part = difference.isMount() ? difference.part() : ChangeWords.name(difference.part());
        return new Changed(
                part + figure(difference.figure(), difference.isMount()), difference.value() / difference.base() - 1);
    }

    /** What changes at the supports of beams that both have. */
    private Stream<Changed> supports(Loaded other) {
        return car.rest().car().mounts().stream().flatMap(mount -> {
            Optional<Peak> now = support(car, mount);
            Optional<Peak> before = support(other, mount);
            return now.isPresent() && before.isPresent() && before.get().value() > SLIGHT
                    ? Stream.of(new Changed(
                            mount.name() + " supports",
                            now.get().value() / before.get().value() - 1))
                    : Stream.empty();
        });
    }

    private static double least(MountFigure figure) {
        return figure == MountFigure.TOTAL ? SLIGHT : 0;
    }

    private static String figure(MountFigure figure, boolean mount) {
        return switch (figure) {
            case TOTAL -> mount ? " force" : "";
            case PRESSURE -> " pressure";
            case GREATEST_PRESSURE -> " greatest pressure";
            case EDGE_SHEAR -> " shear at the edge";
            case COMBINED_STRESS -> " stress";
            case YIELD_USED -> " yield used";
            case RATED_USED -> " rated load used";
            case EYE_MOMENT -> " eye's moment";
        };
    }

    private record Changed(String part, double share) {
        /** Left and right as one where they change alike. */
        static List<Changed> ofPairs(List<Changed> all) {
            List<Changed> said = new ArrayList<>();
            for (Changed one : all) {
                boolean pair = all.stream()
                        .anyMatch(other -> !one.mirrored().equals(one.part)
                                && other.part.equals(one.mirrored())
                                && other.shown().equals(one.shown()));
                Changed both = pair ? new Changed(one.part.replaceFirst(" (left|right)\\b", ""), one.share) : one;
                if (said.stream().noneMatch(other -> other.part.equals(both.part))) {
                    said.add(both);
                }
            }
            return said;
        }

        private String mirrored() {
            return part.contains(" left") ? part.replace(" left", " right") : part.replace(" right", " left");
        }

        private String shown() {
            return Numbers.fixed(100 * share, 0);
        }

        String words() {
            return part + " " + Numbers.fixed(100 * Math.abs(share), 0) + " % " + (share < 0 ? "less" : "more");
        }
    }

    /** What a larger seat does and what it does not; with the figures of the hardest pressed one. */
    private Optional<String> spread() {
        return car.loads().worstMounts().stream()
                .filter(mount -> mount.peaks().containsKey(MountFigure.PRESSURE))
                .max(comparingDouble(mount -> peak(mount, MountFigure.PRESSURE).value()))
                .map(mount -> {
                    double mean = peak(mount, MountFigure.PRESSURE).value();
                    double most = peak(mount, MountFigure.GREATEST_PRESSURE).value();
                    return "Pressure under a seat falls with its area, the shear at the sheet's edge only with its diameter,"
                            + " and a stiff eye counts more on a small seat than on a large one: "
                            + mount.mount() + " has " + stress(mean, units) + " on average"
                            + (most > (1 + NOTICEABLE) * mean
                                    ? ", and " + stress(most, units)
                                            + " at its edge, where the eye's rubber tilts it; a joint that swivels freely"
                                            + " would leave the average"
                                    : "")
                            + ".";
                });
    }

    private Optional<String> pins() {
        return car.rest().car().mounts().stream().anyMatch(mount -> mount.pin().isPresent())
                        && car.loads().worstMounts().stream()
                                .anyMatch(mount -> mount.peaks().containsKey(MountFigure.COMBINED_STRESS))
                ? Optional.of("Stresses of pins leave out tightening, the notch of a thread and fatigue.")
                : Optional.empty();
    }

    private List<String> notes() {
        List<String> said = new ArrayList<>();
        for (Note note : Note.values()) {
            List<String> titles = car.loads().carried().stream()
                    .filter(one -> one.notes().contains(note))
                    .map(UseAnswer.Carried::title)
                    .toList();
            if (!titles.isEmpty()) {
                said.add("In " + String.join(" and in ", both(titles)) + " " + words(note));
            }
        }
        return said;
    }

    /** Titles in which left and right of one case are one. */
    private static List<String> both(List<String> titles) {
        List<String> all = new ArrayList<>();
        for (String title : titles) {
            String name = title.replaceFirst(", (left|right)$", "");
            boolean bothHands = titles.contains(name + ", left") && titles.contains(name + ", right");
            String shown = bothHands ? name : title;
            if (!all.contains(shown)) {
                all.add(shown);
            }
        }
        return all;
    }

    private static String words(Note note) {
        return switch (note) {
            case SPRING_PULLS ->
                "a spring would have to pull: in truth it comes loose and something else catches the axle, so read the"
                        + " forces there with care.";
            case BEYOND_GRIP -> "more is asked for than the tyres hold.";
            case ENGINE_LIMITS ->
                "the engine gives less than the tyres would hold: a stronger one loads the links more.";
            case GRIP_LIMITS ->
                "the tyres hold less than the engine gives, or nothing is known of it: the links carry what"
                        + " grip allows.";
        };
    }

    private Optional<String> handSums() {
        List<String> axles = new ArrayList<>();
        for (String end : List.of("front", "rear")) {
            if (car.loads().worstMembers().stream()
                    .anyMatch(member -> member.handSum() && member.part().startsWith(end + "."))) {
                axles.add(end);
            }
        }
        return axles.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "The links of the " + String.join(" and ", axles)
                                + " axle are known by coefficients: one joint stands for them all. Measured points tell them apart.");
    }

    /** A spring by coefficients stands at the wheel's centre, where no strut's top feels it. */
    private Optional<String> strutsWithoutSprings() {
        List<String> ends = new ArrayList<>();
        for (End end : End.values()) {
            boolean struts = car.rest().car().axle(end).links().stream()
                    .anyMatch(links -> links instanceof LinkedWheels wheels
                            && wheels.links() instanceof WheelLinks.StrutAndArm
                            && wheels.mounts().spring().isEmpty());
            if (struts) {
                ends.add(end.key());
            }
        }
        return ends.isEmpty()
                ? Optional.empty()
                : Optional.of("The " + String.join(" and ", ends)
                        + " spring has no points and is taken upright at the wheel's centre, so that the strut's top feels"
                        + " nothing of it: write \"around\": \"strut\" where it stands on the strut.");
    }

    /** What the tyres' aligning torque adds is not in the sums. */
    private Optional<String> tieRods() {
        boolean corners = car.loads().carried().stream()
                .anyMatch(one -> one.use() instanceof HardUse.Cornering
                        && one.members().stream()
                                .anyMatch(member -> member.member().startsWith("tieRod")));
        return corners
                ? Optional.of(
                        "What the tyres' aligning torque adds to a tie rod in a bend is not in these sums; it may double it.")
                : Optional.empty();
    }

    String force(double newtons) {
        return force(newtons, units);
    }

    /** A force: "3.12 kN", "702 lbf". */
    public static String force(double newtons, Units units) {
        return units == Units.METRIC
                ? Numbers.fixed(KN.fromSi(newtons), 2) + " kN"
                : units.show(newtons, Dimension.FORCE, 0);
    }

    /** A pressure on sheet or a stress: "3.2 MPa", "464 psi". */
    public static String stress(double pascal, Units units) {
        Unit unit = stressUnit(units);
        return Numbers.fixed(unit.fromSi(pascal), units == Units.METRIC ? 1 : 0) + " " + unit.symbol();
    }

    /** The unit that pressures on sheet and stresses are shown in. */
    public static Unit stressUnit(Units units) {
        return units == Units.METRIC ? MPA : PSI;
    }

    /** What a beam does to the harder worked of its supports in any case, N. */
    static Optional<Peak> support(Loaded car, Mount mount) {
        Optional<Peak> worst = Optional.empty();
        for (UseAnswer.Carried one : car.loads().carried()) {
            Optional<MountLoad.OfBeam> beam = one.mount(mount.name()).flatMap(MountLoad::beam);
            if (beam.isPresent()) {
                double force =
                        Math.max(beam.get().left().getNorm(), beam.get().right().getNorm());
                if (worst.isEmpty() || force > worst.get().value()) {
                    worst = Optional.of(new Peak(force, one.title()));
                }
            }
        }
        return worst;
    }
}
