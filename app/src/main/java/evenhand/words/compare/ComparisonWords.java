package evenhand.words.compare;

import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.choice.Comparison.Difference;
import evenhand.quantity.Dimension;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.NotGiven;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a comparison says, in plain sentences: each with its number and its pace, and turned round where the number is. The
 * causes follow, largest first.
 */
public final class ComparisonWords {
    /** A cause smaller than this part of all causes together is not spoken of. */
    private static final double WORTH_SAYING = 0.1;

    /** Shares of a difference that are called most of it, and all of it. */
    private static final double MOST = 0.85;

    private static final double WHOLE = 0.97;

    /** As near as this to a half, a third or a quarter it is called so. */
    private static final double ROUND = 0.03;

    /** More causes than these make no plain sentence. */
    private static final int MOST_CAUSES = 3;

    /** Figures that are spoken of at the briskest pace only; what is not spoken of stands in the table. */
    private static final List<Criterion> SPOKEN_ONCE =
            List.of(Criterion.ROLL_GRADIENT, Criterion.FRONT_SHARE, Criterion.INSIDE_REAR_LOAD);

    /** Spoken of where they change noticeably. */
    private static final List<Criterion> RIDE =
            List.of(Criterion.SEAT_COMFORT, Criterion.FRONT_DAMPING, Criterion.REAR_DAMPING);

    private final Comparison comparison;
    private final Units units;

    private ComparisonWords(Comparison comparison, Units units) {
        this.comparison = comparison;
        this.units = units;
    }

    /** The sentences, in the order to be read. */
    public static List<String> of(Comparison comparison, Units units) {
        return told(comparison, units).stream().map(Told::sentence).toList();
    }

    /**
     * A sentence and what it is worth.
     *
     * @param of the figure that it tells; none where it speaks of the comparison as a whole
     * @param stays whether it says of the figure that it stays as it is
     */
    public record Told(String sentence, Optional<Judged> of, boolean stays) {
        /** Near the limit before all else: there the balance decides, and there it may be another than at a pace. */
        private static final Comparator<Told> FIRST =
                Comparator.comparing((Told told) -> !told.isNearTheLimit()).thenComparing(Told::stays);

        private boolean isNearTheLimit() {
            return of.map(judged -> judged.criterion().equals(Criterion.NEAR_UNDERSTEER))
                    .orElse(false);
        }

        /** The same as they are read where there is room for a few only, the one that decides first. */
        public static List<Told> byWeight(List<Told> told) {
            return told.stream().sorted(FIRST).toList();
        }
    }

    /** The same sentences, each with the figure that it tells and whether that changed. */
    public static List<Told> told(Comparison comparison, Units units) {
        return new ComparisonWords(comparison, units).sentences();
    }

    /**
     * How far the body leans at the briskest pace, rad; that it leans less is not the same as that its lean grows less there.
     */
    public record Lean(double before, double now) {}

    /**
     * What a driver notices of it: the differences that can be felt or read off a scale, each with the changes that made it, the
     * largest first; then what is hardly changed. The shares in numbers are in {@link #of}.
     *
     * @param lean none where one of the two does not get to the briskest pace
     */
    public static List<String> noticed(Comparison comparison, Optional<Lean> lean, Units units) {
        return new ComparisonWords(comparison, units).noticed(lean);
    }

    private List<String> noticed(Optional<Lean> lean) {
        List<String> sentences = new ArrayList<>();
        List<String> hardly = new ArrayList<>();
        for (Difference difference : comparison.differences()) {
            Judged judged = difference.judged();
            if (judged.criterion().equals(Criterion.ROLL_GRADIENT)) {
                if (lean.isPresent() && judged.pace().equals(lastPace())) {
                    sentences.add(leans(difference, lean.get()));
                }
            } else if (isSpoken(judged) && !judged.criterion().equals(Criterion.FRONT_SHARE)) {
                if (Math.abs(difference.difference()) >= judged.criterion().noticeable()) {
                    sentences.add(sentence(difference) + makers(difference) + ".");
                } else if (!isQuiet(judged.criterion())) {
                    hardly.add(JudgedWords.figure(judged));
                }
            }
        }
        if (!hardly.isEmpty()) {
            sentences.add("Hardly changed: " + listed(hardly) + ".");
        }
        return sentences;
    }

