package evenhand.lowering;

import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.load.Laden;
import evenhand.quantity.Unit;
import evenhand.ride.Ride;
import evenhand.ride.RideAnswer;
import evenhand.ride.RoadClass;
import evenhand.ride.Standing;
import evenhand.suspension.AxleSuspension;
import evenhand.turn.Direction;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;

/** A car at one height, asked what a height decides. */
public sealed interface Stance permits Stance.Stands, Stance.NoStance {
    /** The road that comfort is judged on. */
    RoadClass ROAD = RoadClass.C;

    /** Nearer to its stop than this, a car touches it, m. */
    double TOUCHING = 1e-6;

    /** How fast, m/s. */
    double SPEED = Unit.of("km/h").toSi(80);

    /** How far its body was let down, beyond what it was lowered already, m. */
    double lowered();

    /**
     * It stands.
     *
     * @param car at this height, its load settled
     * @param springs that were fitted to keep a reserve, where one was asked for
     * @param front travel there
     * @param rear travel there
     * @param frontLinks what the links of the front axle do there, where they are known by points
     * @param rearLinks of the rear axle
     * @param sums hand sums per g
     * @param bends on each circle and each way round that was asked, from straight ahead to the limit; the first is the one
     *     whose figures are read where one is asked for
     * @param ride on {@link #ROAD} at {@link #SPEED}
     */
    record Stands(
            double lowered,
            Car car,
            Optional<ReserveSprings> springs,
            Standing front,
            Standing rear,
            Optional<StandingLinks> frontLinks,
            Optional<StandingLinks> rearLinks,
            HandSums.Outcome sums,
            List<Bend> bends,
            RideAnswer ride)
            implements Stance {
        public Stands {
            bends = List.copyOf(bends);
        }

        /** The turn of the first bend. */
        public TurnAnswer turn() {
            return bends.get(0).turn();
        }

        public Standing standing(End end) {
            return end == End.FRONT ? front : rear;
        }

        /** What the links of an axle do there, where they are known by points. */
        public Optional<StandingLinks> links(End end) {
            return end == End.FRONT ? frontLinks : rearLinks;
        }

        /** The hand sums, where it does not fall over. */
        public Optional<HandSums> handSums() {
            return sums instanceof HandSums.Found found ? Optional.of(found.sums()) : Optional.empty();
        }

        /** The turn of the first bend, where it turns. */
        public Optional<TurnAnswer.Turns> turns() {
            return turn() instanceof TurnAnswer.Turns turns ? Optional.of(turns) : Optional.empty();
        }

        /** The ride, where it has one. */
        public Optional<Ride> rides() {
            return ride instanceof Ride one ? Optional.of(one) : Optional.empty();
        }

        /**
         * Undamped frequency of the sprung mass on the wheel rate alone, √(g/static deflection)/2π, Hz: how springs are
         * spoken of. The tyre in series lowers it by some per cent.
         */
        public OptionalDouble frequencyOnSprings(End end) {
            return rides().map(one -> OptionalDouble.of(
                            ReserveSprings.frequency(1, one.axle(end).staticDeflection())))
                    .orElseGet(OptionalDouble::empty);
        }

        /** Whether it stands on a bump stop at rest, or just touches it. */
        public boolean onStop() {
            return onStop(End.FRONT) || onStop(End.REAR);
        }

        public boolean onStop(End end) {
            return standing(end).bumpTravelToStop().orElse(1) < TOUCHING;
        }

        /** The first bump stop that the turn touches; none where it stands on one already, or touches none. */
        public Optional<TurnEvent> firstTouch() {
            return onStop() ? Optional.empty() : first(TurnEvent.Kind.STOP_TOUCHED);
        }

        /** Lateral acceleration at which a bump stop first carries something, m/s²: zero where it stands on one. */
        public OptionalDouble firstStop() {
            if (onStop()) {
                return OptionalDouble.of(0);
            }
            OptionalDouble atOnce = touchedAtOnce();
            return atOnce.isPresent() ? atOnce : at(firstTouch());
        }

        /** A stop so near that it is touched before the first row of the turn: by proportion, since all is linear there. */
        private OptionalDouble touchedAtOnce() {
            OptionalDouble first = OptionalDouble.empty();
            if (turns().isPresent()) {
                TurnRow row = turns().get().rows().get(0);
                for (End end : End.values()) {
                    OptionalDouble gap = standing(end).bumpTravelToStop();
                    double left = row.wheel(Wheel.of(end, Side.LEFT)).travel();
                    double right = row.wheel(Wheel.of(end, Side.RIGHT)).travel();
                    double roll = (right - left) / car.axle(end).track();
                    AxleSuspension suspension = AxleSuspension.of(car, end);
                    double deflection = Math.max(
                            suspension.bumpDeflection((left + right) / 2, roll, Side.LEFT),
                            suspension.bumpDeflection((left + right) / 2, roll, Side.RIGHT));
                    if (gap.isPresent() && deflection > 0) {
                        double at = row.lateralAcceleration() * gap.getAsDouble() / (gap.getAsDouble() + deflection);
                        first = OptionalDouble.of(Math.min(at, first.orElse(at)));
                    }
                }
            }
            return first;
        }

        /** Lateral acceleration from which the steering is to be let back, m/s². */
        public OptionalDouble steerReversal() {
            return at(first(TurnEvent.Kind.STEER_REVERSAL));
        }

        private static OptionalDouble at(Optional<TurnEvent> event) {
            return event.map(one -> OptionalDouble.of(one.lateralAcceleration()))
                    .orElseGet(OptionalDouble::empty);
        }

        private Optional<TurnEvent> first(TurnEvent.Kind kind) {
            return turns().flatMap(turns -> turns.eventsToLimit().stream()
                    .filter(event -> event.kind() == kind)
                    .findFirst());
        }
    }

