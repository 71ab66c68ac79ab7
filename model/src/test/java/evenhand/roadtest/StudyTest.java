package evenhand.roadtest;

import static evenhand.roadtest.RoadTestCars.EXACT;
import static evenhand.roadtest.RoadTestCars.G;
import static evenhand.roadtest.RoadTestCars.degrees;
import static evenhand.roadtest.RoadTestCars.pace;
import static evenhand.roadtest.RoadTestCars.read;
import static evenhand.roadtest.RoadTestCars.test;
import static evenhand.roadtest.RoadTestCars.toRead;
import static evenhand.roadtest.RoadTestCars.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.answers.Criterion;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.End;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.doubt.Spread;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StudyTest {
    private static final Entries CAR = RoadTestCars.car();
    private static final Entries FIRMER = with(CAR, "front.spring.rate", "75 N/mm ± 4 N/mm");

    private static Study.Question question(List<RoadTest> tests) {
        return new Study.Question(
                List.of("As it is", "Firmer"),
                List.of(CAR, FIRMER),
                tests,
                Optional.empty(),
                200,
                1,
                EXACT,
                Progress.NONE);
    }

    private static RoadTest asExpected(double... paces) {
        RoadTest empty = test("t", CAR, toRead(paces));
        Unknowns unknowns = new Unknowns(List.of(CAR, FIRMER), List.of(empty), EXACT);
        return read(empty, unknowns, 0, new double[unknowns.count()], new double[4 * paces.length]);
    }

    private static Spread of(Findings found, int setup, Criterion criterion, boolean before) {
        return found.setups().get(setup).figures().stream()
                .map(figure -> before ? figure.before() : figure.after())
                .filter(spread -> spread.judged().criterion().equals(criterion))
                .findFirst()
                .orElseThrow();
    }

    /** Readings just as expected move nothing, agree too well, and narrow also what is said of the set-up that was not driven. */
    @Test
    void aTestOfOneSetUpNarrowsTheOthers() {
        Findings found =
                Study.of(question(List.of(asExpected(0.1, 0.2, 0.3, 0.4)))).orElseThrow();
        assertThat(found.agreement().chiSquare()).isCloseTo(0, within(1e-6));
        assertThat(found.agreement().degrees()).isEqualTo(16);
        assertThat(found.agreement().agrees()).isTrue();
        assertThat(found.inputs()).allSatisfy(input -> {
            assertThat(input.moved()).isCloseTo(0, within(1e-4));
            assertThat(input.suspect()).isFalse();
            assertThat(input.afterTolerance()).isLessThanOrEqualTo(input.beforeTolerance() * (1 + 1e-9));
        });
        for (int setup = 0; setup < 2; setup++) {
            double before = of(found, setup, Criterion.UNDERSTEER, true).width();
            double after = of(found, setup, Criterion.UNDERSTEER, false).width();
            assertThat(after).isLessThan(0.8 * before);
        }
        assertThat(found.effectiveShare()).isBetween(0.3, 1.0);
        assertThat(found.tests().get(0).gradients()).hasSize(6).allSatisfy(gradient -> {
            assertThat(gradient.measured()).isCloseTo(gradient.before(), within(1e-9));
            assertThat(gradient.after()).isCloseTo(gradient.before(), within(1e-6));
        });
    }

    @Test
    void aReadingFarOffDoesNotFitAndFileAndRoadDoNotAgree() {
        RoadTest test = asExpected(0.1, 0.2, 0.3, 0.4);
        List<Observation> readings = new ArrayList<>(test.observations());
        Observation.Reading slip = (Observation.Reading) readings.get(5);
        readings.set(
                5,
                new Observation.Reading(
                        slip.turn(),
                        slip.pace(),
                        slip.channel(),
                        new Measured(
                                slip.measured().value() + Math.toRadians(3),
                                slip.measured().tolerance())));
        Findings found = Study.of(question(List.of(test.with(readings)))).orElseThrow();
        assertThat(found.agreement().agrees()).isFalse();
        List<Findings.Seen> misfits = found.tests().get(0).seen().stream()
                .filter(seen -> !seen.fits())
                .toList();
        assertThat(misfits).hasSize(1);
        assertThat(misfits.get(0).observation()).isEqualTo(readings.get(5));
        assertThat(misfits.get(0).residual()).isPositive();
    }

    /** A tape that slipped by 120 mm: the lean tells. */
    @Test
    void aNumberThatCannotBeBelievedIsASuspect() {
        Entries truth = with(CAR, "cgHeight", "600 mm ± 30 mm");
        RoadTest empty = test("t", truth, toRead(0.2, 0.3, 0.4, 0.5));
        Unknowns unknowns = new Unknowns(List.of(truth), List.of(empty), EXACT);
        RoadTest ofTruth = read(empty, unknowns, 0, new double[unknowns.count()], new double[16]);
        RoadTest test = test("t", CAR, ofTruth.observations());
        Findings found = Study.of(question(List.of(test))).orElseThrow();
        Findings.Input first = found.inputs().get(0);
        assertThat(first.number().path()).isEqualTo("cgHeight");
        assertThat(first.suspect()).isTrue();
        assertThat(first.moved()).isPositive();
        assertThat(first.after()).isGreaterThan(first.number().si());
    }

    /** What is asked for next narrows as much as is said once it has been read. */
    @Test
    void theNextReadingNarrowsAsSaid() {
        RoadTest test = asExpected(0.1, 0.2);
        Findings found = Study.of(question(List.of(test))).orElseThrow();
        assertThat(found.nextReadings()).hasSize(3);
        Findings.Next next = found.nextReadings().get(0);
        Channel channel = next.channel().equals("roll")
                ? Channel.ROLL
                : next.channel().equals("sideslip") ? Channel.SIDESLIP : Channel.STEERING_WHEEL;
        double inG = next.pace().orElseThrow() / G;
        RoadTest empty = test(
                "next",
                CAR,
                List.of(new Observation.Reading(
                        next.turn().orElseThrow(), pace(inG), channel, degrees(0, Math.toDegrees(Usual.of(channel))))));
        Unknowns unknowns = new Unknowns(List.of(CAR, FIRMER), List.of(test, empty), EXACT);
        RoadTest second = read(empty, unknowns, 1, new double[unknowns.count()], new double[1]);
        Findings after = Study.of(question(List.of(test, second))).orElseThrow();
        double said = next.high() - next.low();
        Spread was = of(found, 0, Criterion.NEAR_UNDERSTEER, false);
        Spread now = of(after, 0, Criterion.NEAR_UNDERSTEER, false);
        assertThat(now.width()).isLessThan(was.width());
        assertThat(now.standardDeviation() * 4).isCloseTo(said, within(0.15 * said));
        double firstSaid =
                found.nextReadings().get(0).high() - found.nextReadings().get(0).low();
        double lastSaid =
                found.nextReadings().get(2).high() - found.nextReadings().get(2).low();
        assertThat(lastSaid).isLessThan(firstSaid);
    }

    /** Every figure of the corrected car is that of the entries that say so. */
    @Test
    void whatIsLearntGoesWithTheEntries() {
        RoadTest empty = test("t", CAR, toRead(0.2, 0.4));
        Unknowns unknowns = new Unknowns(List.of(CAR, FIRMER), List.of(empty), EXACT);
        double[] truth = new double[unknowns.count()];
        truth[0] = 1.5;
        truth[3] = -1.5;
        Study.Question question = question(List.of(read(empty, unknowns, 0, truth, new double[8])));
        Findings found = Study.of(question).orElseThrow();
        Study.Lesson lesson = Study.lesson(question).orElseThrow();
        assertThat(lesson.agreement()).isEqualTo(found.agreement());
        Spread limit = of(found, 1, Criterion.LIMIT, false);
        OptionalDouble asked = limit.judged()
                .si(Trial.usual()
                        .ask(Catalogue.build(FIRMER.off(lesson.learnt()))
                                .value()
                                .orElseThrow()));
        assertThat(limit.nominal()).isEqualTo(asked);
        assertThat(limit.low()).isLessThan(asked.orElseThrow());
        assertThat(limit.high()).isGreaterThan(asked.orElseThrow());
        assertThat(limit.nominal())
                .isNotEqualTo(of(found, 1, Criterion.LIMIT, true).nominal());
    }

    @Test
    void whichEndWentFirstIsComparedAndNeverFitted() {
        RoadTest test = asExpected(0.2);
        List<Observation> more = new ArrayList<>(test.observations());
        more.add(new Observation.Limit(Direction.LEFT, pace(0.75), 0.03 * G, Optional.of(End.FRONT)));
        Study.Lesson front = Study.lesson(question(List.of(test.with(more)))).orElseThrow();
        more.set(4, new Observation.Limit(Direction.LEFT, pace(0.75), 0.03 * G, Optional.of(End.REAR)));
        Study.Lesson rear = Study.lesson(question(List.of(test.with(more)))).orElseThrow();
        assertThat(rear.agreement()).isEqualTo(front.agreement());
    }
}
