package evenhand.roadtest;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.load.Laden;
import evenhand.ride.BodySwing;
import evenhand.turn.Direction;
import evenhand.turn.Limit;
import evenhand.turn.PaceAnswer;
import evenhand.turn.PacesAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnNearby;
import evenhand.turn.TurnRow;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a car shows in a road test: its turn is solved at the pace of each reading, on the circle that was driven, that way round.
 *
 * <p>The error of a reading is that of the instrument and that of the pace:
 * <pre>  σ² = (tolerance/2)² + (∂h/∂ac·σ_ac)²  </pre>
 * Steering wheel, lean and sideslip that were read together share their pace and its error; that they do is neglected, for it
 * is small beside them.
 */
final class Prediction {
    /** Paces apart, m/s², between which a slope of sideslip is taken. */
    private static final double APART = 0.01;
    /** So often what an accelerometer feels is brought nearer to what it felt; each time by nine tenths or more. */
    private static final int LEANS = 8;

    private final RoadTest test;
    private final double radius;
    private final double straightAhead;
    private final Map<Direction, TurnNearby> nearby;

    /**
     * @param radius of the circle as it was, m
     * @param straightAhead where the mark stands, to the left positive, rad
     */
    Prediction(RoadTest test, double radius, double straightAhead) {
        this(test, radius, straightAhead, Map.of());
    }

    /**
     * @param nearby turns of a car that hardly differs: then of all that is predicted only what is expected is of use
     */
    Prediction(RoadTest test, double radius, double straightAhead, Map<Direction, TurnNearby> nearby) {
        this.test = test;
        this.radius = radius;
        this.straightAhead = straightAhead;
        this.nearby = nearby;
    }

    /** The turns of a car from which cars that hardly differ can be asked. */
    Map<Direction, TurnNearby> nearby(Car asRead) {
        Map<Direction, TurnNearby> all = new EnumMap<>(Direction.class);
        if (Laden.of(asRead, test.load()) instanceof Laden.AtRest rest) {
            for (Direction way : Direction.values()) {
                if (readings(way).findAny().isPresent()
                        && test.observations().stream().noneMatch(one -> walks(one, way))) {
                    TurnNearby.of(rest.car(), paces(way), radius, way).ifPresent(turn -> all.put(way, turn));
                }
            }
        }
        return all;
    }

    /** Whether a reading needs the whole turn. */
    private static boolean walks(Observation one, Direction way) {
        return (one instanceof Observation.Limit limit && limit.turn() == way)
                || (one instanceof Observation.Reading reading
                        && reading.turn() == way
                        && reading.pace() instanceof Pace.Accelerometer);
    }

    private Stream<Observation.Reading> readings(Direction way) {
        return test.observations().stream()
                .filter(Observation.Reading.class::isInstance)
                .map(Observation.Reading.class::cast)
                .filter(reading -> reading.turn() == way);
    }

    /** Paces that were read one way round, each once. */
    private List<Double> paces(Direction way) {
        return readings(way)
                .map(reading -> reading.pace().acceleration(radius))
                .distinct()
                .toList();
    }

    /** What a car shows, its {@code lowered} not yet carried out; none where it does not stand or turn, or swings no more. */
    Optional<List<Predicted>> of(Car asRead) {
        if (!(Laden.of(asRead, test.load()) instanceof Laden.AtRest rest)) {
            return Optional.empty();
        }
        Car car = rest.car();
        Map<Direction, Turn> turns = new EnumMap<>(Direction.class);
        List<Predicted> all = new ArrayList<>();
        for (Observation one : test.observations()) {
            Optional<Predicted> predicted;
            if (one instanceof Observation.Bounce bounce) {
                predicted = bounce(car, bounce);
            } else {
                Direction way =
                        one instanceof Observation.Reading reading ? reading.turn() : ((Observation.Limit) one).turn();
                Turn turn = turns.get(way);
                if (turn == null) {
                    turn = new Turn(car, way);
                    turns.put(way, turn);
                }
                predicted = turn.predicted(one);
            }
            if (predicted.isEmpty()) {
                return Optional.empty();
            }
            all.add(predicted.get());
        }
        return Optional.of(all);
    }

    private static Optional<Predicted> bounce(Car car, Observation.Bounce bounce) {
        Optional<BodySwing> swing = BodySwing.of(car, bounce.axle());
        OptionalDouble expected = swing.isEmpty()
                ? OptionalDouble.empty()
                : switch (bounce.swing()) {
                    case FREQUENCY -> swing.get().frequency();
                    case NEXT_SWING -> OptionalDouble.of(swing.get().nextSwing().orElse(0));
                };
        return expected.isEmpty()
                ? Optional.empty()
                : Optional.of(new Predicted(
                        expected.getAsDouble(),
                        bounce.measured().value() - expected.getAsDouble(),
                        bounce.measured().standardDeviation(),
                        0,
                        false,
                        Optional.empty()));
    }

