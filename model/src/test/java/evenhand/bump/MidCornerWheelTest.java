package evenhand.bump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.RoadCars;
import evenhand.car.Side;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.Weights;
import evenhand.road.Piece;
import evenhand.road.Profile;
import evenhand.suspension.AxleSuspension;
import evenhand.suspension.DamperLines;
import evenhand.suspension.StraightForce;
import evenhand.turn.Direction;
import evenhand.turn.PaceAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.tyre.MagicFormula;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

/** One wheel about the loaded, leaned state of a turn, against what can be worked out by hand. */
class MidCornerWheelTest {
    private static final double BODY = 310;
    private static final double WHEEL = 34;
    private static final double SPRING = 24e3;
    private static final double DAMPING = 1900;
    private static final double TYRE = 190e3;
    private static final double LOAD = 2600;
    private static final double IN_TURN = 0.021;
    private static final double MORE = 0.004;
    private static final double SLIP = Math.toRadians(4.1);
    private static final double LEAN = Math.toRadians(2.3);

    private static final MagicFormula LAW =
            new MagicFormula(2900, 46e3, 0.98, 0.13, 1.9, 1.38, -0.7, 0.05, 2.6, Math.toRadians(1.5), 0.03);

    /** A wheel that has one straight line for everything and stands in the turn with this load. */
    private static WheelStation straight(double damping, double held) {
        return new WheelStation(
                BODY,
                WHEEL,
                StraightForce.of(2750, SPRING),
                DamperLines.atWheel(StraightForce.of(0, damping)),
                TYRE,
                held,
                IN_TURN,
                MORE,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                SideGrip.atSlip(LAW, SLIP, LEAN));
    }

    private static Bump over(WheelStation station, Profile road, double speed) {
        return DriveOver.over(station, road, speed, DriveOver.USUAL_TOLERANCE, Series.FINEST)
                .orElseThrow();
    }

    /** Part of a sine of this period, in rows of a thousandth of a second, over the last whole period before a row. */
    private static Complex wave(List<Double> rows, double mean, int end, int period) {
        Complex sum = Complex.ZERO;
        for (int i = end - period; i < end; i++) {
            double angle = 2 * Math.PI * i / period;
            sum = sum.add(new Complex(Math.cos(angle), -Math.sin(angle)).multiply(rows.get(i) - mean));
        }
        return sum.multiply(2.0 / period);
    }

    /** What a sine of the road under a straight wheel makes, for each metre of it, by the two masses' equations. */
    private record Response(Complex wheel, Complex body, Complex load) {
        /** @param period s */
        private static Response at(double period) {
            // ms·s²·z = (k + c·s)·(w − z), mu·s²·w = kt·(r − w) − (k + c·s)·(w − z)
            Complex s = new Complex(0, 2 * Math.PI / period);
            Complex strut = s.multiply(DAMPING).add(SPRING);
            Complex body = s.multiply(s).multiply(BODY);
            Complex bodyByWheel = strut.divide(strut.add(body));
            Complex resists = s.multiply(s).multiply(WHEEL).add(TYRE).add(body.multiply(bodyByWheel));
            Complex wheel = Complex.valueOf(TYRE).divide(resists);
            return new Response(
                    wheel,
                    wheel.multiply(bodyByWheel),
                    Complex.ONE.subtract(wheel).multiply(TYRE));
        }
    }

    @Test
    void smallRipplesMoveALoadedWheelAsItsTransferFunctionSays() {
        Complex height = new Complex(0, -1e-3); // of a sine
        double speed = 12.5;
        for (int period : new int[] {800, 200, 90, 50}) { // ms: below the body's swing, above it, near the wheel's hop
            int ripples = 3 + 4000 / period;
            Series series = over(
                            straight(DAMPING, LOAD),
                            Profile.ripples(-height.getImaginary(), speed * period / 1000, ripples),
                            speed)
                    .series();
            int end = ripples * period;
            Response response = Response.at(period / 1000.0);
            double quick = 2 * Math.PI * 1000 / period;
            Complex wheel = response.wheel().multiply(height);
            Complex body = response.body().multiply(height);
            near(wave(series.wheel(), 0, end, period), wheel, period + " ms, wheel");
            near(wave(series.travel(), IN_TURN + MORE, end, period), wheel.subtract(body), period + " ms, travel");
            near(wave(series.tyreLoad(), LOAD, end, period), response.load().multiply(height), period + " ms, load");
            near(wave(series.bodyAcceleration(), 0, end, period), body.multiply(-quick * quick), period + " ms, jolt");
        }
    }

