package evenhand.roadtest;

import evenhand.car.Weights;
import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A gradient as it was measured on a circle of constant radius (ISO 4138), rad per m/s², and the same line through what the car was
 * and is now expected to show at the same paces with the same weights, so that like is compared with like.
 *
 * @param turn one way round; none where both ways share one slope
 * @param readings how many
 */
public record Gradient(
        Figure figure,
        Optional<Direction> turn,
        double measured,
        double standardError,
        double before,
        double after,
        int readings) {
    /** Up to here the line is straight enough, m/s². */
    private static final double STRAIGHT = 0.4 * Weights.GRAVITY;

    /** Of what. */
    public enum Figure {
        /** Of the steering wheel over its ratio: at constant radius that is the understeer gradient. */
        UNDERSTEER("understeer", Channel.STEERING_WHEEL),
        ROLL("roll gradient", Channel.ROLL);

        private final String key;
        private final Channel channel;

        Figure(String key, Channel channel) {
            this.key = key;
            this.channel = channel;
        }

        /** Name in answers, that of the figure of the turn. */
        public String key() {
            return key;
        }
    }

    /** A reading with what was expected of it. */
    private record Read(Observation.Reading reading, LineFit.Point measured, double before, double after) {}

    /**
     * All gradients that a test has readings for.
     *
     * @param ratio of the steering, as given
     * @param before what the car as given was expected to show
     * @param after what the corrected one is
     */
    static List<Gradient> of(RoadTest test, double ratio, List<Predicted> before, List<Predicted> after) {
        List<Gradient> all = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            double scale = figure == Figure.UNDERSTEER ? ratio : 1;
            List<Read> reads = new ArrayList<>();
            for (int i = 0; i < after.size(); i++) {
                if (test.observations().get(i) instanceof Observation.Reading reading
                        && reading.channel() == figure.channel
                        && (test.circle().isPresent() || figure == Figure.ROLL)) {
                    double pace = reading.pace() instanceof Pace.Accelerometer
                            ? after.get(i).lateralAcceleration()
                            : reading.pace().acceleration(test.radius());
                    LineFit.Point point = new LineFit.Point(
                            pace,
                            reading.measured().value() / scale,
                            after.get(i).sigma() / scale);
                    if (pace <= STRAIGHT * (1 + 1e-9)) {
                        reads.add(new Read(
                                reading,
                                point,
                                before.get(i).expected() / scale,
                                after.get(i).expected() / scale));
                    }
                }
            }
            List<List<Read>> ways = new ArrayList<>();
            for (Direction way : Direction.values()) {
                List<Read> own = reads.stream()
                        .filter(one -> one.reading().turn() == way)
                        .toList();
                line(figure, Optional.of(way), List.of(own)).ifPresent(all::add);
                ways.add(own);
            }
            line(figure, Optional.empty(), ways).ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    private static Optional<Gradient> line(Figure figure, Optional<Direction> turn, List<List<Read>> groups) {
        Optional<LineFit> measured = LineFit.through(points(groups, Of.MEASURED));
        Optional<LineFit> before = LineFit.through(points(groups, Of.BEFORE));
        Optional<LineFit> after = LineFit.through(points(groups, Of.AFTER));
        return measured.isPresent() && before.isPresent() && after.isPresent()
                ? Optional.of(new Gradient(
                        figure,
                        turn,
                        measured.get().slope(),
                        measured.get().standardError(),
                        before.get().slope(),
                        after.get().slope(),
                        measured.get().points()))
                : Optional.empty();
    }

    private enum Of {
        MEASURED,
        BEFORE,
        AFTER
    }

    private static List<List<LineFit.Point>> points(List<List<Read>> groups, Of of) {
        return groups.stream()
                .map(group -> group.stream()
                        .map(one -> switch (of) {
                            case MEASURED -> one.measured();
                            case BEFORE -> one.measured().at(one.before());
                            case AFTER -> one.measured().at(one.after());
                        })
                        .toList())
                .toList();
    }
}