    /** Those who make its lean grow less are named only where it leans less altogether. */
    private String leans(Difference gradient, Lean lean) {
        String start = "A" + JudgedWords.pace(gradient.judged()).substring(1) + " the body leans ";
        String before = units.show(lean.before(), Dimension.ANGLE, 1);
        String now = units.show(lean.now(), Dimension.ANGLE, 1);
        if (before.equals(now)) {
            return start + "as before, " + now + ".";
        }
        double more = lean.now() - lean.before();
        return start + (more > 0 ? "more" : "less") + " (" + before + " to " + now + ")"
                + (more > 0 == gradient.difference() > 0
                                && Math.abs(gradient.difference())
                                        >= gradient.judged().criterion().noticeable()
                        ? makers(gradient)
                        : "")
                + ".";
    }

    /** Whether it is spoken of only where it changes noticeably. */
    private static boolean isQuiet(Criterion criterion) {
        return RIDE.contains(criterion) || criterion.needsNoTurn();
    }

    private boolean isSpoken(Judged judged) {
        return judged.criterion().equals(Criterion.UNDERSTEER)
                || judged.criterion().atLimit()
                || isQuiet(judged.criterion())
                || (SPOKEN_ONCE.contains(judged.criterion()) && judged.pace().equals(lastPace()));
    }

    private List<Told> sentences() {
        if (comparison.changes().isEmpty()) {
            return List.of(new Told("Nothing is changed: both are the same car.", Optional.empty(), false));
        }
        List<Told> told = new ArrayList<>();
        for (Difference difference : comparison.differences()) {
            Judged judged = difference.judged();
            if (isSpoken(judged)
                    && (!isQuiet(judged.criterion())
                            || Math.abs(difference.difference())
                                    >= judged.criterion().noticeable())) {
                told.add(new Told(
                        sentence(difference) + causes(difference) + ".", Optional.of(judged), hardly(difference)));
            }
        }
        Set<String> beyond = new LinkedHashSet<>();
        for (Judged judged : comparison.missing()) {
            beyond.add(
                    judged.criterion().ofLinks()
                            ? "The links cannot be compared throughout: one set-up has parts by points that the other has"
                                    + " not."
                            : judged.criterion().ahead().isPresent()
                                    ? "Straight ahead they cannot be compared throughout: one file says more of brakes or engine than the"
                                            + " other."
                                    : judged.criterion().loads().isPresent()
                                            ? "What parts carry cannot be compared throughout: one set-up has mounts that the"
                                                    + " other has not, or says more of them."
                                            : judged.criterion().ofRide()
                                                    ? "The ride cannot be compared throughout: dampers are given for one end or one set-up only."
                                                    : "There is nothing to compare " + JudgedWords.pace(judged)
                                                            + ": one of the two does not get there.");
        }
        List<String> sentences = new ArrayList<>(beyond);
        List<Change> idle = comparison.withoutEffect();
        if (!idle.isEmpty()) {
            List<String> names = idle.stream().map(ChangeWords::name).toList();
            sentences.add("No effect on any figure, at any pace or at the limit, "
                    + (idle.size() == 1 ? "has " : "have ") + listed(names) + ".");
            idle.forEach(change -> NotGiven.whyIdle(change.path())
                    .ifPresent(why ->
                            sentences.add("With " + ChangeWords.name(change) + " that is because " + why + ".")));
        }
        avoided(sentences);
        sentences.forEach(sentence -> told.add(new Told(sentence, Optional.empty(), false)));
        return told;
    }

    private OptionalDouble lastPace() {
        return comparison.differences().stream()
                .map(difference -> difference.judged().pace())
                .flatMapToDouble(OptionalDouble::stream)
                .max();
    }

    private void avoided(List<String> sentences) {
        List<Difference> doubtful = comparison.notByAllOrders();
        if (doubtful.isEmpty()) {
            return;
        }
        boolean none = false;
        boolean some = false;
        for (Difference difference : doubtful) {
            none |= difference.shares().isEmpty();
            some |= difference.shares().isPresent();
        }
        String silent = comparison.withoutAnswer() > 0
                ? comparison.withoutAnswer() + " of the " + comparison.combinations()
                        + " combinations of these changes have no answer"
                : "Some combinations of these changes do not get to every pace";
        if (some) {
            sentences.add(silent + "; the shares leave out the orders of changing that pass through them.");
        }
        if (none) {
            sentences.add(
                    silent + (some ? "; for" : ", and for") + " some figures every order passes through one of them:"
                            + " their difference cannot be shared out.");
        }
    }