    /** It does not come to rest at this height; why, as a clause. */
    record NoStance(double lowered, String text) implements Stance {}

    /**
     * One circle, one way round.
     *
     * @param radius m
     */
    record Bend(double radius, Direction direction, TurnAnswer turn) {}

    /** The same height seen in some of its bends alone. */
    default Stance in(Predicate<Bend> seen) {
        if (!(this instanceof Stands stands)) {
            return this;
        }
        return new Stands(
                stands.lowered(),
                stands.car(),
                stands.springs(),
                stands.front(),
                stands.rear(),
                stands.frontLinks(),
                stands.rearLinks(),
                stands.sums(),
                stands.bends().stream().filter(seen).toList(),
                stands.ride());
    }

    /** Why there is no answer to one question or to any, as a clause. */
    default Optional<String> noAnswer() {
        if (this instanceof NoStance none) {
            return Optional.of(none.text());
        }
        Stands stands = (Stands) this;
        for (Bend bend : stands.bends()) {
            if (bend.turn() instanceof TurnAnswer.NoTurn none) {
                boolean everywhere =
                        stands.bends().stream().allMatch(other -> other.turn() instanceof TurnAnswer.NoTurn);
                return Optional.of(
                        (everywhere ? "" : "turning " + bend.direction().key() + ", ") + none.text());
            }
        }
        if (stands.sums() instanceof HandSums.FallsOver falls) {
            return Optional.of(falls.text());
        }
        return stands.ride() instanceof RideAnswer.NoRide none ? Optional.of(none.text()) : Optional.empty();
    }

    /**
     * Lets a car down and asks it.
     *
     * @param car as read from a file; what it is {@code lowered} there stays
     * @param lowered further, m; below zero raised
     * @param reserve that its springs are to keep, in g of their load at rest; they stay as they are where none is asked for
     * @param trial paces, circles, ways round and load
     * @throws evenhand.quantity.InvalidValue if that is further than a body can go
     */
    static Stance of(Car car, double lowered, OptionalDouble reserve, Trial trial) {
        return of(car, lowered, reserve, trial, settled -> bends(settled, trial, SteadyTurn::answer));
    }

    /** The same asked only what its needs are judged by: its turns have no curve, and end at their limits. */
    static Stance judged(Car car, double lowered, OptionalDouble reserve, Trial trial) {
        return of(car, lowered, reserve, trial, settled -> bends(settled, trial, SteadyTurn::toLimit));
    }

    /** The same asked only what it shows at rest: it has no bends. */
    static Stance atRest(Car car, double lowered, OptionalDouble reserve, Trial trial) {
        return of(car, lowered, reserve, trial, settled -> List.of());
    }

    private static Stance of(
            Car car, double lowered, OptionalDouble reserve, Trial trial, Function<Car, List<Bend>> bends) {
        Car down = car.letDown(lowered);
        Laden laden = Laden.of(down, trial.load());
        Optional<ReserveSprings> springs = Optional.empty();
        if (reserve.isPresent()) {
            ReserveSprings kept = ReserveSprings.of(down, trial.load(), reserve.getAsDouble());
            Optional<String> none = kept.tooMuch();
            if (none.isPresent()) {
                return laden instanceof Laden.AtRest rest
                        ? noSprings(lowered, rest.car(), trial, none.get())
                        : new NoStance(lowered, none.get());
            }
            laden = Laden.of(kept.fitted(down), trial.load());
            springs = Optional.of(kept);
        }
        if (!(laden instanceof Laden.AtRest rest)) {
            return new NoStance(lowered, ((Laden.NoRest) laden).text());
        }
        Car settled = rest.car();
        return new Stands(
                lowered,
                settled,
                springs,
                Standing.of(settled, End.FRONT),
                Standing.of(settled, End.REAR),
                StandingLinks.of(settled, End.FRONT),
                StandingLinks.of(settled, End.REAR),
                HandSums.of(settled, Weights.GRAVITY),
                bends.apply(settled),
                Ride.of(settled, ROAD, SPEED));
    }

    /** How a car is asked about one bend. */
    interface Asking {
        TurnAnswer turn(Car settled, List<Double> paces, double radius, Direction direction);
    }

    private static List<Bend> bends(Car settled, Trial trial, Asking asking) {
        List<Bend> bends = new ArrayList<>();
        for (double radius : trial.radii()) {
            Optional<TurnAnswer> first = Optional.empty();
            for (Direction direction : trial.ways().directions()) {
                TurnAnswer turn = first.isPresent() && trial.isAlike(settled)
                        ? first.get().mirrored()
                        : asking.turn(settled, trial.paces(), radius, direction);
                first = Optional.of(turn);
                bends.add(new Bend(radius, direction, turn));
            }
        }
        return bends;
    }

    /** A height that no spring suits: there is only its travel to be told. */
    private static Stance noSprings(double lowered, Car car, Trial trial, String why) {
        TurnAnswer none = new TurnAnswer.NoTurn(TurnAnswer.Reason.NO_EQUILIBRIUM, why);
        List<Bend> bends = trial.radii().stream()
                .flatMap(radius -> trial.ways().directions().stream().map(way -> new Bend(radius, way, none)))
                .toList();
        return new Stands(
                lowered,
                car,
                Optional.empty(),
                Standing.of(car, End.FRONT),
                Standing.of(car, End.REAR),
                StandingLinks.of(car, End.FRONT),
                StandingLinks.of(car, End.REAR),
                new HandSums.FallsOver(why),
                bends,
                new RideAnswer.NoRide(why));
    }
}