    private static void near(Complex is, Complex expected, String what) {
        assertThat(is.subtract(expected).norm()).as(what).isLessThan(1e-4 * expected.norm());
    }

    /** The Magic Formula written out, at the slip and lean of this wheel. */
    private static double sideForce(double load) {
        if (load <= 0) {
            return 0;
        }
        double leant = Math.pow(LEAN + Math.toRadians(1.5), 2) - Math.pow(Math.toRadians(1.5), 2);
        double most = 0.98 * (1 - 0.13 * (load - 2900) / 2900) * (1 - 2.6 * leant) * load;
        double stiffness = 46e3 * Math.sin(2 * Math.atan(load / (1.9 * 2900))) / Math.sin(2 * Math.atan(1 / 1.9));
        double x = stiffness / (1.38 * most) * (SLIP - 0.05 * LEAN);
        return most * Math.sin(1.38 * Math.atan(x + 0.7 * (x - Math.atan(x))));
    }

    @Test
    void aLoadThatSwingsLosesTheGripThatTheTyresLawTakes() {
        for (double height : new double[] {1e-3, 4e-3}) {
            int period = 100;
            int ripples = 600; // a minute, of which beginning and end are nothing
            Bump bump = over(straight(DAMPING, LOAD), Profile.ripples(height, 12.5 * period / 1000, ripples), 12.5);
            double swing = height * Response.at(period / 1000.0).load().norm();
            double sum = 0;
            double loads = 0;
            int parts = 100_000;
            for (int i = 0; i < parts; i++) {
                double load = LOAD + swing * Math.sin(2 * Math.PI * (i + 0.5) / parts);
                sum += sideForce(load);
                loads += load;
            }
            double lost = 1 - sum / parts / sideForce(loads / parts);
            assertThat(swing).as("the tyre stays down").isBetween(100.0, 0.9 * LOAD);
            double part = ripples * period / 1000.0 / bump.gripTime();
            assertThat(bump.gripTime()).isCloseTo(60.5, within(1e-9));
            assertThat(bump.gripLost().orElseThrow() / part)
                    .as("ripples of %s m", height)
                    .isCloseTo(lost, within(0.01 * lost));
        }
    }

    @Test
    void travelsAndStopsAreThoseOfTheWheelAndNotOfTheAxlesMiddle() {
        WheelStation station = new WheelStation(
                BODY,
                WHEEL,
                StraightForce.of(2750, SPRING),
                DamperLines.atWheel(StraightForce.of(0, DAMPING)),
                TYRE,
                LOAD,
                -0.03,
                -0.008,
                0.05,
                0.08,
                -0.06,
                SideGrip.atSlip(LAW, SLIP, LEAN));
        Bump bump = over(station, Profile.hump(1e-6, 1), 12.5);
        assertThat(bump.peakDroopTravel()).isCloseTo(0.038, within(1e-5));
        assertThat(bump.peakBumpTravel()).isZero();
        assertThat(bump.room().toStop()).hasValue(0.05 - 0.008);
        assertThat(bump.room().toMetal()).hasValue(0.08 - 0.008);
        assertThat(bump.room().toDroopStop()).hasValue(0.06 + 0.008);
    }

