package evenhand.answers;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.linkage.LinkPlaces;
import evenhand.linkage.Ranges;
import evenhand.straight.Braking;
import java.util.Optional;

/** What the links of a car say, of each axle that has them by points. */
public record LinkAnswers(Optional<LinkPlaces> front, Optional<LinkPlaces> rear) {
    /** Of a car without, or where nobody asked. */
    public static final LinkAnswers NONE = new LinkAnswers(Optional.empty(), Optional.empty());

    /**
     * Follows both axles, as far as their stops let them go.
     *
     * @param car whose links are asked
     * @param standing the same at rest, its {@code lowered} carried out: its stops count
     */
    static LinkAnswers of(Car car, Car standing) {
        return new LinkAnswers(places(car, standing, End.FRONT), places(car, standing, End.REAR));
    }

    private static Optional<LinkPlaces> places(Car car, Car standing, End end) {
        Ranges range = Ranges.of(standing.axle(end).stops());
        return Braking.shared(car, standing).linked(end).flatMap(links -> LinkPlaces.of(links, range));
    }

    public Optional<LinkPlaces> axle(End end) {
        return end == End.FRONT ? front : rear;
    }
}
