package evenhand.answers;

import evenhand.car.Weights;
import evenhand.turn.Direction;
import java.util.Arrays;
import java.util.OptionalDouble;

/** Trials and aims for tests. */
public final class Trials {
    public static final double G = Weights.GRAVITY;

    private Trials() {}

    /** A left turn on the usual circle, at paces in g. */
    public static Trial at(double... paces) {
        return on(40, paces);
    }

    /** A left turn, nobody aboard, at paces in g. */
    public static Trial on(double radius, double... paces) {
        return new Trial(Arrays.stream(paces).map(pace -> pace * G).boxed().toList(), radius, Direction.LEFT);
    }

    /** A criterion at a pace in g. */
    public static Judged judged(Criterion criterion, double pace) {
        return new Judged(criterion, OptionalDouble.of(pace * G));
    }

    /** A criterion of the limit. */
    public static Judged judged(Criterion criterion) {
        return new Judged(criterion, OptionalDouble.empty());
    }

    /** An aim in the criterion's unit. */
    public static Aim aim(Judged judged, Aim.Sense sense, double value) {
        return new Aim(judged, sense, judged.criterion().unit().toSi(value));
    }
}
