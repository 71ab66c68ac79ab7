package evenhand.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.complex.ComplexField;
import org.apache.commons.math3.linear.Array2DRowFieldMatrix;
import org.apache.commons.math3.linear.ArrayFieldVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.FieldLUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class QuarterCarTest {
    private static final int CARS = 3000;

    /** Any quarter car, damping from almost none to far beyond critical. */
    static QuarterCar any(SplittableRandom random) {
        double sprung = 80 + 500 * random.nextDouble();
        double unsprung = 15 + 80 * random.nextDouble();
        double wheelRate = 5e3 + 1e5 * random.nextDouble() * random.nextDouble();
        double tyreRate = 100e3 + 250e3 * random.nextDouble();
        double ratio = Math.pow(10, -2.5 + 3 * random.nextDouble());
        return new QuarterCar(sprung, unsprung, wheelRate, tyreRate, ratio * 2 * Math.sqrt(wheelRate * sprung));
    }

    /** State z, z', w, w'. */
    static RealMatrix dynamics(QuarterCar car) {
        double ks = car.wheelRate();
        double c = car.dampingRate();
        double ms = car.sprungMass();
        double mu = car.unsprungMass();
        return MatrixUtils.createRealMatrix(new double[][] {
            {0, 1, 0, 0},
            {-ks / ms, -c / ms, ks / ms, c / ms},
            {0, 0, 0, 1},
            {ks / mu, c / mu, -(ks + car.tyreRate()) / mu, -c / mu}
        });
    }

    @Test
    void modesAreTheEigenvaluesThatALibraryFinds() {
        SplittableRandom random = new SplittableRandom(11);
        int creeping = 0;
        for (int i = 0; i < CARS; i++) {
            QuarterCar car = any(random);
            EigenDecomposition eigen = new EigenDecomposition(dynamics(car));
            Complex[] theirs = new Complex[4];
            for (int j = 0; j < 4; j++) {
                theirs[j] = new Complex(eigen.getRealEigenvalue(j), eigen.getImagEigenvalue(j));
            }
            Modes modes = car.modes();
            for (Modes.Mode mode : new Modes.Mode[] {modes.body(), modes.hop()}) {
                double z = mode.dampingRatio();
                double w = mode.angularFrequency();
                if (z >= 1) {
                    creeping++;
                    double root = Math.sqrt(z * z - 1);
                    near(theirs, new Complex(-w * (z + root), 0), i);
                    near(theirs, new Complex(-w / (z + root), 0), i);
                } else {
                    near(theirs, new Complex(-w * z, w * Math.sqrt(1 - z * z)), i);
                }
            }
            assertThat(modes.body().angularFrequency())
                    .isLessThanOrEqualTo(modes.hop().angularFrequency() * (1 + 1e-12));
        }
        assertThat(creeping).isGreaterThan(CARS / 20);
    }

    private static void near(Complex[] roots, Complex own, int seed) {
        double best = Arrays.stream(roots)
                .mapToDouble(root -> root.subtract(own).abs())
                .min()
                .orElseThrow();
        // Where two roots meet, each is only known to the root of rounding.
        double close = Arrays.stream(roots)
                .mapToDouble(root -> root.subtract(own).abs())
                .filter(distance -> distance > best)
                .min()
                .orElse(1);
        double largest = Arrays.stream(roots).mapToDouble(Complex::abs).max().orElseThrow();
        double allowed = (1e-10 * own.abs() + 1e-13 * largest) * Math.max(1, own.abs() / close);
        assertThat(best).as("car %d, root %s", seed, own).isLessThan(allowed);
    }

    @Test
    void modesMultiplyAndAddUpToThePolynomial() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < CARS; i++) {
            QuarterCar car = any(random);
            Modes modes = car.modes();
            double body = square(modes.body().angularFrequency());
            double hop = square(modes.hop().angularFrequency());
            double product = car.wheelRate() / car.sprungMass() * car.tyreRate() / car.unsprungMass();
            assertThat(body * hop).isCloseTo(product, within(1e-12 * product));
            double damping = 2 * modes.body().dampingRatio() * Math.sqrt(body)
                    + 2 * modes.hop().dampingRatio() * Math.sqrt(hop);
            double trace = car.dampingRate() * (1 / car.sprungMass() + 1 / car.unsprungMass());
            assertThat(damping).isCloseTo(trace, within(1e-12 * trace));
        }
    }

    @Test
    void twoModesInOneAreStillFound() {
        // A damper between two masses of this kind makes both modes critical at once.
        double mass = 100;
        QuarterCar car = new QuarterCar(mass, mass, 4e4, 4e4, 0);
        for (double c = 1; c < 1e5; c *= 1.01) {
            Modes modes = car.damped(c).modes();
            assertThat(modes.body().dampingRatio()).isPositive();
            assertThat(modes.hop().dampingRatio()).isPositive();
            assertThat(modes.body().angularFrequency()).isFinite();
        }
    }

    @Test
    void aStronglyDampedBodyHasNoDampedFrequency() {
        QuarterCar car = new QuarterCar(250, 35, 20e3, 200e3, 0);
        assertThat(car.damped(1500).modes().body().dampedFrequency()).isPresent();
        QuarterCar stiff = car.damped(30_000);
        Modes modes = stiff.modes();
        assertThat(modes.body().dampingRatio() >= 1 || modes.hop().dampingRatio() >= 1)
                .isTrue();
        assertThat(modes.body().dampingRatio() >= 1 ? modes.body() : modes.hop())
                .satisfies(mode -> assertThat(mode.dampedFrequency()).isEmpty());
    }

    @Test
    void anUndampedCarHasNoDampingAndItsOwnFrequencies() {
        Modes modes = new QuarterCar(317.5, 45.4, 22000, 192000, 0).modes();
        assertThat(modes.body().dampingRatio()).isZero();
        assertThat(modes.hop().dampingRatio()).isZero();
        assertThat(modes.body().frequency()).isCloseTo(1.253923528, within(1e-9));
        assertThat(modes.hop().frequency()).isCloseTo(10.93531696, within(1e-8));
    }

    @Test
    void transferIsTheDirectSolutionInComplexNumbers() {
        SplittableRandom random = new SplittableRandom(13);
        for (int i = 0; i < 500; i++) {
            QuarterCar car = any(random);
            Transfer transfer = new Transfer(car);
            double frequency = Math.pow(10, -1 + 3 * random.nextDouble());
            double w = 2 * Math.PI * frequency;
            Complex strut = new Complex(car.wheelRate(), w * car.dampingRate());
            Complex body = new Complex(-car.sprungMass() * w * w, 0).add(strut);
            Complex wheel = new Complex(car.tyreRate() - car.unsprungMass() * w * w, 0).add(strut);
            Complex[][] matrix = {{body, strut.negate()}, {strut.negate(), wheel}};
            Complex[] right = {Complex.ZERO, new Complex(car.tyreRate(), 0)};
            Complex[] moved = new FieldLUDecomposition<>(
                            new Array2DRowFieldMatrix<>(ComplexField.getInstance(), matrix))
                    .getSolver()
                    .solve(new ArrayFieldVector<>(ComplexField.getInstance(), right))
                    .toArray();
            transfer.at(frequency);
            close(transfer.bodyAcceleration(), moved[0].abs() * w * w);
            close(transfer.suspensionTravel(), moved[1].subtract(moved[0]).abs());
            close(transfer.tyreDeflection(), Complex.ONE.subtract(moved[1]).abs());
        }
    }

    private static void close(double own, double theirs) {
        // At low frequency the direct solution loses digits in its differences.
        assertThat(own).isCloseTo(theirs, within(1e-9 * theirs + 1e-13));
    }

    @Test
    void noDamperChangesWhatHappensAtTheInvariantFrequencies() {
        double tyreHop = Math.sqrt(190000.0 / 60) / (2 * Math.PI);
        double rattle = Math.sqrt(190000.0 / 360) / (2 * Math.PI);
        for (double[] pair : new double[][] {{16000, 1000}, {40000, 300}, {5000, 4000}}) {
            Transfer transfer = new Transfer(new QuarterCar(300, 60, pair[0], 190000, pair[1]));
            transfer.at(tyreHop);
            assertThat(transfer.bodyAcceleration() * 60 / 190000).isCloseTo(0.2, within(1e-9));
            transfer.at(rattle);
            assertThat(transfer.suspensionTravel()).isCloseTo(1.2, within(1e-9));
        }
    }

    @Test
    void aQuarterCarOfNothingIsRefused() {
        assertThatThrownBy(() -> new QuarterCar(0, 40, 2e4, 2e5, 1e3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new QuarterCar(300, 40, Double.NaN, 2e5, 1e3))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double square(double x) {
        return x * x;
    }
}
