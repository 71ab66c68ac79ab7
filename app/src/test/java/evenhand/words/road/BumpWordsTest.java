package evenhand.words.road;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.bump.Bump;
import evenhand.bump.BumpAnswer;
import evenhand.bump.DriveOver;
import evenhand.bump.EnergyBalance;
import evenhand.bump.SeatMotion;
import evenhand.bump.Series;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.road.Profile;
import evenhand.scenario.Demo;
import evenhand.turn.Direction;
import evenhand.turn.Wheel;
import evenhand.words.Units;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a bump does to a car, said: every sentence follows its number. */
class BumpWordsTest {
    private static final Car CAR =
            Demo.read("harbour-saloon").setup("As bought").orElseThrow().car().settled();

    /** A wheel over an event, made up. */
    private static final class Made {
        private double jolt = 3;
        private double bump = 0.03;
        private double droop = 0.02;
        private double load = 900;
        private double offGround;
        private boolean stop;
        private boolean metal;
        private boolean droopStop;
        private OptionalDouble grip = OptionalDouble.of(0.001);
        private OptionalDouble toStop = OptionalDouble.of(0.05);
        private OptionalDouble toMetal = OptionalDouble.of(0.08);
        private OptionalDouble toDroop = OptionalDouble.of(0.06);
        private boolean settled = true;

        Bump bump() {
            List<Double> none = List.of();
            return new Bump(
                    jolt,
                    bump,
                    droop,
                    load,
                    offGround,
                    stop,
                    metal,
                    droopStop,
                    grip,
                    1,
                    new Bump.Room(toStop, toMetal, toDroop),
                    settled,
                    new EnergyBalance(0, 0, 0),
                    new Series(none, none, none, none, none, none));
        }
    }

    private static BumpAnswer straight(Made front, Made rear) {
        SeatMotion seat =
                new SeatMotion(1.3, 0.25 * Weights.GRAVITY, true, new SeatMotion.Series(List.of(), List.of()));
        return new BumpAnswer.Straight(Map.of(End.FRONT, front.bump(), End.REAR, rear.bump()), seat);
    }

    private static String inShort(Made front, Made rear) {
        return BumpWords.inShort(straight(front, rear), Direction.LEFT, Units.METRIC);
    }

    private static String allOf(Made front) {
        return String.join(" ", BumpWords.of(CAR, straight(front, new Made()), Direction.LEFT, Units.METRIC));
    }

    @Test
    void whoLeavesTheGroundIsSaidAndElseWhoComesNearest() {
        Made front = new Made();
        Made rear = new Made();
        rear.load = 310;
        assertThat(inShort(front, rear))
                .startsWith("no tyre leaves the ground, the rear comes nearest with 310 N left; no stop is struck; "
                        + "the seat's mounting is jolted by 0.25 g at most.");
        front.load = 120;
        assertThat(inShort(front, rear)).startsWith("no tyre leaves the ground, the front comes nearest with 120 N");
        front.offGround = 0.021;
        assertThat(inShort(front, rear)).startsWith("the front tyre is off the ground for 0.021 s in all;");
        rear.offGround = 0.043;
        assertThat(inShort(front, rear))
                .startsWith("every tyre leaves the ground, the rear for longest, 0.043 s in all;");
        front.offGround = 0.055;
        assertThat(inShort(front, rear)).startsWith("every tyre leaves the ground, the front for longest, 0.055 s");
    }

    @Test
    void whatIsStruckIsNamedMetalInsteadOfTheRubberBeforeIt() {
        Made front = new Made();
        Made rear = new Made();
        front.stop = true;
        assertThat(inShort(front, rear)).contains("; the bump stop is struck at the front; ");
        rear.stop = true;
        assertThat(inShort(front, rear)).contains("; the bump stop is struck at the front and rear; ");
        rear.metal = true;
        front.droopStop = true;
        assertThat(inShort(front, rear))
                .contains("; metal meets metal at the rear, the bump stop is struck at the front, the droop stop at"
                        + " the front; ");
    }

    @Test
    void gripIsSpokenOfWhereSomebodyMissesIt() {
        Made front = new Made();
        Made rear = new Made();
        front.grip = OptionalDouble.of(0.0049);
        rear.grip = OptionalDouble.of(0.0049);
        assertThat(inShort(front, rear)).doesNotContain("grip");
        assertThat(allOf(front)).doesNotContain("grip");
        rear.grip = OptionalDouble.of(0.0051);
        assertThat(inShort(front, rear)).endsWith("; the front loses 0.5 % of its side grip and the rear 0.5 %.");
        front.grip = OptionalDouble.of(0.123);
        assertThat(inShort(front, rear)).endsWith("; the front loses 12.3 % of its side grip and the rear 0.5 %.");
        assertThat(allOf(front)).contains("The changes of its load take 12.3 % of its side grip.");
        front.grip = OptionalDouble.empty();
        rear.grip = OptionalDouble.empty();
        assertThat(inShort(front, rear)).doesNotContain("grip");
    }

