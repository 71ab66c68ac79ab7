package evenhand.words.lowering;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Alignment;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Stops;
import evenhand.handsums.HandSums;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.ReserveSprings;
import evenhand.lowering.Stance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.Ride;
import evenhand.ride.RideAnswer;
import evenhand.ride.SeatRide;
import evenhand.ride.Standing;
import evenhand.scenario.Demo;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.words.Turned;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The story of a car that is let down: each sentence on both sides of where it changes its mind. */
class LoweringWordsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Unit G = Unit.of("g");
    private static final Unit DEG_PER_G = Unit.of("deg/g");
    private static final Car CAR =
            Demo.read("harbour-saloon").setup("As bought").orElseThrow().car().settled();
    private static final Ride RIDE = (Ride) Ride.of(CAR, Stance.ROAD, Stance.SPEED);
    private static final Standing FREE = standing(0.04);
    private static final Standing ON_STOP = standing(-0.003);

    private static Standing standing(double toStop) {
        return new Standing(3000, NONE, NONE, NONE, OptionalDouble.of(toStop), NONE, NONE, NONE, NONE);
    }

    private static Car car(double frontCamber, Stops frontStops) {
        Axle.Independent front = (Axle.Independent) CAR.front();
        Alignment own = front.alignment();
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
                        front.rollCentre(),
                        front.spring(),
                        front.bar(),
                        frontStops,
                        front.damper(),
                        front.lowered(),
                        front.rollCamber(),
                        new Alignment(
                                Math.toRadians(frontCamber),
                                own.toe(),
                                own.rollSteer(),
                                own.lateralForceSteer(),
                                own.aligningTorqueSteer()),
                        front.tyre(),
                        front.rollInertia()),
                CAR.rear(),
                CAR.drive(),
                CAR.pitchInertia(),
                CAR.seat());
    }

    private static Ride ride(double seat) {
        SeatRide own = RIDE.seat().orElseThrow();
        return new Ride(
                RIDE.front(),
                RIDE.rear(),
                RIDE.road(),
                RIDE.speed(),
                RIDE.pitchBounce(),
                Optional.of(new SeatRide(own.car(), own.behindFrontAxle(), seat)));
    }

    private static TurnRow row(double g, double understeer) {
        return Turned.row(g, OptionalDouble.of(DEG_PER_G.toSi(understeer)), 0.5, 0.5);
    }

    /** A turn to 0.8 g with rows at 0.3, 0.45 and 0.6 g and what happens on the way. */
    private static TurnAnswer turn(double before, double just, double behind, TurnEvent... events) {
        TurnAnswer.Turns own = new Turned().near(1.2).turn();
        return new TurnAnswer.Turns(
                40,
                Direction.LEFT,
                own.paces(),
                own.limit(),
                List.of(events),
                List.of(
                        row(0.3, before),
                        row(0.45, just),
                        row(0.6, behind),
                        own.limit().row()));
    }

    private static TurnEvent touch(double g, End end) {
        return new TurnEvent(
                G.toSi(g),
                TurnEvent.Kind.STOP_TOUCHED,
                Optional.of(end),
                Optional.of(end == End.FRONT ? Wheel.FRONT_RIGHT : Wheel.REAR_RIGHT));
    }

    private static Stance.Stands stands(
            double mm, Car car, Standing front, Standing rear, TurnAnswer turn, RideAnswer ride) {
        return new Stance.Stands(
                mm / 1000,
                car,
                Optional.empty(),
                front,
                rear,
                Optional.empty(),
                Optional.empty(),
                new HandSums.Found(Turned.sums()),
                List.of(new Stance.Bend(40, Direction.LEFT, turn)),
                ride);
    }

    private static Stance.Stands touching(double mm, TurnAnswer turn) {
        return stands(mm, CAR, FREE, FREE, turn, RIDE);
    }

    private static Stance.Stands at(double mm, Standing front, Standing rear) {
        return stands(mm, CAR, front, rear, turn(2, 2, 2), RIDE);
    }

    private static Stance.Stands felt(double mm, boolean onStop, double seat) {
        return stands(mm, CAR, onStop ? ON_STOP : FREE, FREE, turn(2, 2, 2), ride(seat));
    }

    private static List<String> said(Car car, Optional<Stance> works, Stance... rows) {
        List<LoweringStudy.Ending> ends = new ArrayList<>();
        for (Need need : Need.ALL) {
            ends.add(new LoweringStudy.Ending(need, NONE, false));
        }
        LoweringStudy study = new LoweringStudy(List.of(rows), ends, works, true, Optional.empty(), List.of());
        List<String> said = LoweringWords.of(study, car, NONE, Units.METRIC);
        assertThat(said)
                .allSatisfy(sentence -> assertThat(sentence)
                        .endsWith(".")
                        .doesNotContain("NaN")
                        .doesNotContain("Infinity")
                        .doesNotContain("null"));
        return said;
    }

    private static List<String> said(Stance... rows) {
        return said(CAR, Optional.empty(), rows);
    }

    private static Optional<String> of(List<String> said, String part) {
        return said.stream().filter(sentence -> sentence.contains(part)).findFirst();
    }

    private static String one(List<String> said, String part) {
        return of(said, part).orElseThrow();
    }

    @Test
    void whatTheFileDoesNotGiveIsNamed() {
        assertThat(of(said(at(0, FREE, FREE)), "no front bump stop")).isEmpty();
        assertThat(one(said(car(-1, Stops.NONE), Optional.empty(), at(0, FREE, FREE)), "The file has"))
                .startsWith("The file has no front bump stop, no front metal stop");
    }

    @Test
    void camberIsToldFromAFifthOfADegreeOnAndWearFromTwo() {
        assertThat(camber(-0.5, -0.69)).isEmpty();
        assertThat(camber(-0.5, -0.71))
                .contains(
                        "The static camber of its front wheels goes from −0.5 to −0.7 deg at 30 mm down, unless it is set"
                                + " back.");
        assertThat(camber(-0.5, 0.0)).isPresent();
        assertThat(camber(-1.0, -1.99).orElseThrow()).doesNotContain("wear");
        assertThat(camber(-1.0, -2.01).orElseThrow())
                .endsWith(", unless it is set back; beyond −2 deg tyres wear on their inner edge.");
    }

    private static Optional<String> camber(double was, double is) {
        Stops stops = CAR.front().stops();
        return of(
                said(
                        stands(0, car(was, stops), FREE, FREE, turn(2, 2, 2), RIDE),
                        stands(30, car(is, stops), FREE, FREE, turn(2, 2, 2), RIDE)),
                "static camber");
    }

    @Test
    void theFirstHeightThatTouchesEarlyIsToldOrElseTheLastThatTouches() {
        Stance.Stands late = touching(0, turn(2, 2, 2, touch(0.7, End.REAR)));
        Stance.Stands later = touching(10, turn(2, 2, 2, touch(0.55, End.REAR)));
        Stance.Stands early = touching(20, turn(2, 2, 2, touch(0.49, End.REAR)));
        Stance.Stands lower = touching(30, turn(2, 2, 2, touch(0.3, End.REAR)));
        assertThat(one(said(late, later, early, lower), "stops carry it"))
                .startsWith(
                        "At 20 mm down, at 0.490 g, the right rear wheel touches its bump stop. From there the stops"
                                + " carry it at the rear as well: the front's share of the load transfer goes from 53.6 % to"
                                + " 53.6 % at the limit");
        assertThat(one(said(late, later), "stops carry it")).startsWith("At 10 mm down, at 0.550 g, ");
        assertThat(one(said(late), "stops carry it")).startsWith("As it stands, at 0.700 g, ");
        assertThat(of(said(late), "At none of these heights")).isEmpty();
        assertThat(said(touching(0, turn(2, 2, 2))))
                .contains("At none of these heights is a bump stop touched before the limit.");
    }

    @Test
    void whatAStopDoesInMidBendFollowsTheUndersteerBehindIt() {
        assertThat(behind(2, 2.14))
                .endsWith(", and the understeer from +2.00 deg/g before it to +2.14 deg/g at 0.600 g.");
        assertThat(behind(2, 1.86)).endsWith("+1.86 deg/g at 0.600 g.");
        assertThat(behind(2, 2.16)).endsWith(": it feels as if the nose stopped answering.");
        assertThat(behind(2, 1.84)).endsWith(": it feels as if the nose turned in by itself in mid-bend.");
        assertThat(behind(2, -0.1)).endsWith(": it feels as if the tail let go in mid-bend.");
        assertThat(behind(-0.3, -0.5)).endsWith(": it feels as if the tail let go in mid-bend.");
        assertThat(behind(-0.3, -0.1)).endsWith(": it feels as if the nose stopped answering.");
    }

    /** Touched at 0.42 g: the last row before it is that of 0.3 g, the first a tenth of a g behind it that of 0.6 g. */
    private static String behind(double before, double after) {
        return one(said(touching(0, turn(before, 7, after, touch(0.42, End.FRONT)))), "stops carry it at the front");
    }

    @Test
    void steeringThatIsLetBackAndTheBalanceNearTheLimitAreTold() {
        TurnEvent back = new TurnEvent(G.toSi(0.62), TurnEvent.Kind.STEER_REVERSAL, Optional.empty(), Optional.empty());
        List<String> said = said(touching(0, turn(2, 2, 2, touch(0.42, End.FRONT), back)));
        assertThat(said)
                .contains("From 0.620 g on the steering has to be let back while the speed still rises: it has come to"
                        + " oversteer.");
        assertThat(said)
                .contains(
                        "As it stands the front goes first, at 0.800 g; near its limit it understeers by 1.20 deg/g.");
        assertThat(said(touching(0, turn(2, 2, 2)), touching(20, turn(2, 2, 2, touch(0.42, End.FRONT)))))
                .contains(
                        "At 20 mm down the front goes first, at 0.800 g; near its limit it understeers by 1.20 deg/g, at"
                                + " 0 mm it understeers by 1.20 deg/g.");
        assertThat(of(said(touching(0, turn(2, 2, 2))), "let back")).isEmpty();
    }

    @Test
    void aCarThatStandsOnItsStopsStandsOnThemInEveryBend() {
        String all = " bump stops at rest: in every bend they are its springs.";
        assertThat(said(at(0, FREE, FREE), at(20, ON_STOP, FREE)))
                .contains("At 20 mm down it stands on its front" + all);
        assertThat(said(at(0, FREE, FREE), at(20, FREE, ON_STOP), at(40, ON_STOP, ON_STOP)))
                .contains("At 20 mm down it stands on its rear" + all);
        assertThat(said(at(0, ON_STOP, ON_STOP))).contains("As it stands it stands on its front and rear" + all);
        // Just touching counts, a hair's gap does not.
        assertThat(of(said(at(0, standing(0.9e-6), FREE)), "in every bend")).isPresent();
        assertThat(of(said(at(0, standing(1.1e-6), FREE)), "in every bend")).isEmpty();
    }

    @Test
    void comfortIsToldWhereItIsFeltToChange() {
        String opening = "On a class C road at 80 km/h the seat's mounting, as a body feels it, ";
        assertThat(said(felt(0, false, 0.70), felt(20, false, 0.729)))
                .contains(opening + "stays at 0.70 m/s² (fairly uncomfortable) as long as the car is off its stops.");
        assertThat(said(felt(0, false, 0.70), felt(20, false, 0.731)))
                .contains(opening
                        + "goes from 0.70 m/s² (fairly uncomfortable) to 0.73 m/s² (fairly uncomfortable) at 20 mm"
                        + " down.");
        assertThat(said(felt(0, false, 0.70), felt(20, false, 0.60), felt(40, true, 1.10)))
                .contains(opening + "goes from 0.70 m/s² (fairly uncomfortable) to 0.60 m/s² (fairly"
                        + " uncomfortable) at 20 mm down; standing on them it has 1.10 m/s² (uncomfortable) at 40 mm"
                        + " down.");
        assertThat(said(felt(0, true, 1.10), felt(20, true, 1.2)))
                .contains(opening + "stays at 1.10 m/s² (uncomfortable).");
    }

    @Test
    void withoutDampersComfortHasNoAnswer() {
        Ride none =
                new Ride(RIDE.front(), RIDE.rear(), RIDE.road(), RIDE.speed(), RIDE.pitchBounce(), Optional.empty());
        assertThat(said(stands(0, CAR, FREE, FREE, turn(2, 2, 2), none)))
                .contains("Without damper curves at both ends there is no answer on comfort.");
        assertThat(of(said(stands(0, CAR, FREE, FREE, turn(2, 2, 2), new RideAnswer.NoRide("why"))), "comfort"))
                .isEmpty();
    }

    @Test
    void theLowestThatWorksIsToldWithItsLeanItsStopAndItsLimit() {
        Stance.Stands free = touching(20, turn(2, 2, 2));
        assertThat(said(CAR, Optional.of(free), free))
                .contains(
                        "At 20 mm down it leans, by the hand sums, 6.00 deg/g, touches no bump stop, and the front goes"
                                + " first, at 0.800 g.");
        Stance.Stands touched = touching(0, turn(2, 2, 2, touch(0.61, End.REAR)));
        assertThat(said(CAR, Optional.of(touched), touched))
                .contains(
                        "As it stands it leans, by the hand sums, 6.00 deg/g, touches its first bump stop at 0.610 g, and"
                                + " the front goes first, at 0.800 g.");
        assertThat(of(said(free), "it leans, by the hand sums")).isEmpty();
    }

    @Test
    void aHeightWithoutAnAnswerIsToldAndWhetherMoreAreToCome() {
        Stance none = new Stance.NoStance(0.02, "its springs are gone");
        assertThat(said(at(0, FREE, FREE), none)).contains("There is no answer at 20 mm down: its springs are gone.");
        assertThat(said(at(0, FREE, FREE), none, at(40, FREE, FREE)))
                .contains("There is no answer at 20 mm down and perhaps below: its springs are gone.");
        assertThat(of(said(at(0, FREE, FREE)), "There is no answer")).isEmpty();
    }

    private static String lowest(
            Need stopped, OptionalDouble lowered, boolean atOnce, Optional<Stance> works, Stance first) {
        List<LoweringStudy.Ending> ends = new ArrayList<>();
        for (Need need : Need.ALL) {
            ends.add(
                    need.equals(stopped)
                            ? new LoweringStudy.Ending(need, lowered, atOnce)
                            : new LoweringStudy.Ending(need, NONE, false));
        }
        return LowestWords.of(
                new LoweringStudy(List.of(first), ends, works, true, Optional.empty(), List.of()), Units.METRIC);
    }

    private static Need need(String key) {
        return Need.ALL.stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theEndOfTheStoryIsWhatStopsIt() {
        Stance.Stands first = at(0, standing(0.02), FREE);
        Need toStop = need("frontBumpTravelToStop");
        assertThat(lowest(toStop, OptionalDouble.of(0.0153), false, Optional.empty(), first))
                .isEqualTo(
                        "The lowest that works is 15.3 mm down: there the front bump travel to the stop comes to 25 mm,"
                                + " the least by common practice. Any lower, and it sits on its rubbers on any rough road.");
        assertThat(lowest(need("frontFrequency"), OptionalDouble.of(0.01), false, Optional.empty(), first))
                .contains("comes to 2.20 Hz, the most by common practice.");
        assertThat(lowest(Need.ANSWER, OptionalDouble.of(0.01), false, Optional.empty(), first))
                .isEqualTo(
                        "The lowest that works is 10 mm down: below it there is no answer (within less than a step).");
    }

    @Test
    void whereNotEvenTheFirstWorksItIsSaidHowMuchHigherItMust() {
        Need toStop = need("frontBumpTravelToStop");
        Stance.Stands first = at(0, standing(0.02), FREE);
        String fails =
                "the front bump travel to the stop is 20 mm, and at least 25 mm is wanted by common practice, or it"
                        + " sits on its rubbers on any rough road. ";
        assertThat(lowest(toStop, NONE, true, Optional.of(at(-5, FREE, FREE)), first))
                .isEqualTo("It does not even work as it stands: " + fails
                        + "It would have to stand 5 mm higher for all that a road car needs.");
        assertThat(lowest(toStop, NONE, true, Optional.empty(), at(30, standing(0.02), FREE)))
                .isEqualTo("It does not even work 30 mm down: " + fails + "Raising it alone does not mend that.");
    }

    private static Stance.Stands sprung(double mm, double front, double rear, RideAnswer ride) {
        Stance.Stands free = touching(mm, turn(2, 2, 2));
        ReserveSprings springs =
                new ReserveSprings(1.2, front, rear, OptionalDouble.of(1.5), OptionalDouble.of(1.6), Optional.empty());
        return new Stance.Stands(
                free.lowered(),
                free.car(),
                Optional.of(springs),
                free.front(),
                free.rear(),
                Optional.empty(),
                Optional.empty(),
                free.sums(),
                free.bends(),
                ride);
    }

    private static Optional<String> springs(Car car, OptionalDouble reserve, Optional<Stance> works, Stance... rows) {
        LoweringStudy study = new LoweringStudy(
                List.of(rows),
                Need.ALL.stream()
                        .map(need -> new LoweringStudy.Ending(need, NONE, false))
                        .toList(),
                works,
                true,
                Optional.empty(),
                List.of());
        return of(LoweringWords.of(study, car, reserve, Units.METRIC), "in reserve above the stops");
    }

    private static String said(double rate) {
        return Units.METRIC.show(rate, Dimension.STIFFNESS, 1);
    }

    @Test
    void springsThatAReserveAsksForAreToldBesideThoseThatAreFitted() {
        double front = CAR.front().spring().rate();
        double rear = CAR.rear().spring().rate();
        RideAnswer none = new RideAnswer.NoRide("why");
        OptionalDouble reserve = OptionalDouble.of(1.2);
        String opening = "To keep 1.2 g in reserve above the stops at 30 mm down, springs: ";
        String dampers = ". The dampers are still those of the set-up; stiffer springs want more damping.";
        // A spring that is as stiff as the one that is fitted is that one; one that is a little stiffer is another.
        assertThat(springs(CAR, reserve, Optional.empty(), sprung(30, front, rear, none)))
                .contains(opening + "the front ones are stiff enough as they are, the rear ones are stiff enough as"
                        + " they are" + dampers);
        assertThat(springs(CAR, reserve, Optional.empty(), sprung(30, front + 1, rear, none)))
                .contains(opening + "the front ones " + said(front + 1) + " instead of " + said(front)
                        + ", the rear ones are stiff enough as they are" + dampers);
        assertThat(springs(CAR, reserve, Optional.empty(), sprung(30, front, rear + 5_000, none)))
                .contains(opening + "the front ones are stiff enough as they are, the rear ones " + said(rear + 5_000)
                        + " instead of " + said(rear) + dampers);
        // How hard it is then, from the static deflection of its ride.
        double hertz = Math.sqrt(9.80665 / RIDE.front().staticDeflection()) / (2 * Math.PI);
        assertThat(springs(CAR, reserve, Optional.empty(), sprung(30, front + 9_000, rear, RIDE))
                        .orElseThrow())
                .contains(said(front) + String.format(Locale.ROOT, " (%.2f Hz), the rear ones", hertz));
        assertThat(springs(car(-1, Stops.NONE), reserve, Optional.empty(), sprung(30, front + 9_000, rear, none)))
                .contains(opening + "the front ones, which have no bump stop to be kept off, stay, the rear ones are"
                        + " stiff enough as they are" + dampers);
    }

    @Test
    void springsAreToldOfTheLowestThatWorksOrElseOfTheLowestThatHasAny() {
        double front = CAR.front().spring().rate();
        double rear = CAR.rear().spring().rate();
        Stance.Stands high = sprung(0, front + 1_000, rear, RIDE);
        Stance.Stands low = sprung(20, front + 8_000, rear, RIDE);
        Stance.Stands works = sprung(12, front + 4_000, rear, RIDE);
        Stance.Stands without = touching(40, turn(2, 2, 2));
        OptionalDouble reserve = OptionalDouble.of(1);
        String opening = "To keep 1 g in reserve above the stops ";
        assertThat(springs(CAR, reserve, Optional.of(works), high, low).orElseThrow())
                .startsWith(opening + "at 12 mm down, springs: the front ones " + said(front + 4_000));
        assertThat(springs(CAR, reserve, Optional.empty(), high, low, without).orElseThrow())
                .startsWith(opening + "at 20 mm down, springs: the front ones " + said(front + 8_000));
        assertThat(springs(CAR, reserve, Optional.of(without), high, low, without)
                        .orElseThrow())
                .startsWith(opening + "at 20 mm down, ");
        assertThat(springs(CAR, reserve, Optional.of(high), high, low).orElseThrow())
                .startsWith(opening + "as it stands, springs: the front ones " + said(front + 1_000));
        assertThat(springs(CAR, reserve, Optional.empty(), without)).isEmpty();
        assertThat(springs(CAR, NONE, Optional.of(works), high, low)).isEmpty();
    }

    /** A car on stiffer springs says so of its lean; one that kept its springs does not. */
    @Test
    void theLeanOfACarOnStifferSpringsIsToldAsThat() {
        double front = CAR.front().spring().rate();
        double rear = CAR.rear().spring().rate();
        assertThat(of(said(sprung(0, front, rear, RIDE), sprung(20, front, rear + 1, RIDE)), "On its stiffer springs"))
                .isPresent();
        assertThat(of(said(sprung(0, front, rear, RIDE), sprung(20, front + 1, rear, RIDE)), "On its stiffer springs"))
                .isPresent();
        assertThat(of(said(sprung(0, front, rear, RIDE), sprung(20, front, rear, RIDE)), "On its stiffer springs"))
                .isEmpty();
    }
}
