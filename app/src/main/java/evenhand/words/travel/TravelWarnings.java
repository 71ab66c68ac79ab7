package evenhand.words.travel;

import evenhand.car.links.LinkedLiveAxle;
import evenhand.linkage.AxleState.ShaftFigures;
import evenhand.linkage.LinkAnswer;
import evenhand.linkage.LinkSlopes;
import evenhand.linkage.TravelAnswer;
import evenhand.quantity.Dimension;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is out of the ordinary about links at rest. Bounds are common practice, no source. */
public final class TravelWarnings {
    private static final double MUCH_BIND = 20 / Math.toRadians(1);
    private static final double SHARE_OF_SPRINGS = 0.1;
    private static final double FAR_OFF = 0.005;
    private static final double STEEP = Math.toRadians(10);
    private static final double MUCH_JOINT = Math.toRadians(3);
    private static final double MUCH_LEFT_OVER = Math.toRadians(1.5);

    private TravelWarnings() {}

    public static List<String> of(AxleTravel axle, Units units) {
        List<String> warnings = new ArrayList<>();
        TravelAnswer.Followed followed = axle.followed();
        String end = axle.end().key();
        followed.hold()
                .filter(hold -> hold.hardly())
                .ifPresent(hold -> warnings.add("the " + end
                        + " links hardly hold the axle: a millimetre in one of them moves it by "
                        + Numbers.fixed(hold.worst(), 0) + " (" + hold.where().key() + ")"));
        OptionalDouble roll = followed.bindRollStiffness();
        if (roll.isPresent() && roll.getAsDouble() > MUCH_BIND) {
            warnings.add("the " + end + " links bind in roll: they add "
                    + units.show(roll.getAsDouble(), Dimension.ROLL_STIFFNESS, 0)
                    + " to the springs' and the bar's roll stiffness");
        }
        OptionalDouble heave = followed.bindHeaveRate();
        double springs =
                axle.linked().carried().map(carried -> 2 * carried.rate()).orElse(Double.POSITIVE_INFINITY);
        if (heave.isPresent() && heave.getAsDouble() > SHARE_OF_SPRINGS * springs) {
            warnings.add("the " + end + " links bind in heave: they add "
                    + units.show(heave.getAsDouble(), Dimension.STIFFNESS, 1) + " to the springs' rate");
        }
        OptionalDouble stands = followed.standsAt();
        if (stands.isPresent() && Math.abs(stands.getAsDouble()) > FAR_OFF) {
            warnings.add("by springs and load the " + end + " stands "
                    + units.show(Math.abs(stands.getAsDouble()), Dimension.LENGTH, units == Units.METRIC ? 0 : 2)
                    + (stands.getAsDouble() > 0 ? " lower" : " higher")
                    + " than it is drawn: are rates, free lengths and weights right?");
        }
        followed.links().forEach(link -> steep(link, axle, warnings));
        followed.rest().live().flatMap(live -> live.shaft()).ifPresent(shaft -> joints(shaft, warnings));
        return List.copyOf(warnings);
    }

    private static void steep(LinkAnswer link, AxleTravel axle, List<String> warnings) {
        if (axle.linked() instanceof LinkedLiveAxle
                && link.slopes() instanceof LinkSlopes.Across across
                && Math.abs(across.rearSlope()) > STEEP) {
            warnings.add(PartWords.of(link.name()) + " stands " + TravelWords.degrees(Math.abs(across.rearSlope()), 1)
                    + " off level at rest: it moves the axle sideways as the car rises and falls");
        }
    }

    private static void joints(ShaftFigures shaft, List<String> warnings) {
        if (shaft.jointAngles().stream().anyMatch(angle -> angle > MUCH_JOINT)) {
            warnings.add(
                    "a joint of the propeller shaft stands at more than 3 deg at rest; that is much for one that runs"
                            + " fast for long");
        }
        if (shaft.residualJointAngle() > MUCH_LEFT_OVER) {
            warnings.add("the propeller shaft's joints leave "
                    + TravelWords.degrees(shaft.residualJointAngle(), 2)
                    + " that they do not cancel at rest: it will be felt as a shudder twice a turn");
        }
    }
}