    /** What a difference means, without its causes and full stop. */
    private String sentence(Difference difference) {
        Judged judged = difference.judged();
        double base = shown(judged, difference.base());
        double value = shown(judged, difference.value());
        String text = JudgedWords.pace(judged) + " ";
        String start = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
        if (hardly(difference)) {
            return start + name(judged.criterion()) + " stays as it is, " + number(judged, base);
        }
        double step = shown(judged, difference.difference());
        String by = ", by " + number(judged, Math.abs(step));
        String range = " (" + digits(judged, base) + " to " + number(judged, value) + ")";
        return start + moved(judged.criterion(), base, value, step > 0) + by + range;
    }

    static String moved(Criterion criterion, double base, double value, boolean up) {
        if (isOfBalance(criterion)) {
            if (base >= 0 && value >= 0) {
                return "it understeers " + (up ? "more" : "less");
            }
            if (base <= 0 && value <= 0) {
                return "it oversteers " + (up ? "less" : "more");
            }
            return up ? "it turns from oversteer to understeer" : "it turns from understeer to oversteer";
        }
        if (criterion.equals(Criterion.ROLL_GRADIENT)) {
            return "each further g adds " + (up ? "more" : "less") + " lean";
        }
        if (criterion.equals(Criterion.FRONT_SHARE)) {
            return "more of the load transfer goes to the " + (up ? "front" : "rear") + " tyres";
        }
        if (criterion.equals(Criterion.INSIDE_REAR_LOAD)) {
            return "the inside rear wheel carries " + (up ? "more" : "less");
        }
        if (criterion.equals(Criterion.LIMIT)) {
            return "it corners " + (up ? "faster" : "slower");
        }
        if (criterion.equals(Criterion.SEAT_COMFORT)) {
            return "it rides " + (up ? "harder" : "softer") + " where the driver sits";
        }
        if (criterion.needsNoTurn()) {
            return "the " + criterion.name() + " goes " + (up ? "up" : "down");
        }
        if (criterion.ofRide()) {
            return end(criterion) + " is damped " + (up ? "more" : "less");
        }
        return "the front uses " + (up ? "more" : "less") + " of its grip beside the rear";
    }

    private static boolean isOfBalance(Criterion criterion) {
        return criterion.equals(Criterion.UNDERSTEER) || criterion.equals(Criterion.NEAR_UNDERSTEER);
    }

    private static String end(Criterion criterion) {
        return "the " + criterion.axle().orElseThrow().key();
    }

    private static String name(Criterion criterion) {
        if (isOfBalance(criterion)) {
            return "its understeer gradient";
        }
        if (criterion.equals(Criterion.FRONT_SHARE)) {
            return "the front tyres' share of the load transfer";
        }
        if (criterion.equals(Criterion.INSIDE_REAR_LOAD)) {
            return "the load of the inside rear wheel";
        }
        if (criterion.equals(Criterion.LIMIT)) {
            return "its lateral acceleration";
        }
        return criterion.equals(Criterion.LIMIT_BALANCE) ? "the limit balance" : "the lean that each further g adds";
    }