    @Test
    void nothingHappensOverAnEventWithoutHeight() {
        Bump bump = over(straight(DAMPING, LOAD), new Profile(List.of(new Piece.Line(0, 9.6, 0, 0)), 0), 12.5);
        assertThat(bump.peakBodyAcceleration()).isZero();
        assertThat(bump.peakBumpTravel()).isCloseTo(IN_TURN + MORE, within(1e-15));
        assertThat(bump.peakDroopTravel()).isZero();
        assertThat(bump.leastTyreLoad()).isCloseTo(LOAD, within(1e-9));
        assertThat(bump.timeOffGround()).isZero();
        assertThat(bump.gripLost().orElseThrow()).isCloseTo(0, within(1e-13));
        assertThat(bump.gripTime()).isCloseTo(8 * 1.2 / 12.5 + 0.5, within(1e-9));
        assertThat(bump.stopTouched()).isFalse();
        assertThat(bump.settled()).isTrue();
        assertThat(bump.series().travel()).allMatch(travel -> Math.abs(travel - IN_TURN - MORE) < 1e-15);
        assertThat(bump.series().wheel()).allMatch(rise -> Math.abs(rise) < 1e-15);
        assertThat(bump.series().tyreLoad()).allMatch(load -> Math.abs(load - LOAD) < 1e-9);
    }

    @Test
    void aWheelWhoseRoadIsGoneFallsByTheForcesOfTheTurnAlone() {
        // Without the tyre and without a damper: w'' = −T − k·u over mu, z'' = k·u over ms, u the travel from the
        // balance
        double light = 700;
        WheelStation station = straight(0, light);
        Crossing crossing = new Crossing(station, 1e-12, 1e-3);
        double speed = 10;
        double fall = 0.06; // s
        Profile drop = new Profile(List.of(new Piece.Line(0, speed * fall, -1, 0)), -1);
        assertThat(crossing.overEvent(drop, speed)).isTrue();
        double quick = Math.sqrt(SPRING * (1 / BODY + 1 / WHEEL));
        double travel = -light / WHEEL / (quick * quick) * (1 - Math.cos(quick * fall));
        double together = -light / (BODY + WHEEL) * fall * fall / 2;
        assertThat(crossing.step.wheel).isCloseTo(together + BODY / (BODY + WHEEL) * travel, within(1e-10));
        assertThat(crossing.step.body).isCloseTo(together - WHEEL / (BODY + WHEEL) * travel, within(1e-10));
        assertThat(crossing.witness.offGround).isCloseTo(fall, within(1e-12));
        assertThat(quick * fall).as("it hangs down more and more").isLessThan(Math.PI);
        assertThat(crossing.witness.leastTravel).isCloseTo(IN_TURN + travel, within(1e-9));
    }

    /** Long steps: the greatest and the least lie well within them. */
    @Test
    void peaksWithinAStepAreFoundThere() {
        double light = 700;
        Crossing falls = new Crossing(straight(0, light), 1e-7, 1);
        double quick = Math.sqrt(SPRING * (1 / BODY + 1 / WHEEL));
        double speed = 10;
        double time = 1.3 * Math.PI / quick;
        assertThat(falls.overEvent(new Profile(List.of(new Piece.Line(0, speed * time, -1, 0)), -1), speed))
                .isTrue();
        double farthest = 2 * light / WHEEL / (quick * quick);
        assertThat(falls.steps()).isLessThan(60);
        assertThat(falls.witness.leastTravel).isCloseTo(IN_TURN - farthest, within(1e-5 * farthest));
        assertThat(falls.witness.peakBodyPull)
                .isCloseTo(SPRING * farthest / BODY, within(1e-5 * SPRING * farthest / BODY));

        // the same upwards: a tyre so soft that a road far above pushes by nearly the same force throughout
        WheelStation pushed = new WheelStation(
                BODY,
                WHEEL,
                StraightForce.of(2750, SPRING),
                DamperLines.atWheel(StraightForce.of(0, 0)),
                1e-3,
                LOAD,
                IN_TURN,
                MORE,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                SideGrip.atSlip(LAW, SLIP, LEAN));
        Crossing rises = new Crossing(pushed, 1e-7, 1);
        double above = light / 1e-3;
        assertThat(rises.overEvent(new Profile(List.of(new Piece.Line(0, speed * time, above, 0)), above), speed))
                .isTrue();
        assertThat(rises.witness.mostTravel).isCloseTo(IN_TURN + farthest, within(1e-5 * farthest));

        // a wheel on its tyre alone, down a slope: the load swings by k·slope·speed/√(k/m)
        WheelStation alone = new WheelStation(
                BODY,
                WHEEL,
                StraightForce.of(2750, 0),
                DamperLines.atWheel(StraightForce.of(0, 0)),
                TYRE,
                LOAD,
                IN_TURN,
                MORE,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                SideGrip.atSlip(LAW, SLIP, LEAN));
        double hop = Math.sqrt(TYRE / WHEEL);
        Crossing down = new Crossing(alone, 1e-7, 1);
        double slope = -0.05;
        double lasts = 0.8 * Math.PI / hop;
        assertThat(down.overEvent(
                        new Profile(List.of(new Piece.Line(0, speed * lasts, 0, slope)), slope * speed * lasts), speed))
                .isTrue();
        double less = -slope * speed / hop;
        assertThat(down.steps()).isLessThan(60);
        assertThat(down.witness.leastDeflection).isCloseTo(LOAD / TYRE - less, within(1e-5 * less));
    }