    /** The car in one way round: followed once, at all paces that were read. */
    private final class Turn {
        private final Car car;
        private final Direction way;
        private final Map<Double, TurnRow> known = new HashMap<>();
        private final Optional<PacesAnswer> answer; // none where cars nearby have given the rows

        Turn(Car car, Direction way) {
            this.car = car;
            this.way = way;
            List<Double> paces = paces(way);
            TurnNearby near = nearby.get(way);
            Optional<List<TurnRow>> rows = near == null ? Optional.empty() : near.rows(car, paces, radius);
            if (rows.isPresent()) {
                for (int i = 0; i < paces.size(); i++) {
                    known.put(paces.get(i), rows.get().get(i));
                }
                answer = Optional.empty();
                return;
            }
            List<Double> besides = new ArrayList<>(paces);
            readings(way)
                    .filter(reading -> reading.channel() == Channel.SIDESLIP)
                    .map(reading -> reading.pace().acceleration(radius))
                    .forEach(pace -> besides.addAll(List.of(pace + APART, pace - APART)));
            answer = Optional.of(SteadyTurn.atPaces(car, besides, radius, way));
            if (answer.get() instanceof PacesAnswer.Paces found) {
                put(found);
            }
        }

        private void put(PacesAnswer.Paces found) {
            for (PaceAnswer one : found.paces()) {
                if (one instanceof PaceAnswer.InBalance here) {
                    known.put(one.lateralAcceleration(), here.row());
                }
            }
        }

        private Optional<TurnRow> row(double pace) {
            return Optional.ofNullable(known.get(pace));
        }

        /** The limit's state; there is one, for from cars nearby it is not asked. */
        private Limit limit() {
            return ((PacesAnswer.Paces) answer.orElseThrow()).limit();
        }

        Optional<Predicted> predicted(Observation one) {
            if (answer.isPresent() && !(answer.get() instanceof PacesAnswer.Paces)) {
                return Optional.empty();
            }
            return Optional.of(
                    one instanceof Observation.Reading reading ? reading(reading) : limit((Observation.Limit) one));
        }

        private Predicted limit(Observation.Limit seen) {
            double pace = seen.pace().acceleration(radius);
            double expected = limit().lateralAcceleration();
            return new Predicted(expected, pace - expected, seen.spread(radius), pace, false, limit().firstAxle());
        }

        private Predicted reading(Observation.Reading reading) {
            double pace = reading.pace().acceleration(radius);
            if (reading.pace() instanceof Pace.Accelerometer) {
                pace = paceFelt(pace);
            }
            Optional<TurnRow> there = row(pace);
            TurnRow row = there.orElseGet(() -> limit().row());
            double expected = value(row, reading.channel());
            double slope = switch (reading.channel()) {
                case STEERING_WHEEL ->
                    car.steering().ratio() * row.understeerGradient().orElse(0);
                case ROLL -> row.rollGradient().orElse(0);
                case SIDESLIP -> slopeOfSideslip(pace);
            };
            double sigma = Math.hypot(
                    reading.measured().standardDeviation(),
                    slope * reading.pace().spread(radius));
            return new Predicted(
                    expected, reading.measured().value() - expected, sigma, pace, there.isEmpty(), Optional.empty());
        }

        private double value(TurnRow row, Channel channel) {
            double into = way == Direction.LEFT ? 1 : -1;
            return switch (channel) {
                case STEERING_WHEEL -> into * (car.steering().ratio() * row.steer() + straightAhead);
                case ROLL -> into * row.roll();
                case SIDESLIP -> into * row.sideslip();
            };
        }

        private double slopeOfSideslip(double pace) {
            Optional<TurnRow> above = row(pace + APART);
            Optional<TurnRow> below = row(pace - APART);
            return above.isPresent() && below.isPresent()
                    ? (value(above.get(), Channel.SIDESLIP) - value(below.get(), Channel.SIDESLIP)) / (2 * APART)
                    : 0;
        }

        /** The pace at which the body feels what was felt, m/s²; its turn is known then. */
        private double paceFelt(double felt) {
            double pace = felt;
            for (int i = 0; i < LEANS; i++) {
                if (row(pace).isEmpty()
                        && SteadyTurn.atPaces(car, List.of(pace, pace + APART, pace - APART), radius, way)
                                instanceof PacesAnswer.Paces found) {
                    put(found);
                }
                TurnRow row = row(pace).orElseGet(() -> limit().row());
                double roll = Math.abs(row.roll());
                double wouldFeel = pace * Math.cos(row.sideslip()) * Math.cos(roll) + Weights.GRAVITY * Math.sin(roll);
                if (i < LEANS - 1) {
                    pace *= felt / wouldFeel;
                }
            }
            return pace;
        }
    }

    /** Whether a swing of this damping is too small to be read. */
    static boolean isTooDamped(Car car, End end) {
        return BodySwing.of(car, end)
                .filter(swing -> swing.mode().dampingRatio() > 0.5)
                .isPresent();
    }
}
