package evenhand.words.owner;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.quantity.Unit;
import evenhand.scenario.Demo;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.Wheel;
import evenhand.words.Turned;
import evenhand.words.Units;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class OwnerWordsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static OptionalDouble g(double g) {
        return OptionalDouble.of(Unit.of("g").toSi(g));
    }

    @Test
    void theFeelOfAGradientTurnsRoundWithItsSign() {
        assertThat(OwnerWords.feel(1.2)).contains("a little more steering").contains("understeer of 1.20 deg/g");
        assertThat(OwnerWords.feel(3.1)).contains("clearly more steering");
        assertThat(OwnerWords.feel(6)).contains("far more steering");
        assertThat(OwnerWords.feel(-1.2)).contains("let back").contains("oversteer of 1.20 deg/g");
        assertThat(OwnerWords.feel(0.05)).contains("neither pushes nor slides").contains("+0.05 deg/g");
        assertThat(OwnerWords.feel(-0.05)).contains("neither pushes nor slides").contains("−0.05 deg/g");
    }

    @Test
    void stopsComeLaterEarlierOrNotAtAll() {
        assertThat(OwnerWords.stops(End.REAR, g(0.3), g(0.5)))
                .contains("From 0.500 g")
                .contains("later than before (0.300 g)");
        assertThat(OwnerWords.stops(End.REAR, g(0.5), g(0.3)))
                .contains("From 0.300 g")
                .contains("earlier than before (0.500 g)");
        assertThat(OwnerWords.stops(End.FRONT, g(0.5), g(0.5))).endsWith("as before.");
        assertThat(OwnerWords.stops(End.FRONT, g(0.5), NONE))
                .contains("no longer")
                .contains("0.500 g");
        assertThat(OwnerWords.stops(End.FRONT, NONE, g(0.5))).contains("before, it did not up to the limit");
        assertThat(OwnerWords.stops(End.FRONT, NONE, NONE)).contains("before as now");
    }

    private static TurnAnswer.Turns turns(String demo, String setup, Direction direction) {
        Car car = Demo.read(demo).setup(setup).orElseThrow().car();
        return (TurnAnswer.Turns) SteadyTurn.answer(car.settled(), List.of(), 40, direction);
    }

    private static List<String> otherWay(String demo, String setup, Direction direction) {
        Direction back = direction == Direction.LEFT ? Direction.RIGHT : Direction.LEFT;
        return OwnerWords.otherWay(turns(demo, setup, direction), turns(demo, setup, back), Units.METRIC);
    }

    @Test
    void aCarThatIsAnotherOneTheOtherWayIsToldToBe() {
        assertThat(otherWay("harbour-saloon", "Pivot middle, rear bar added", Direction.LEFT))
                .containsExactly(
                        "Turning right: at its limit, 0.811 g, the tail comes round unless the driver steers against"
                                + " it; the front has 1 % of its grip in hand.",
                        "Turning right: from 0.811 g on the steering has to be let back to go faster: the tail leads.");
        assertThat(otherWay("harbour-saloon", "Pivot middle, rear bar added", Direction.RIGHT))
                .singleElement()
                .asString()
                .startsWith("Turning left: at its limit, 0.797 g, the front tyres give out first");
        assertThat(otherWay("slipper-coupe", "As the customer wished", Direction.LEFT))
                .contains(
                        "Turning right: from 0.681 g on the steering has to be let back to go faster: the tail leads.");
        assertThat(otherWay("bakery-front-drive", "As delivered", Direction.LEFT))
                .isEmpty();
    }

    @Test
    void eachCauseOfALimitIsSaidAsItIsFelt() {
        assertThat(limit(new Turned().limit(0.8, End.FRONT, 0.99, 0.9)))
                .isEqualTo("At its limit, 0.800 g, the front tyres give out first and it runs wide; the rear has 10 %"
                        + " of its grip in hand.");
        assertThat(limit(new Turned().limit(0.8, End.REAR, 0.99, 0.995)))
                .isEqualTo("At its limit, 0.800 g, the rear tyres give out first and the tail comes round; the front"
                        + " has 1 % of its grip in hand.");
        assertThat(limit(new Turned().limit(0.79, End.REAR, 0.92, 0.971).endsBy(Limit.Cause.SPIN)))
                .isEqualTo("At its limit, 0.790 g, the tail comes round unless the driver steers against it; the front"
                        + " has 8 % of its grip in hand.");
        assertThat(limit(new Turned().limit(0.6, End.REAR, 0.66, 0.64).endsBy(Limit.Cause.CRITICAL_SPEED)))
                .isEqualTo(
                        "At its limit, 0.600 g, neither end slides, but past 36 km/h on this circle the steering wheel"
                                + " has to be held against the turn.");
        assertThat(limit(new Turned().limit(0.7, End.FRONT, 0.99, 0.9).spinning(Wheel.REAR_LEFT)))
                .isEqualTo("At its limit, 0.700 g, the left rear wheel has spent its grip on drive and spins, and the"
                        + " front lets go first.");
        assertThat(limit(new Turned().limit(0.6, End.REAR, 0.66, 0.64).endsBy(Limit.Cause.GAVE_UP)))
                .isEqualTo("The sums gave up at 0.600 g before they met a limit.");
    }

    private static String limit(Turned car) {
        return OwnerWords.limit(car.turn().limit(), Units.METRIC);
    }

    private static OwnerWords.Stance stance(String setup, double frontRoom) {
        Car car = Demo.read("harbour-saloon").setup(setup).orElseThrow().car().settled();
        HandSums sums = ((HandSums.Found) HandSums.of(car, Weights.GRAVITY)).sums();
        return new OwnerWords.Stance(sums, OptionalDouble.of(frontRoom), NONE);
    }

    @Test
    void aStanceTurnedRoundSaysTheOpposite() {
        OwnerWords.Stance high = stance("As bought", 0.058);
        OwnerWords.Stance low = stance("Lowered", 0.028);
        List<String> down = OwnerWords.stance(high, low, Units.METRIC);
        List<String> up = OwnerWords.stance(low, high, Units.METRIC);
        assertThat(down.get(0)).contains("30 mm lower than before").contains("longer");
        assertThat(up.get(0)).contains("30 mm higher than before").contains("shorter");
        assertThat(down.get(2))
                .isEqualTo("At the front there is 28 mm of travel before the bump stops, 30 mm less than before.");
        assertThat(up.get(2))
                .isEqualTo("At the front there is 58 mm of travel before the bump stops, 30 mm more than before.");
        assertThat(OwnerWords.stance(low, low, Units.METRIC).get(0)).contains("as high as before");
        assertThat(OwnerWords.stance(high, low, Units.IMPERIAL).get(2))
                .contains("1.10 in")
                .contains("1.18 in less");
    }

    @Test
    void theReasonOfTheLeanTurnsRoundWithTheStiffnesses() {
        OwnerWords.Stance soft = stance("As bought", 0.058);
        OwnerWords.Stance firm = stance("Lowered, firmer springs", 0.036);
        String firmer = OwnerWords.stance(soft, firm, Units.METRIC).get(1);
        String softer = OwnerWords.stance(firm, soft, Units.METRIC).get(1);
        assertThat(firmer).contains(" less than before: springs and bars resist its roll with ");
        assertThat(softer).contains(" more than before: springs and bars resist its roll with ");
        String[] rates = firmer.replaceAll(".*with (\\d+) N\\*m/deg instead of (\\d+) N\\*m/deg\\.", "$1 $2")
                .split(" ", -1);
        assertThat(Double.parseDouble(rates[0])).isGreaterThan(Double.parseDouble(rates[1]));
        assertThat(softer).endsWith("with " + rates[1] + " N*m/deg instead of " + rates[0] + " N*m/deg.");
        assertThat(OwnerWords.stance(firm, firm, Units.METRIC).get(1))
                .contains("as before: ")
                .endsWith(" as before.");
    }

    @Test
    void roomThatIsUsedUpIsSaidSo() {
        OwnerWords.Stance free = stance("As bought", 0.01);
        OwnerWords.Stance standing = stance("As bought", -0.005);
        assertThat(OwnerWords.stance(free, standing, Units.METRIC).get(2)).contains("now stands on its bump stops");
        assertThat(OwnerWords.stance(standing, free, Units.METRIC).get(2)).contains("stood on them before");
        assertThat(OwnerWords.stance(standing, standing, Units.METRIC).get(2)).contains("as before");
    }
}