    @Test
    void aWheelThatHangsInTheAirFeelsOnlyWhatIsHigherThanItHangs() {
        double hangs = 2e-3;
        WheelStation station = straight(DAMPING, -TYRE * hangs);
        Bump low = over(station, Profile.hump(0.99 * hangs, 1), 12.5);
        assertThat(low.peakBodyAcceleration()).isZero();
        assertThat(low.leastTyreLoad()).isZero();
        assertThat(low.timeOffGround()).isCloseTo(low.gripTime(), within(1e-9));
        assertThat(low.gripLost()).as("nothing to lose").isEmpty();
        // what it is pushed over something higher, body and wheel keep together: in the turn their other forces balance
        Crossing crossing = new Crossing(station, 1e-11, 1e-4);
        assertThat(crossing.overEvent(Profile.hump(3 * hangs, 1), 12.5)).isTrue();
        QuarterCarStep step = crossing.step;
        double push = crossing.witness.series().tyreLoad().stream()
                        .mapToDouble(load -> load)
                        .sum()
                * 1e-4;
        assertThat(push).isGreaterThan(10);
        assertThat(BODY * step.bodySpeed + WHEEL * step.wheelSpeed).isCloseTo(push, within(1e-3 * push));
    }

    /** A wheel of a random car in a turn. */
    private record Turned(
            String which, Axle axle, Side side, TurnRow row, AxleSuspension suspension, WheelStation station) {
        private double travel(Side of) {
            return row.wheel(Wheel.of(end(), of)).travel();
        }

        private End end() {
            return which.endsWith("front") ? End.FRONT : End.REAR;
        }

        /** Suspension roll, right side down positive. */
        private double roll() {
            return (travel(Side.RIGHT) - travel(Side.LEFT)) / axle.track();
        }

        /** Bump travel of this side at a base, when the axle has this mean travel. */
        private double travelAt(double base, double mean) {
            return mean - side.sign() * base / 2 * roll();
        }

        private double stopBase(OptionalDouble own) {
            return axle instanceof Axle.Live live
                    ? own.orElse(
                            live.spring() instanceof Spring.Leaning leaning
                                    ? leaning.base()
                                    : ((Spring.Upright) live.spring()).base())
                    : axle.track();
        }
    }

