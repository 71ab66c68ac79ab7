package evenhand.roadtest;

import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Deviation;
import evenhand.catalogue.Entries;
import evenhand.doubt.Learnt;
import evenhand.doubt.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.math3.linear.MatrixUtils;

/**
 * What a road test can correct: every number of the car that may be off, and of each test its grip, the mark's place and the
 * circle's radius. Each is z standard deviations from what was said, z standard normal before the test:
 * <pre>  value = said + z·halfWidth/2  </pre>
 * cut at what is possible. A number that several set-ups share has one z in all, each by its own tolerance.
 */
public final class Unknowns {
    private static final double LEAST_GRIP = 0.05;
    private static final List<String> FRICTIONS =
            List.of(".tyre.friction", ".tyre.coefficients.pDy1", ".tyre.coefficients.pDy2");

    /** What belongs to a day and not to the car. */
    public enum OfTest {
        GRIP("grip"),
        STRAIGHT_AHEAD("straightAhead"),
        RADIUS("radius");

        private final String key;

        OfTest(String key) {
            this.key = key;
        }

        /** Name in files and answers. */
        public String key() {
            return key;
        }
    }

    /** One of a test's own. */
    private record Own(int test, OfTest what) {}

    private final List<Tolerance> numbers;
    private final List<RoadTest> tests;
    private final Tolerance.Unsaid unsaid;
    private final Map<String, Integer> places = new HashMap<>();
    private final List<Own> own = new ArrayList<>();

    /**
     * @param cars whose numbers may be off
     * @param unsaid how numbers without a tolerance are taken
     */
    public Unknowns(List<Entries> cars, List<RoadTest> tests, Tolerance.Unsaid unsaid) {
        numbers = Tolerance.withRide(cars, unsaid);
        this.tests = List.copyOf(tests);
        this.unsaid = unsaid;
        for (int k = 0; k < numbers.size(); k++) {
            places.put(numbers.get(k).path(), k);
        }
        for (int test = 0; test < tests.size(); test++) {
            for (OfTest what : OfTest.values()) {
                if (said(test, what).tolerance() > 0) {
                    own.add(new Own(test, what));
                }
            }
        }
    }

    /** What is said of a test's own; of no circle a radius that is not off. */
    Measured said(int test, OfTest what) {
        RoadTest one = tests.get(test);
        return switch (what) {
            case GRIP -> one.grip();
            case STRAIGHT_AHEAD -> one.straightAhead();
            case RADIUS -> one.circle().orElse(new Measured(one.radius(), 0));
        };
    }

    public int count() {
        return numbers.size() + own.size();
    }

    /** The car's numbers, which come first. */
    public List<Tolerance> numbers() {
        return numbers;
    }

    /** The place of a test's own; none where it is not off. */
    public OptionalInt place(int test, OfTest what) {
        int at = own.indexOf(new Own(test, what));
        return at < 0 ? OptionalInt.empty() : OptionalInt.of(numbers.size() + at);
    }

    /** A test's own, moved. */
    double own(int test, OfTest what, double[] z) {
        Measured said = said(test, what);
        OptionalInt at = place(test, what);
        double value = said.value() + (at.isPresent() ? z[at.getAsInt()] * said.standardDeviation() : 0);
        return switch (what) {
            case GRIP -> Math.max(LEAST_GRIP, value);
            case STRAIGHT_AHEAD -> value;
            case RADIUS -> Math.max(0.5 * said.value(), value);
        };
    }

    /** The test whose own an unknown is; none of a number of the car. */
    OptionalInt testOf(int unknown) {
        return unknown < numbers.size()
                ? OptionalInt.empty()
                : OptionalInt.of(own.get(unknown - numbers.size()).test());
    }

    /** Which of a test's own an unknown is. */
    OfTest whatOf(int unknown) {
        return own.get(unknown - numbers.size()).what();
    }

    /** A name that tells it from all others. */
    public String name(int unknown) {
        return unknown < numbers.size()
                ? numbers.get(unknown).path()
                : whatOf(unknown).key() + " of \""
                        + tests.get(testOf(unknown).orElseThrow()).name() + '"';
    }

    /** The car's numbers, moved; on a surface of usual grip. */
    Deviation car(double[] z) {
        return number -> at(number, z);
    }

    /** The same on the surface of a day. */
    Deviation car(double[] z, double grip) {
        return number -> isFriction(number.path()) ? grip * at(number, z) : at(number, z);
    }

    private double at(Adjustable number, double[] z) {
        Integer k = places.get(number.path());
        return k == null ? number.si() : Learnt.at(number, unsaid, z[k]);
    }

    private static boolean isFriction(String path) {
        return FRICTIONS.stream().anyMatch(path::endsWith);
    }

    /** What is learnt of the car. */
    Learnt learnt(double[] z, double[][] covariance) {
        int n = numbers.size();
        return new Learnt(
                numbers.stream().map(Tolerance::path).toList(),
                Arrays.copyOf(z, n),
                Arrays.stream(covariance, 0, n)
                        .map(row -> Arrays.copyOf(row, n))
                        .toArray(double[][]::new),
                unsaid);
    }

    /** Where the car has turned out to be; the days are still to come. */
    double[] moved(Optional<Learnt> learnt) {
        double[] z = new double[count()];
        for (int k = 0; k < numbers.size(); k++) {
            String path = numbers.get(k).path();
            z[k] = learnt.map(known -> known.movedBy(path)).orElse(0.0);
        }
        return z;
    }

    /** What is left of each two: of the car what was learnt of it, of the days all. */
    double[][] left(Optional<Learnt> learnt) {
        double[][] c = MatrixUtils.createRealIdentityMatrix(count()).getData();
        for (int k = 0; k < numbers.size(); k++) {
            for (int j = 0; j < numbers.size(); j++) {
                String one = numbers.get(k).path();
                String other = numbers.get(j).path();
                c[k][j] = learnt.map(known -> known.together(one, other)).orElse(k == j ? 1.0 : 0.0);
            }
        }
        return c;
    }
}
