package evenhand.words.lowering;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Spring;
import evenhand.handsums.HandSums;
import evenhand.lowering.Stance;
import evenhand.ride.RideAnswer;
import evenhand.ride.Standing;
import evenhand.scenario.Demo;
import evenhand.words.Turned;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Why a lower car leans no less, or why it does: the words turn round with lever, lean and tyres. */
class LeverWordsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Standing FREE = new Standing(3000, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE);
    private static final Car CAR =
            Demo.read("harbour-saloon").setup("As bought").orElseThrow().car().settled();

    /** Sums with the sprung weight at a height, a roll arm, a lean in deg per g and the tyres' part of it at each end. */
    private static HandSums sums(double height, double arm, double lean, double tyres) {
        HandSums own = Turned.sums();
        HandSums.AxleSums axle = own.front();
        HandSums.AxleSums tilted = new HandSums.AxleSums(
                axle.sideForce(),
                axle.linkForce(),
                axle.geometricMoment(),
                axle.unsprungMoment(),
                axle.elasticMoment(),
                axle.suspensionRollStiffness(),
                axle.tyreRollStiffness(),
                axle.tyreRollStiffnessLeft(),
                axle.rollStiffness(),
                Math.toRadians(tyres),
                axle.suspensionRoll(),
                axle.lateralLoadTransfer());
        return new HandSums(
                own.lateralAcceleration(),
                new Car.Sprung(1100, 1.2, height, 0.54, 0.46),
                arm,
                tilted,
                tilted,
                Math.toRadians(lean),
                own.budget());
    }

    /** The saloon with its front roll centre so high. */
    private static Car car(double frontRollCentre) {
        return car(frontRollCentre, CAR.rear());
    }

    private static Axle onUprightSprings() {
        Axle.Live rear = (Axle.Live) CAR.rear();
        return new Axle.Live(
                rear.track(),
                rear.unsprung(),
                rear.lateralLocator(),
                new Spring.Upright(rear.spring().rate(), 1, 1, Spring.Lengths.UNKNOWN),
                rear.bar(),
                rear.stops(),
                rear.damper(),
                rear.lowered(),
                rear.alignment(),
                rear.tyre(),
                rear.rollInertia());
    }

    private static Car car(double frontRollCentre, Axle rear) {
        Axle.Independent front = (Axle.Independent) CAR.front();
        return new Car(
                CAR.weights(),
                CAR.wheelbase(),
                CAR.cgHeight(),
                CAR.chassisTorsionalStiffness(),
                CAR.steering(),
                CAR.air(),
                CAR.rollingResistance(),
                new Axle.Independent(
                        front.track(),
                        front.unsprung(),
                        new Axle.RollCentre(frontRollCentre, -1),
                        front.spring(),
                        front.bar(),
                        front.stops(),
                        front.damper(),
                        front.lowered(),
                        front.rollCamber(),
                        front.alignment(),
                        front.tyre(),
                        front.rollInertia()),
                rear,
                CAR.drive(),
                CAR.pitchInertia(),
                CAR.seat());
    }

    private static Stance.Stands stands(double lowered, double rollCentre, HandSums sums) {
        return stands(lowered, car(rollCentre), sums);
    }

    private static Stance.Stands stands(double lowered, Car car, HandSums sums) {
        return new Stance.Stands(
                lowered,
                car,
                Optional.empty(),
                FREE,
                FREE,
                Optional.empty(),
                Optional.empty(),
                new HandSums.Found(sums),
                List.of(),
                new RideAnswer.NoRide("not asked"));
    }

    private static List<String> words(double rollCentre, HandSums low, boolean stiffened, Units units) {
        Stance.Stands high = stands(0, 0.060, sums(0.550, 0.420, 6, 1));
        List<String> said = LeverWords.of(high, stands(0.040, rollCentre, low), stiffened, units);
        assertThat(said)
                .hasSize(2)
                .allSatisfy(sentence -> assertThat(sentence).endsWith(".").doesNotContain("NaN"));
        return said;
    }

    private static String lever(double rollCentre, double arm) {
        return words(rollCentre, sums(0.515, arm, 6, 1), false, Units.METRIC).get(0);
    }

    private static String lean(double arm, double lean, boolean stiffened) {
        return words(0.02, sums(0.515, arm, lean, 1), stiffened, Units.METRIC).get(1);
    }

    @Test
    void weightRollCentresAndLeverAreToldAsTheyMove() {
        String opening = "From 0 mm to 40 mm down its sprung weight comes down by 35 mm, the front roll centre ";
        String axis = ": the lever between the weight and the axis that it rolls about ";
        assertThat(lever(0.010, 0.431))
                .isEqualTo(opening + "by 50 mm and the rear one not at all" + axis + "grows from 420 mm to 431 mm.");
        assertThat(lever(0.068, 0.401))
                .isEqualTo(opening + "rises by 8 mm and the rear one not at all" + axis
                        + "shrinks from 420 mm to 401 mm.");
        assertThat(lever(0.0605, 0.4209))
                .endsWith("the front roll centre not at all and the rear one not at all" + axis + "stays 421 mm.");
        assertThat(lever(0.060, 0.4191)).endsWith(axis + "stays 419 mm.");
        assertThat(lever(0.060, 0.4211)).endsWith(axis + "grows from 420 mm to 421 mm.");
        assertThat(lever(0.060, 0.4189)).endsWith(axis + "shrinks from 420 mm to 419 mm.");
        assertThat(words(0.010, sums(0.515, 0.431, 6, 1), false, Units.IMPERIAL).get(0))
                .startsWith(
                        "From 0.00 in to 1.57 in down its sprung weight comes down by 1.38 in, the front roll centre by"
                                + " 1.97 in");
    }

    @Test
    void aLongerLeverLeansMoreUnlessSomethingElseHolds() {
        assertThat(lean(0.44, 6.3, false))
                .isEqualTo(
                        "So it leans more, although it is lower: 6.00 deg/g by the hand sums before, 6.30 deg/g there.");
        assertThat(lean(0.44, 6.09, false)).startsWith("So it leans no less, although it is lower: ");
        assertThat(lean(0.44, 5.91, false)).startsWith("So it leans no less, although it is lower: ");
        assertThat(lean(0.44, 5.7, false)).startsWith("It leans less all the same, because ");
        assertThat(lean(0.44, 6.11, false)).startsWith("So it leans more, ");
        assertThat(lean(0.44, 5.89, false)).startsWith("It leans less all the same, ");
    }

    @Test
    void withTheSameLeverOnlyTheLeanCounts() {
        assertThat(lean(0.4205, 6.05, false)).startsWith("So it leans as before, although it is lower: ");
        assertThat(lean(0.4195, 6.3, false)).startsWith("It leans more: ");
        assertThat(lean(0.4205, 5.7, false)).startsWith("It leans less, because ");
    }

    @Test
    void withAShorterLeverItLeansLessOrElseThatIsSaid() {
        assertThat(lean(0.40, 5.7, false)).startsWith("So it leans less: ");
        assertThat(lean(0.40, 5.95, false)).startsWith("Yet it leans as before: ");
        assertThat(lean(0.40, 6.3, false)).startsWith("Yet it leans more: ");
    }

    @Test
    void stifferSpringsAreNamedFirst() {
        assertThat(lean(0.44, 5.7, true)).startsWith("On its stiffer springs it leans less: ");
        assertThat(lean(0.40, 6.3, true)).startsWith("On its stiffer springs it leans more: ");
        assertThat(lean(0.40, 6.05, true)).startsWith("On its stiffer springs it leans as before: ");
    }

    @Test
    void lessLeanComesOfTheTyresOrOfTheSprings() {
        // It leans half a degree less in all; the tyres' mean tilt by more than half of that, or by less.
        assertThat(words(0.02, sums(0.515, 0.44, 5.5, 0.74), false, Units.METRIC)
                        .get(1))
                .startsWith("It leans less all the same, because its tyres give less under a lower weight: ");
        assertThat(words(0.02, sums(0.515, 0.44, 5.5, 0.76), false, Units.METRIC)
                        .get(1))
                .startsWith(
                        "It leans less all the same, because leaning springs gain leverage as the roll centre falls: ");
        Stance.Stands high = stands(0, car(0.06, onUprightSprings()), sums(0.550, 0.420, 6, 1));
        Stance.Stands low = stands(0.04, car(0.02, onUprightSprings()), sums(0.515, 0.44, 5.5, 0.76));
        assertThat(LeverWords.of(high, low, false, Units.METRIC).get(1))
                .startsWith("It leans less all the same, because less of its weight hangs on its springs in roll: ");
    }
}
