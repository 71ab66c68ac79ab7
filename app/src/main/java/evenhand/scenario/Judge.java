package evenhand.scenario;

import evenhand.answers.Aim;
import evenhand.answers.Judged;
import evenhand.bump.BumpAnswer;
import evenhand.bump.DriveOver;
import evenhand.car.Car;
import evenhand.quantity.InvalidValue;
import evenhand.ride.RoadClass;
import evenhand.road.RoadEvent;
import evenhand.turn.Direction;
import java.nio.file.Path;
import java.util.Optional;

/** What judges something that was asked. */
public sealed interface Judge {
    /**
     * A figure.
     *
     * @param aim what it was to be; none where the figure is named alone
     */
    record OfFigure(Judged judged, Optional<Aim> aim) implements Judge {}

    /** The turn one way round. */
    record Turning(Direction direction) implements Judge {}

    /**
     * The ride on a road.
     *
     * @param speed m/s
     */
    record OnRoad(RoadClass road, double speed) implements Judge {}

    /**
     * One event of the road.
     *
     * @param event as it was written
     * @param speed m/s
     */
    record Over(String event, double speed) implements Judge {
        /** What is driven over. */
        public RoadEvent road() {
            if (EventText.read(event, Path.of("")) instanceof EventReading.Found found) {
                return found.event();
            }
            throw new IllegalStateException(event + ": was read as an event");
        }

        /** What it does to a car at rest, driven over straight ahead; none where no wheel gets over it, or it cannot be followed. */
        public Optional<BumpAnswer.Straight> of(Car car) {
            try {
                return DriveOver.straight(car, road(), speed) instanceof BumpAnswer.Straight straight
                        ? Optional.of(straight)
                        : Optional.empty();
            } catch (InvalidValue impassable) {
                return Optional.empty();
            }
        }
    }

    /** The car with a load case of the file aboard. */
    record Aboard(String loadCase) implements Judge {}
}