    /** The changes that push a difference along, or against it, the largest first; small ones are left out. */
    private static List<Integer> worthSaying(Difference difference, boolean along) {
        List<Double> shares = difference.shares().orElseThrow().shares();
        double all = shares.stream().mapToDouble(Math::abs).sum();
        return IntStream.range(0, shares.size())
                .filter(i -> Math.abs(shares.get(i)) >= WORTH_SAYING * all)
                .filter(i -> (shares.get(i) > 0 == difference.difference() > 0) == along)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -Math.abs(shares.get(i))))
                .toList();
    }

    /** The changes that made a difference, by name. */
    private String makers(Difference difference) {
        if (comparison.changes().size() < 2 || difference.shares().isEmpty()) {
            return "";
        }
        List<String> with = named(worthSaying(difference, true));
        List<String> against = named(worthSaying(difference, false));
        if (with.isEmpty()) {
            return "";
        }
        return ": by " + with.get(0) + (with.size() > 1 ? " first, then " + listed(with.subList(1, with.size())) : "")
                + (against.isEmpty()
                        ? ""
                        : "; against it " + (against.size() == 1 ? "works " : "work ") + listed(against));
    }

    private List<String> named(List<Integer> changes) {
        return changes.stream()
                .limit(MOST_CAUSES)
                .map(i -> ChangeWords.subject(comparison.changes().get(i)))
                .toList();
    }

    private String causes(Difference difference) {
        List<Change> changes = comparison.changes();
        if (hardly(difference) || difference.shares().isEmpty()) {
            return "";
        }
        List<Integer> with = worthSaying(difference, true);
        List<Integer> against = worthSaying(difference, false);
        if (with.isEmpty()) {
            return "";
        }
        int main = with.get(0);
        double part = difference.shares().get().shares().get(main) / difference.difference();
        boolean alone = with.size() == 1 && against.isEmpty();
        StringBuilder text = new StringBuilder();
        if (changes.size() > 1) {
            text.append("; ").append(part > MOST && !alone ? "chiefly" : part(part));
        }
        text.append(" because ");
        text.append(ChangeWords.sentence(changes.get(main)));
        if (changes.size() > 1) {
            text.append(" (").append(share(difference, main)).append(')');
        }
        List<String> others = new ArrayList<>();
        for (int i : with.subList(1, Math.min(with.size(), MOST_CAUSES))) {
            others.add(ChangeWords.subject(changes.get(i)) + " (" + share(difference, i) + ")");
        }
        if (!others.isEmpty()) {
            text.append(", then ").append(listed(others));
        }
        others.clear();
        for (int i : against.subList(0, Math.min(against.size(), MOST_CAUSES))) {
            others.add(ChangeWords.subject(changes.get(i)) + " (" + share(difference, i) + ")");
        }
        if (!others.isEmpty()) {
            text.append("; against it ")
                    .append(others.size() == 1 ? "works " : "work ")
                    .append(listed(others));
        }
        return text.toString();
    }

    /** A part of the whole as it is said. */
    static String part(double part) {
        if (part > WHOLE) {
            return "all of it";
        }
        if (part > MOST) {
            return "nearly all of it";
        }
        if (Math.abs(part - 3.0 / 4) < ROUND) {
            return "three quarters of it";
        }
        if (Math.abs(part - 2.0 / 3) < ROUND) {
            return "two thirds of it";
        }
        if (Math.abs(part - 1.0 / 2) < ROUND) {
            return "half of it";
        }
        if (Math.abs(part - 1.0 / 3) < ROUND) {
            return "one third of it";
        }
        return Numbers.percent(part, 0) + " of it";
    }

    private String share(Difference difference, int change) {
        double si = difference.shares().orElseThrow().shares().get(change);
        Judged judged = difference.judged();
        String number = Numbers.signed(shown(judged, si), units.digits(judged.criterion()));
        return symbol(judged).isEmpty() ? number : number + " " + symbol(judged);
    }

    /** Whether nothing of the difference is to be seen in the numbers that would be said. */
    private boolean hardly(Difference difference) {
        Judged judged = difference.judged();
        return digits(judged, shown(judged, Math.abs(difference.difference()))).equals(digits(judged, 0))
                || digits(judged, shown(judged, difference.base()))
                        .equals(digits(judged, shown(judged, difference.value())));
    }

    private double shown(Judged judged, double si) {
        return units.of(judged.criterion()).fromSi(si);
    }

    private String symbol(Judged judged) {
        return units.of(judged.criterion()).symbol();
    }

    private String number(Judged judged, double shown) {
        return digits(judged, shown) + (symbol(judged).isEmpty() ? "" : " " + symbol(judged));
    }

    private String digits(Judged judged, double shown) {
        return Numbers.fixed(shown, units.digits(judged.criterion()));
    }

    private static String listed(List<String> things) {
        if (things.size() < 2) {
            return String.join("", things);
        }
        return String.join(", ", things.subList(0, things.size() - 1)) + " and " + things.get(things.size() - 1);
    }
}
