package evenhand.words;

import evenhand.car.End;
import evenhand.turn.TurnEvent;

/** Events on the way to the limit, in words. */
public final class EventWords {
    private EventWords() {}

    /** A whole sentence: "At 0.610 g the right rear wheel touches its bump stop." */
    public static String sentence(TurnEvent event) {
        return "At " + Units.exactPace(event.lateralAcceleration()) + " " + happening(event) + ".";
    }

    /** What happens, without its pace: "the right rear wheel touches its bump stop". */
    public static String happening(TurnEvent event) {
        String who = event.wheel()
                .map(wheel -> "the " + wheel.words() + " wheel")
                .orElseGet(() ->
                        event.axle().map(axle -> "the " + end(axle) + " axle").orElse("the car"));
        return switch (event.kind()) {
            case STOP_TOUCHED -> who + " touches its bump stop";
            case DROOP_REACHED -> who + " reaches its droop stop";
            case SPRING_LOOSE -> "the spring of " + who + " goes loose";
            case WHEEL_LIFTED -> who + " leaves the ground";
            case ROLL_CENTRE_THROUGH_GROUND ->
                "the " + event.axle().map(EventWords::end).orElse("car's") + " roll centre goes through the ground";
            case LINK_LIMIT -> "the links of " + who + " reach no further";
            case STEER_REVERSAL -> "it has come to oversteer: to go faster, the steering has to be turned back";
        };
    }

    /** What happens in two or three words, for a picture: "right rear on bump stop". */
    public static String brief(TurnEvent event) {
        String who = event.wheel()
                .map(wheel -> wheel.words())
                .orElseGet(() -> event.axle().map(EventWords::end).orElse("car"));
        return switch (event.kind()) {
            case STOP_TOUCHED -> who + " on bump stop";
            case DROOP_REACHED -> who + " on droop stop";
            case SPRING_LOOSE -> who + " spring loose";
            case WHEEL_LIFTED -> who + " lifts";
            case ROLL_CENTRE_THROUGH_GROUND -> who + " roll centre through the ground";
            case LINK_LIMIT -> who + " links end";
            case STEER_REVERSAL -> "steering turned back from here";
        };
    }

    /** Name of an end in sentences. */
    public static String end(End end) {
        return end.key();
    }
}
