package evenhand.words.effects;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.advice.Advice;
import evenhand.advice.Price;
import evenhand.advice.Refused;
import evenhand.advice.Remedy;
import evenhand.advice.Steps;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.answers.Ways;
import evenhand.car.Car;
import evenhand.catalogue.Adjustable;
import evenhand.choice.Effect;
import evenhand.lowering.Need;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said against a complaint, whole sentences of it: first with figures made up, then of the demo cars. */
class RemedyWordsTest {
    private static final Trial TRIAL = new Trial(Trial.USUAL_PACES, List.of(Trial.USUAL_RADIUS), Ways.BOTH);
    private static final Judged NEAR = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());
    private static final Setup SALOON =
            Demo.read("harbour-saloon").setup("As bought").orElseThrow();
    private static final Answers BEFORE = TRIAL.ask(SALOON.car());
    private static final List<String> ALL = List.of(
            "pushes gently",
            "pushes briskly",
            "pushes at the limit",
            "slides gently",
            "slides briskly",
            "slides at the limit",
            "leans",
            "spins the inside wheel",
            "rides hard",
            "wallows");

    private static Complaint pushes(boolean shown) {
        return new Complaint(Complaint.Kind.PUSHES, NEAR, false, shown);
    }

    private static Effect.Step step(String path, double size) {
        Adjustable number = SALOON.values().stream()
                .filter(value -> value.path().equals(path))
                .findFirst()
                .orElseThrow();
        return new Effect.ByNumber(number, size);
    }

    private static Effect.Move move(Criterion criterion, double base, double difference) {
        Unit unit = criterion.unit();
        Judged judged =
                new Judged(criterion, criterion.hasPace() ? OptionalDouble.of(Trial.BRISK) : OptionalDouble.empty());
        return new Effect.Move(judged, unit.toSi(base), unit.toSi(difference));
    }

    private static Effect effect(Effect.Step step, double base, double difference) {
        return new Effect(
                step,
                List.of(
                        move(Criterion.NEAR_UNDERSTEER, base, difference),
                        move(Criterion.ROLL_GRADIENT, 6, 0.25),
                        move(Criterion.LIMIT, 0.8, 0.002)));
    }

    private static Remedy remedy(Effect.Step step, double difference, Optional<Remedy> upTo) {
        List<Effect> ways = List.of(effect(step, 2, difference / 2), effect(step, 3, difference));
        return new Remedy(step, ways, 1, 1, 1, 0, false, Price.NONE, upTo);
    }

    private static List<String> help(Complaint complaint, Remedy... remedies) {
        return new RemedyWords(complaint, Ways.BOTH, false, Units.METRIC)
                .help(SALOON.car(), BEFORE, new Advice(List.of(remedies), List.of()));
    }

    @Test
    void aStopThatIsTouchedEarlierIsSaidWithBothPacesAndLostHeightWithWhatIsMissed() {
        Remedy plain = remedy(step("front.toe", Math.toRadians(0.1)), -0.5, Optional.empty());
        Unit g = Unit.of("g");
        Price price = new Price(
                Optional.of(new Price.Earlier(OptionalDouble.of(g.toSi(0.62)), g.toSi(0.55))),
                Optional.of(new Price.LessLow(
                        0.028, new Refused.Missed(Need.FIRST_STOP_TOUCHED, OptionalDouble.of(g.toSi(0.46))))));
        Remedy dear = new Remedy(plain.step(), plain.effects(), 1, 1, 1, 0, true, price, Optional.empty());
        assertThat(help(pushes(true), dear))
                .contains(
                        "By itself that is too small a gain to be felt.",
                        "The first bump stop is then touched at 0.55 g, earlier than now (0.62 g).",
                        "It costs height: let down by 28 mm, which works now, the pace at which the first bump stop is"
                                + " touched would be 0.46 g, and at least 0.50 g is wanted.");
        RemedyWords words = new RemedyWords(pushes(true), Ways.BOTH, false, Units.METRIC);
        assertThat(words.line(dear))
                .endsWith("; a bump stop touched at 0.55 g instead of 0.62 g; no longer works 28 mm down;"
                        + " too small to feel");
        assertThat(words.line(plain)).doesNotContain("stop").doesNotContain("feel");
    }

    @Test
    void theBestIsNamedFirstWithWhatItMovesAndWhatWorkItIs() {
        assertThat(help(pushes(true), remedy(step("front.toe", Math.toRadians(0.1)), -0.5, Optional.empty())))
                .containsExactly(
                        "Change first: front toe by +0.1 deg. It moves the understeer near the limit, turning right, the"
                                + " worse way, by −0.50 deg/g, from 3.00 to 2.50 deg/g.",
                        "It also moves the roll gradient at 0.5 g by +0.25 deg/g.",
                        "It is set, and can be set back.");
        assertThat(help(pushes(true), remedy(step("front.track", 0.02), -0.5, Optional.empty())))
                .last()
                .isEqualTo("It takes other links, brackets or wheels, and what is cut or welded stays so.");
        assertThat(help(pushes(true), remedy(step("rear.spring.rate", 2000), -0.5, Optional.empty())))
                .last()
                .isEqualTo("It takes another part; the old one can go in again.");
    }

    @Test
    void aBarIsFittedInARangeOfSizes() {
        Unit unit = Unit.of("N*m/deg");
        Remedy heavy = remedy(new Effect.ByBar("rear.bar.rollStiffness", unit.toSi(180)), -1.4, Optional.empty());
        Remedy light = remedy(new Effect.ByBar("rear.bar.rollStiffness", unit.toSi(60)), -0.6, Optional.of(heavy));
        assertThat(help(pushes(true), light))
                .contains(
                        "Fit first: a rear bar, where there is none, of 60 to 180 N*m/deg. The lightest moves the"
                                + " understeer near the limit, turning right, the worse way, by −0.60 deg/g, from 3.00 to"
                                + " 2.40 deg/g; the heaviest by −1.40 deg/g.",
                        "It takes other brackets or parts; they can come off again.");
        assertThat(new RemedyWords(pushes(true), Ways.BOTH, false, Units.METRIC).line(light))
                .isEqualTo(
                        "rear.bar.rollStiffness of 60 to 180 N*m/deg: −0.60 to −1.40 deg/g; also the roll gradient at"
                                + " 0.5 g by +0.25 deg/g (rebuilding)");
        assertThat(new RemedyWords(pushes(true), Ways.BOTH, false, Units.METRIC)
                        .line(light, light.effects().get(0)))
                .contains(": −0.30 to −0.70 deg/g;");
    }

    @Test
    void whatIsNotAdvisedIsNamedWithItsReason() {
        Effect.Step rubber = step("rear.bumpStop.gap", -0.01);
        Effect.Step lower = step("rear.lowered", 0.01);
        Effect.Step bar =
                new Effect.ByBar("rear.bar.rollStiffness", Unit.of("N*m/deg").toSi(60));
        List<Refused> refused = List.of(
                new Refused(rubber, effect(rubber, 3, -2), 20, Refused.Reason.STOP, Optional.empty()),
                new Refused(
                        lower,
                        effect(lower, 3, -1),
                        10,
                        Refused.Reason.NEED,
                        Need.ALL.stream()
                                .filter(need -> need.key().equals("rearBumpTravelToStop"))
                                .findFirst()
                                .map(need -> new Refused.Missed(need, OptionalDouble.of(0.018)))),
                new Refused(bar, effect(bar, 3, -4), 5, Refused.Reason.SLIDES, Optional.empty()),
                new Refused(rubber, effect(rubber, 3, -2), 2, Refused.Reason.UNUSUAL, Optional.empty()));
        assertThat(new RemedyWords(pushes(true), Ways.BOTH, false, Units.METRIC)
                        .help(SALOON.car(), BEFORE, new Advice(List.of(), refused)))
                .containsExactly(
                        "No single usual step lowers the understeer near the limit noticeably without harm.",
                        "Not advised, though it would move the figure: rear bump stop gap −10 mm, a stop that comes nearer"
                                + " is the classic snap; rear lowered +10 mm, the rear bump travel to the stop would be"
                                + " 18 mm, and at least 25 mm is wanted; rear bar of 60 N*m/deg, the tail would slide near"
                                + " the limit; and 1 more.");
    }

    private static List<String> said(String demo, String name, String words) {
        Setup setup = Demo.read(demo).setup(name).orElseThrow();
        Answers before = TRIAL.ask(setup.car());
        return said(setup, before, new Steps(setup.entries(), TRIAL, before), words);
    }

    private static List<String> said(Setup setup, Answers before, Steps steps, String words) {
        Complaint complaint = complaint(setup.car(), before, words);
        Advice advice = complaint.shown() ? Advice.against(steps, complaint.wish()) : Advice.NONE;
        return new RemedyWords(complaint, Ways.BOTH, TRIAL.asksAlike(setup.car()), Units.METRIC)
                .help(setup.car(), before, advice);
    }

    private static Complaint complaint(Car car, Answers before, String words) {
        return Complaint.of(words, car, before, Trial.GENTLE, Trial.BRISK).orElseThrow();
    }

    private static String shown(Setup setup, Criterion criterion) {
        return Units.METRIC.show(
                new Judged(criterion, OptionalDouble.empty())
                        .si(TRIAL.ask(setup.car()))
                        .orElseThrow(),
                criterion);
    }

    @Test
    void whatTheSumsDoNotShowIsSaidToBeNone() {
        Setup roadster = Demo.read("tinkers-lane-roadster").setup("Middle hole").orElseThrow();
        assertThat(said("tinkers-lane-roadster", "Middle hole", "wallows"))
                .containsExactly(
                        "By the sums it does not wallow: damping " + shown(roadster, Criterion.FRONT_DAMPING)
                                + " in front, " + shown(roadster, Criterion.REAR_DAMPING) + " behind.",
                        "Look instead at dampers that no longer give the forces in the file, and worn bushes.");
        assertThat(said("harbour-saloon", "As bought", "slides at the limit"))
                .first()
                .asString()
                .startsWith("By the sums it does not slide near the limit: it understeers by ");
        assertThat(said("slipper-coupe", "Short soft rubbers", "slides briskly"))
                .hasSize(2)
                .last()
                .asString()
                .startsWith("Look instead at the pressures and the age of the rear tyres");
    }

    @Test
    void aCarThatPushesOneWayAndSlidesTheOtherIsMadeAlikeFirst() {
        assertThat(said("slipper-coupe", "As the customer wished", "pushes at the limit"))
                .anyMatch(sentence ->
                        sentence.matches("Turning left it understeers by .* deg/g, turning right it oversteers"
                                + " by .* deg/g: make the two ways alike first, by corner weights and by what takes up the shaft's"
                                + " torque\\."));
    }

    @Test
    void aTailOnItsRubbersIsLiftedOffThem() {
        assertThat(said("slipper-coupe", "As the customer wished", "slides at the limit"))
                .first()
                .asString()
                .startsWith("Change first: rear lowered by −10 mm.");
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void everyDemoCarIsAnsweredForEveryComplaint(String demo) {
        Setup setup = Demo.read(demo).setups().get(0);
        Answers before = TRIAL.ask(setup.car());
        Steps steps = new Steps(setup.entries(), TRIAL, before);
        for (String words : ALL) {
            Complaint complaint = complaint(setup.car(), before, words);
            List<String> said = said(setup, before, steps, words);
            String text = String.join(" ", said);
            assertThat(text)
                    .as(demo + ": " + words)
                    .doesNotContain("NaN", "null", "  ", "..")
                    .doesNotContain("Optional");
            assertThat(said).allMatch(sentence -> sentence.endsWith("."));
            assertThat(text.startsWith("By the sums it does not ")).isEqualTo(!complaint.shown());
            assertThat(text.contains("Look instead at ")).isEqualTo(!complaint.shown());
            assertThat(text).doesNotContain("Change first: rear bump stop gap by −");
        }
    }
}
