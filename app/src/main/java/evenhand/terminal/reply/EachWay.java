package evenhand.terminal.reply;

import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.catalogue.Adjustable;
import evenhand.forms.Contents;
import evenhand.scenario.Setup;
import evenhand.terminal.page.OneScreen;
import evenhand.turn.Direction;
import evenhand.words.BothWays;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a set-up answers on one circle, one way round or both.
 *
 * @param first the way whose figures stand in the old places
 * @param other the other way, where both were asked and are not alike
 * @param alike whether both were asked and are one turn and its mirror image
 * @param cautions what comes before all else
 * @param estimated what was estimated of all that the answer rests on
 * @param <A> the answer of one way
 */
public record EachWay<A>(
        Setup setup,
        Way<A> first,
        Optional<Way<A>> other,
        boolean alike,
        List<Caution> cautions,
        List<Adjustable> estimated)
        implements SetupAnswer {
    /** The answer of one way, or why there is none. */
    public record Way<A>(Direction direction, Optional<A> found, Optional<NoAnswer> noAnswer) {
        public static <A> Way<A> of(Direction direction, A found) {
            return new Way<>(direction, Optional.of(found), Optional.empty());
        }

        public static <A> Way<A> none(Direction direction, NoAnswer why) {
            return new Way<>(direction, Optional.empty(), Optional.of(why));
        }
    }

    /**
     * What nobody may miss.
     *
     * @param of the set-up that it is said of
     * @param radius of the circle that it is said of, m
     */
    public record Caution(String of, double radius, String words) {
        /** That one end goes first one way round and the other end the other way; nothing where it does not. */
        public static List<Caution> of(Setup setup, Answers answers) {
            return LimitWords.split(answers).stream()
                    .map(split ->
                            new Caution(setup.name(), answers.bends().get(0).radius(), split))
                    .toList();
        }

        String named() {
            return of + ": " + words;
        }

        /** "As bought on 15 m": whose and where. */
        private String whose(Units units) {
            return of + " on " + units.radius(radius);
        }
    }

    /**
     * The set-ups on one circle.
     *
     * @param radius m
     */
    public record Circle<A>(double radius, List<EachWay<A>> setups) {
        public Circle {
            setups = List.copyOf(setups);
        }
    }

    /**
     * One way of one set-up on one circle, with what tells it from the others.
     *
     * @param where ", turning right", ", on a circle of 60 m", both, or nothing where there is but one
     */
    public record Shown<A>(Setup setup, String where, List<String> warnings, Way<A> way) {
        /** As the tables say it. */
        public Optional<String> noAnswer() {
            return way.noAnswer().map(why -> "No answer: " + why.text() + ".");
        }
    }

    public EachWay {
        cautions = List.copyOf(cautions);
        estimated = List.copyOf(estimated);
    }

    /** @param ways in the order of the trial's */
    public static <A> EachWay<A> of(Setup setup, List<Way<A>> ways, boolean alike, List<Caution> cautions) {
        return new EachWay<>(
                setup,
                ways.get(0),
                ways.stream().skip(1).filter(way -> !alike).findFirst(),
                alike,
                cautions,
                setup.estimated());
    }

    /** The same of an answer that rests on more estimates than those of the turn. */
    public EachWay<A> estimating(List<Adjustable> more) {
        return new EachWay<>(
                setup,
                first,
                other,
                alike,
                cautions,
                Stream.concat(estimated.stream(), more.stream()).toList());
    }

    public Optional<A> found() {
        return first.found();
    }

    @Override
    public Optional<NoAnswer> noAnswer() {
        return first.noAnswer();
    }

    @Override
    public SharedParts.Remarks remarks() {
        return SharedParts.Remarks.of(setup, estimated, warnings());
    }

    /** The cautions; by name where they are of another set-up. */
    private List<String> warnings() {
        return cautions.stream()
                .map(caution -> caution.of().equals(setup.name()) ? caution.words() : caution.named())
                .toList();
    }

    /** The ways that are told of: one where both are alike. */
    public List<Way<A>> ways() {
        List<Way<A>> ways = new ArrayList<>(List.of(first));
        other.ifPresent(ways::add);
        return ways;
    }

    /** Whether every way of every set-up has an answer. */
    public static <A> boolean isComplete(List<Circle<A>> circles) {
        return circles.stream()
                .flatMap(circle -> circle.setups().stream())
                .flatMap(one -> one.ways().stream())
                .allMatch(way -> way.found().isPresent());
    }

    /** Those that have an answer the first way. */
    public static <A> List<EachWay<A>> answered(List<EachWay<A>> setups) {
        return setups.stream().filter(one -> one.found().isPresent()).toList();
    }

    /** Who has no answer on a circle, one way or both, and why, a line each. */
    public static <A> List<String> silent(List<Circle<A>> circles, Reply reply, Units units) {
        List<String> lines = new ArrayList<>();
        for (Circle<A> circle : circles) {
            String on = circles.size() > 1 ? "on a circle of " + units.radius(circle.radius()) : "";
            for (EachWay<A> one : circle.setups()) {
                for (Way<A> way : one.ways()) {
                    String turning = one.turning(way);
                    String where = on.isEmpty() ? turning : on + (turning.isEmpty() ? ": " : ", " + turning);
                    way.noAnswer()
                            .ifPresent(
                                    why -> lines.add(reply.noAnswer(one.setup().name(), where + why.text())));
                }
            }
        }
        return lines;
    }

    /** What has to be warned of, each once, at the head of a page; by name where there is much of it. */
    public static <A> void warnings(List<Circle<A>> circles, OneScreen page, Units units) {
        Function<Caution, String> whose = circles.size() > 1 ? one -> one.whose(units) : Caution::of;
        List<Caution> cautions = circles.stream()
                .flatMap(circle -> circle.setups().stream())
                .flatMap(one -> one.cautions().stream())
                .distinct()
                .toList();
        page.warnings(
                cautions.stream()
                        .map(one -> whose.apply(one) + ": " + one.words())
                        .toList(),
                "One way round the front goes first, the other way the rear: "
                        + String.join(
                                ", ", cautions.stream().map(whose).distinct().toList())
                        + ".");
    }

    /** "turning right: " where the ways are told apart, else nothing. */
    public String turning(Way<A> way) {
        return other.isPresent() ? BothWays.turning(way.direction()) + ": " : "";
    }

    /** All ways of all set-ups on all circles. */
    public static <A> List<Shown<A>> shown(List<Circle<A>> circles, Units units) {
        List<Shown<A>> all = new ArrayList<>();
        for (Circle<A> circle : circles) {
            String on = circles.size() > 1 ? ", on a circle of " + units.radius(circle.radius()) : "";
            for (EachWay<A> one : circle.setups()) {
                for (Way<A> way : one.ways()) {
                    String turning = one.other().isPresent() ? ", " + BothWays.turning(way.direction()) : "";
                    List<String> warnings = way.equals(one.first()) ? one.warnings() : List.of();
                    all.add(new Shown<>(one.setup(), on + turning, warnings, way));
                }
            }
        }
        return all;
    }

    /** "40 m circle, both ways", as far as it is the same for all. */
    public static String trial(Trial trial, Units units) {
        String circles =
                String.join(", ", trial.radii().stream().map(units::radius).toList());
        return circles
                + (trial.radii().size() > 1 ? " circles, " : " circle, ")
                + (trial.ways().isBoth() ? "both ways" : BothWays.turning(trial.direction()));
    }

    /**
     * A set-up by its name, what it answers each way, and the remarks.
     *
     * @param figures of either way
     * @param words of the first way
     */
    public static <A> Contents<EachWay<A>> contents(Contents<A> figures, Function<A, List<String>> words) {
        return contents(figures, figures, words);
    }

    /** The same where the first way has more than figures. */
    public static <A> Contents<EachWay<A>> contents(
            Contents<A> first, Contents<A> figures, Function<A, List<String>> words) {
        Contents<Way<A>> other = Contents.<Way<A>>ofAny()
                .text("turn", way -> way.direction().key())
                .withIfAny(Way::found, figures)
                .partIfAny("noAnswer", Way::noAnswer, SharedParts.NO_ANSWER);
        return Contents.<EachWay<A>>ofAny()
                .text("name", one -> one.setup().name())
                .withIfAny(EachWay::found, first)
                .textIfAny("words", one -> one.words(words))
                .partIfAny("noAnswer", EachWay::noAnswer, SharedParts.NO_ANSWER)
                .mark("alike", one -> one.alike() && one.found().isPresent())
                .partIfAny("otherTurn", EachWay::other, other)
                .with(EachWay::remarks, SharedParts.REMARKS);
    }

    private Optional<String> words(Function<A, List<String>> ofAnswer) {
        List<String> words = new ArrayList<>();
        warnings().forEach(warning -> words.add(BothWays.WARNING + warning));
        found().map(ofAnswer).ifPresent(words::addAll);
        return words.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", words));
    }

    /** The circles after the first. */
    public static <A> Contents<Circle<A>> atRadius(Contents<EachWay<A>> setup) {
        return Contents.<Circle<A>>ofAny().number("radius_m", Circle::radius).list("setups", Circle::setups, setup);
    }
}