    private static List<Turned> turned() {
        List<Turned> all = new ArrayList<>();
        for (long seed = 0; seed < 60; seed++) {
            Car car = RoadCars.damped(seed).settled();
            TurnAnswer answer = SteadyTurn.answer(
                    car, List.of(0.45 * Weights.GRAVITY), 40, seed % 2 == 0 ? Direction.LEFT : Direction.RIGHT);
            if (!(answer instanceof TurnAnswer.Turns turn)
                    || !(turn.paces().get(0) instanceof PaceAnswer.InBalance balance)) {
                continue;
            }
            for (Wheel wheel : Wheel.values()) {
                all.add(new Turned(
                        "seed " + seed + ", " + wheel.side() + ", "
                                + wheel.end().key(),
                        car.axle(wheel.end()),
                        wheel.side(),
                        balance.row(),
                        AxleSuspension.of(car, wheel.end()),
                        WheelStation.inTurn(car, wheel, balance.row()).orElseThrow()));
            }
        }
        assertThat(all).hasSizeGreaterThan(150);
        return all;
    }

    @Test
    void aLeanedAxleMeetsItsStopsWhereTheirOwnBaseHasComeToThem() {
        int rubbers = 0;
        int droops = 0;
        int metals = 0;
        for (Turned at : turned()) {
            Stops stops = at.axle().stops();
            WheelStation station = at.station();
            if (stops.bump().isPresent()) {
                Stops.Bump rubber = stops.bump().get();
                rubbers++;
                assertThat(at.travelAt(at.stopBase(rubber.base()), station.touches()))
                        .as(at.which())
                        .isCloseTo(rubber.gap(), within(1e-12));
            }
            if (stops.droop().isPresent()) {
                Stops.Droop droop = stops.droop().get();
                droops++;
                assertThat(at.travelAt(at.stopBase(droop.base()), station.droopEnd()))
                        .as(at.which())
                        .isCloseTo(-droop.travel(), within(1e-12));
            }
            if (stops.metal().isPresent()) {
                Stops.Metal metal = stops.metal().get();
                metals++;
                assertThat(at.travelAt(at.stopBase(metal.base()), station.metal()))
                        .as(at.which())
                        .isCloseTo(metal.gap(), within(1e-12));
            }
        }
        assertThat(List.of(rubbers, droops, metals)).allMatch(seen -> seen > 20);
    }

    @Test
    void theWheelsOfALeanedAxleTogetherCarryWhatTheTurnsSuspensionCarries() {
        List<Turned> all = turned();
        for (int i = 0; i < all.size(); i += 2) {
            Turned left = all.get(i);
            Turned right = all.get(i + 1);
            double mean = (left.travel(Side.LEFT) + left.travel(Side.RIGHT)) / 2;
            double rollCentre = left.end() == End.FRONT
                    ? left.row().frontRollCentreHeight()
                    : left.row().rearRollCentreHeight();
            AxleSuspension suspension = left.suspension();
            suspension.at(mean, left.roll(), rollCentre);
            double both = left.station().suspension().force(left.station().travel())
                    + right.station().suspension().force(right.station().travel());
            assertThat(left.station().travel()).isCloseTo(mean, within(1e-12));
            if (mean < left.station().metal() && mean < right.station().metal()) { // a turn never meets metal
                assertThat(both)
                        .as(left.which())
                        .isCloseTo(suspension.force, within(1e-6 * Math.abs(suspension.force)));
            }
            assertThat(left.station().wheelMore() + right.station().wheelMore()).isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void anUprightCarMeetsItsStopsAtTheirGaps() {
        for (long seed = 0; seed < 60; seed++) {
            Car car = RoadCars.damped(seed).settled();
            for (End end : End.values()) {
                WheelStation station = WheelStation.atRest(car, end).orElseThrow();
                Stops stops = car.axle(end).stops();
                assertThat(station.touches())
                        .isEqualTo(stops.bump().map(Stops.Bump::gap).orElse(Double.POSITIVE_INFINITY));
                assertThat(station.metal())
                        .isEqualTo(stops.metal().map(Stops.Metal::gap).orElse(Double.POSITIVE_INFINITY));
                assertThat(station.droopEnd())
                        .isEqualTo(stops.droop().map(stop -> -stop.travel()).orElse(Double.NEGATIVE_INFINITY));
            }
        }
    }
}
