package evenhand.answers;

import evenhand.car.Car;
import evenhand.car.LoadCase;
import evenhand.car.Weights;
import evenhand.car.mounts.HardUse;
import evenhand.car.mounts.UsualUse;
import evenhand.load.Laden;
import evenhand.ride.Ride;
import evenhand.ride.Road;
import evenhand.ride.RoadClass;
import evenhand.turn.Direction;
import evenhand.turn.PacesAnswer;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The trial that cars are judged by: steady turns, one way round or both, on one circle or several, and a ride on a road.
 *
 * @param paces lateral accelerations, m/s²
 * @param radii of the circles, m; the first is the one whose figures are read where one is asked for
 * @param road of the ride
 * @param speed on it, m/s
 * @param load what is aboard besides what the car was weighed with
 * @param hardUse what the car is put through; it decides what its parts carry
 */
public record Trial(
        List<Double> paces,
        List<Double> radii,
        Ways ways,
        Road road,
        double speed,
        Optional<LoadCase> load,
        InHardUse hardUse) {
    /**
     * What the car is put through.
     *
     * @param judged whether what its mounts carry is judged without being asked
     */
    public record InHardUse(List<HardUse> uses, boolean judged) {
        /** What is usual, where somebody asks. */
        public static final InHardUse USUAL = new InHardUse(UsualUse.uses(), false);

        public InHardUse {
            uses = List.copyOf(uses);
        }
    }

    /** Lateral acceleration of a gentle bend, 0.2 g, in m/s². */
    public static final double GENTLE = 0.2 * Weights.GRAVITY;
    /** Lateral acceleration of a brisk bend, 0.5 g, in m/s². */
    public static final double BRISK = 0.5 * Weights.GRAVITY;
    /** The paces where none are asked for, m/s². */
    public static final List<Double> USUAL_PACES = List.of(GENTLE, BRISK);
    /** Radius of the circle where none is asked for, m. */
    public static final double USUAL_RADIUS = 40;
    /** Which way it turns where nothing is asked for. */
    public static final Direction USUAL_DIRECTION = Direction.LEFT;
    /** The road where none is asked for. */
    public static final Road USUAL_ROAD = RoadClass.B;
    /** The speed on it, 80 km/h, in m/s. */
    public static final double USUAL_SPEED = 80 / 3.6;

    public Trial {
        paces = List.copyOf(paces);
        radii = List.copyOf(radii);
        if (radii.isEmpty()) {
            throw new IllegalArgumentException("no circle to turn on");
        }
    }

    /** On the usual road, with nothing more aboard. */
    public Trial(List<Double> paces, List<Double> radii, Ways ways) {
        this(paces, radii, ways, USUAL_ROAD, USUAL_SPEED, Optional.empty(), InHardUse.USUAL);
    }

    /** On one circle and one way round. */
    public Trial(List<Double> paces, double radius, Direction direction) {
        this(paces, List.of(radius), Ways.of(direction));
    }

    /** Radius of the first circle, m. */
    public double radius() {
        return radii.get(0);
    }

    /** The first way round. */
    public Direction direction() {
        return ways.first();
    }

    /** The same trial one way round. */
    public Trial turning(Direction direction) {
        return new Trial(paces, radii, Ways.of(direction), road, speed, load, hardUse);
    }

    /** The same trial both ways round. */
    public Trial bothWays() {
        return new Trial(paces, radii, Ways.BOTH, road, speed, load, hardUse);
    }

    /** The same trial on one circle, radius in m. */
    public Trial onCircle(double radius) {
        return new Trial(paces, List.of(radius), ways, road, speed, load, hardUse);
    }

    /** Whether both ways round are one turn and its mirror image for a car at rest in this trial. */
    public boolean isAlike(Car car) {
        return ways.isBoth() && car.turnsAlikeBothWays();
    }

    /** The same of a car as read from a file, once its load has settled; one that cannot stand has one answer too. */
    public boolean asksAlike(Car car) {
        return Laden.of(car, load) instanceof Laden.AtRest rest ? isAlike(rest.car()) : ways.isBoth();
    }

    /** How many bends are asked: each circle, each way round. */
    public int bends() {
        return radii.size() * ways.directions().size();
    }

    /** The first circle and way round alone. */
    public Trial firstBend() {
        return turning(direction()).onCircle(radius());
    }

    /** The trial where nothing else is asked for: gentle and brisk, to the left on the usual circle and the usual road. */
    public static Trial usual() {
        return new Trial(USUAL_PACES, USUAL_RADIUS, USUAL_DIRECTION);
    }

    /** What is judged. */
    public List<Judged> judged() {
        return Judged.all(paces);
    }

    /** What is judged of a car that answers so: the ride only where there are dampers, and what it says straight ahead. */
    public List<Judged> judged(Answers answers) {
        return Stream.concat(
                        judged().stream().filter(one -> !one.criterion().ofRide() || answers.isDamped()),
                        answers.ahead().judged().stream())
                .toList();
    }

    /** The same trial with a load aboard. */
    public Trial with(Optional<LoadCase> load) {
        return new Trial(paces, radii, ways, road, speed, load, hardUse);
    }

    /** The same trial of a car that is put through this; what its mounts carry is judged only where somebody asks. */
    public Trial through(List<HardUse> uses) {
        return new Trial(paces, radii, ways, road, speed, load, new InHardUse(uses, false));
    }

    /** The same, and what its mounts carry is judged as well. */
    public Trial judgingMounts() {
        return new Trial(paces, radii, ways, road, speed, load, new InHardUse(hardUse.uses(), true));
    }

    /** The same trial on a road at a speed, m/s. */
    public Trial on(Road road, double speed) {
        return new Trial(paces, radii, ways, road, speed, load, hardUse);
    }

    /** The same trial with the pace at which a figure needs a turn, unless it has it. */
    public Trial with(Judged figure) {
        return figure.turnPace().isPresent() ? at(figure.turnPace().getAsDouble()) : this;
    }

    /** The same trial with one pace more, unless it has it. */
    public Trial at(double pace) {
        List<Double> more = new ArrayList<>(paces);
        if (!more.contains(pace)) {
            more.add(pace);
        }
        return new Trial(more, radii, ways, road, speed, load, hardUse);
    }

    /** What a car answers, as read from a file: {@code lowered} is carried out here, and the load settles. */
    public Answers ask(Car car) {
        return askAlso(car, List.of());
    }

    /** The same, with some figures besides those that such a car is judged by. */
    public Answers askAlso(Car car, Collection<Judged> besides) {
        return ask(
                car,
                Stream.of(
                                judgedAlso(besides),
                                AheadCriteria.of(car, paces),
                                hardUse.judged() ? LoadCriteria.of(car) : List.<Judged>of())
                        .flatMap(List::stream)
                        .distinct()
                        .toList());
    }

    /** What is judged, and some figures besides. */
    public List<Judged> judgedAlso(Collection<Judged> besides) {
        return Stream.concat(judged().stream(), besides.stream()).distinct().toList();
    }

    /**
     * The same, as far as some figures are read from it: a ride that none of them judges is left out, and so are the links;
     * where all are of links, straight ahead or of what parts carry, nothing turns.
     */
    public Answers ask(Car car, Collection<Judged> figures) {
        return ask(car, figures, UnaryOperator.identity());
    }

    /** The same, with what the ride estimates put in by the asker; of the car at rest, for a load is part of the estimate. */
    public Answers ask(Car car, Collection<Judged> figures, UnaryOperator<Car> riding) {
        Laden laden = Laden.of(car, load);
        if (laden instanceof Laden.NoRest none) {
            String why = none.text();
            TurnAnswer.NoTurn noTurn = new TurnAnswer.NoTurn(TurnAnswer.Reason.NO_EQUILIBRIUM, why);
            return new Answers(
                    radii.stream()
                            .flatMap(radius -> ways.directions().stream()
                                    .map(direction -> new Answers.Bend(radius, direction, noTurn)))
                            .toList(),
                    Optional.empty(),
                    LinkAnswers.NONE);
        }
        Car standing = ((Laden.AtRest) laden).car();
        boolean rides = figures.stream().anyMatch(figure -> figure.criterion().ofRide());
        Optional<Ride> ride = rides && Ride.of(riding.apply(standing), road, speed) instanceof Ride found
                ? Optional.of(found)
                : Optional.empty();
        boolean asksLinks =
                figures.stream().anyMatch(figure -> figure.criterion().ofLinks());
        LinkAnswers links = asksLinks ? LinkAnswers.of(load.isPresent() ? standing : car, standing) : LinkAnswers.NONE;
        boolean turns = figures.isEmpty()
                || figures.stream().anyMatch(figure -> !figure.criterion().needsNoTurn());
        return new Answers(
                turns ? bends(standing) : List.of(), ride, links, AheadAnswers.of(standing, figures, hardUse.uses()));
    }

    private List<Answers.Bend> bends(Car standing) {
        List<Answers.Bend> bends = new ArrayList<>();
        for (double radius : radii) {
            PacesAnswer first = SteadyTurn.atPaces(standing, paces, radius, direction());
            bends.add(new Answers.Bend(radius, direction(), first));
            if (ways.isBoth()) {
                Direction other = direction().other();
                PacesAnswer second =
                        isAlike(standing) ? first.mirrored() : SteadyTurn.atPaces(standing, paces, radius, other);
                bends.add(new Answers.Bend(radius, other, second));
            }
        }
        return bends;
    }
}
