package evenhand.linkage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What an axle's links do through the travel, or why they do nothing. */
public sealed interface TravelAnswer permits TravelAnswer.Followed, TravelAnswer.NotHeld, TravelAnswer.OutOfReach {
    /**
     * An axle followed through its travel. Rows go upwards through rest; those that the links do not reach are left out.
     *
     * @param hold how well the links hold a live axle
     * @param rollCentrePerBump d(height)/d(heave) at rest
     * @param bindRollStiffness that links add which are more than they need to be, N·m/rad; absent where they are not
     * @param bindHeaveRate the same in heave, N/m
     * @param standsAt heave at which springs carry the axle's load, m, lower positive
     */
    record Followed(
            Ranges range,
            Optional<Hold> hold,
            AxleState rest,
            OptionalDouble rollCentrePerBump,
            List<AxleState> heave,
            List<AxleState> roll,
            List<AxleState> oneWheel,
            List<AxleState> steer,
            List<LinkAnswer> links,
            OptionalDouble bindRollStiffness,
            OptionalDouble bindHeaveRate,
            OptionalDouble standsAt,
            List<GapAnswer> clearances,
            List<TravelLimit> limits)
            implements TravelAnswer {
        public Followed {
            heave = List.copyOf(heave);
            roll = List.copyOf(roll);
            oneWheel = List.copyOf(oneWheel);
            steer = List.copyOf(steer);
            links = List.copyOf(links);
            clearances = List.copyOf(clearances);
            limits = List.copyOf(limits);
        }
    }

    /** A gap at rest, and the least of all rows, m. */
    record GapAnswer(String name, double rest, double least) {}

    /** Links that leave a live axle free to move; empty of a wheel whose links hold it twice in one way. */
    record NotHeld(List<Freedom> free) implements TravelAnswer {
        public NotHeld {
            free = List.copyOf(free);
        }
    }

    /**
     * Links that cannot be made so long, or do not let the body down so far.
     *
     * @param far share of what they were to be made longer; or how far the body can come down, m
     */
    record OutOfReach(Reach.Stage stage, double far) implements TravelAnswer {}
}