    @Test
    void howFarIntoBumpIsSaidAgainstItsStop() {
        Made front = new Made();
        assertThat(allOf(front))
                .contains(
                        "Front: the body is jolted by 0.31 g at most. The wheel goes 30 mm into bump, "
                                + "short of its bump stop at 50 mm, and goes 20 mm into droop, short of its droop stop at 60 mm.");
        front.bump = 0.06;
        front.stop = true;
        assertThat(allOf(front)).contains("60 mm into bump, on its bump stop from 50 mm, and");
        front.toStop = OptionalDouble.of(-0.004);
        assertThat(allOf(front)).contains("60 mm into bump, on its bump stop all the way, and");
        front.metal = true;
        assertThat(allOf(front)).contains("on its bump stop all the way, metal on metal from 80 mm, and");
        front.toStop = OptionalDouble.empty();
        front.metal = false;
        front.stop = false;
        assertThat(allOf(front)).contains("goes 60 mm into bump, and");
        front.bump = 0;
        assertThat(allOf(front)).contains("The wheel stays out of bump, and goes");
    }

    @Test
    void howFarIntoDroopIsSaidAgainstItsStop() {
        Made front = new Made();
        front.droop = 0.07;
        front.droopStop = true;
        assertThat(allOf(front)).contains("goes 70 mm into droop, onto its droop stop at 60 mm.");
        front.toDroop = OptionalDouble.empty();
        assertThat(allOf(front)).contains("goes 70 mm into droop.");
        front.droop = 0;
        assertThat(allOf(front)).contains("and stays out of droop.");
    }

    @Test
    void contactAndRestAreSaidAsTheyAre() {
        Made front = new Made();
        assertThat(allOf(front))
                .contains("The tyre stays on the ground, with 900 N at least.")
                .doesNotContain("off the ground")
                .doesNotContain("come to rest");
        front.offGround = 0.0123;
        front.settled = false;
        assertThat(allOf(front))
                .contains("The tyre is off the ground for 0.012 s in all.")
                .contains("It had not come to rest ten seconds after the event.");
    }

    @Test
    void inACornerInnerAndOuterAreThoseOfTheTurn() {
        for (Direction way : Direction.values()) {
            BumpAnswer.InCorner driven = (BumpAnswer.InCorner)
                    DriveOver.inCorner(CAR, radius -> Profile.ripples(0.002, 1.2, 2), 14, 0.4 * Weights.GRAVITY, way);
            Map<Wheel, Bump> wheels = new EnumMap<>(Wheel.class);
            for (Wheel wheel : Wheel.values()) {
                Made made = new Made();
                boolean inner = (wheel.side() == Side.LEFT) == (way == Direction.LEFT);
                made.grip = OptionalDouble.of(inner ? 0.2 : 0.1);
                made.jolt = inner && wheel.end() == End.REAR ? 6 : 3;
                made.offGround = inner ? 0.1 : 0;
                wheels.put(wheel, made.bump());
            }
            BumpAnswer answer = new BumpAnswer.InCorner(driven.row(), wheels);
            String all = String.join(" ", BumpWords.of(CAR, answer, way, Units.METRIC));
            assertThat(all)
                    .contains("At the front the changes of load take 20.0 % of the side force of the inner wheel and"
                            + " 10.0 % of that of the outer one.")
                    .contains("Inner rear: the body is jolted by 0.61 g at most.")
                    .contains("Outer rear: the body is jolted by 0.31 g at most.");
            String first = way == Direction.LEFT ? "inner" : "outer";
            assertThat(all).startsWith(first.equals("inner") ? "Inner front" : "Outer front");
            assertThat(BumpWords.inShort(answer, way, Units.METRIC))
                    .startsWith("the inner front and inner rear tyres leave the ground, the inner")
                    .contains("the hardest jolt is 0.61 g at the inner rear");
        }
    }

    @Test
    void whereItIsDrivenIsSaidWithTheRadiusThatSpeedAndPaceMake() {
        assertThat(BumpWords.where("kerb 60 mm", 10, OptionalDouble.empty(), Direction.LEFT, Units.METRIC))
                .isEqualTo("Over kerb 60 mm at 36 km/h, straight ahead.");
        assertThat(BumpWords.where(
                        "kerb 60 mm", 10, OptionalDouble.of(0.5 * Weights.GRAVITY), Direction.RIGHT, Units.METRIC))
                .isEqualTo("Over kerb 60 mm at 36 km/h, turning right at 0.5 g on a radius of 20.4 m.");
        assertThat(BumpWords.gripLost(true)).contains("at the slip that the wheel has in the corner");
        assertThat(BumpWords.gripLost(false)).contains("of the most that the tyre could give");
        assertThat(BumpWords.inShort(new BumpAnswer.BeyondLimit(0.9 * Weights.GRAVITY), Direction.LEFT, Units.METRIC))
                .isEqualTo("The car does not hold 0.9 g at this speed at all: it is beyond its limit.");
    }
}
