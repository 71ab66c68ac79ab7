package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.links.Carried;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.SideView;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.PartEnd;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One car as built, standing at rest on level ground. SI units, axes ISO 8855.
 *
 * @param weights mass and where it stands
 * @param wheelbase L, m
 * @param cgHeight height of the whole car's centre of gravity, m
 * @param chassisTorsionalStiffness between the axles, N·m/rad; infinite = rigid
 * @param steering steering gear
 * @param air forces of the air
 * @param rollingResistance rolling drag over load
 * @param front front axle
 * @param rear rear axle
 * @param drive driven wheels
 * @param pitchInertia of the sprung mass, kg·m², where known
 * @param seat where the driver sits
 * @param brakes how they are shared
 * @param mounts what carries the ends of links, springs and dampers
 */
public record Car(
        Weights weights,
        double wheelbase,
        double cgHeight,
        double chassisTorsionalStiffness,
        Steering steering,
        Air air,
        double rollingResistance,
        Axle front,
        Axle rear,
        Drive drive,
        OptionalDouble pitchInertia,
        Seat seat,
        Brakes brakes,
        List<Mount> mounts) {
    /** A car of whose mounts nothing is known. */
    public Car(
            Weights weights,
            double wheelbase,
            double cgHeight,
            double chassisTorsionalStiffness,
            Steering steering,
            Air air,
            double rollingResistance,
            Axle front,
            Axle rear,
            Drive drive,
            OptionalDouble pitchInertia,
            Seat seat,
            Brakes brakes) {
        this(
                weights,
                wheelbase,
                cgHeight,
                chassisTorsionalStiffness,
                steering,
                air,
                rollingResistance,
                front,
                rear,
                drive,
                pitchInertia,
                seat,
                brakes,
                List.of());
    }

    /** A car with brakes of which nothing is known. */
    public Car(
            Weights weights,
            double wheelbase,
            double cgHeight,
            double chassisTorsionalStiffness,
            Steering steering,
            Air air,
            double rollingResistance,
            Axle front,
            Axle rear,
            Drive drive,
            OptionalDouble pitchInertia,
            Seat seat) {
        this(
                weights,
                wheelbase,
                cgHeight,
                chassisTorsionalStiffness,
                steering,
                air,
                rollingResistance,
                front,
                rear,
                drive,
                pitchInertia,
                seat,
                Brakes.USUAL);
    }

    public Car {
        require(wheelbase > 0, "wheelbase", "must be above zero");
        require(cgHeight > 0, "cgHeight", "must be above the ground");
        require(chassisTorsionalStiffness > 0, "chassisTorsionalStiffness", "must be above zero");
        require(rollingResistance >= 0, "rollingResistance", "must not be below zero");
        require(rollingResistance < 1, "rollingResistance", "must be below 1");
        require(pitchInertia.orElse(1) > 0, "pitchInertia", "must be above zero");
        seat.requireWithin(wheelbase);
        for (End end : End.values()) {
            Axle axle = end == End.FRONT ? front : rear;
            double share = end == End.FRONT ? weights.frontFraction() : 1 - weights.frontFraction();
            double lighter = Math.min(weights.fraction(end, Side.LEFT), weights.fraction(end, Side.RIGHT));
            require(
                    weights.mass() * share * lighter > axle.unsprung().mass() / 2,
                    end.key() + ".unsprungMass",
                    "is more than stands on the wheels of this axle");
        }
        Sprung sprung = Sprung.of(weights, wheelbase, cgHeight, front, rear);
        require(sprung.height() > 0, "cgHeight", "is so low that the sprung mass would lie below the ground");
        Lowering.require(sprung, air, front, rear);
        mounts = List.copyOf(mounts);
        for (Mount mount : mounts) {
            requireCarried(mount, front, rear);
        }
        if (brakes.frontShare().isPresent() && brakes.parts().isPresent()) {
            throw new InvalidValue(
                    "brakes",
                    String.format(
                            Locale.ROOT,
                            "give frontShare or the parts, not both; the parts give %.2f at 0.5 g",
                            shareOf(brakes.parts().get(), weights, front, rear)));
        }
    }

    /** Every end that a mount carries is there. */
    private static void requireCarried(Mount mount, Axle front, Axle rear) {
        for (int i = 0; i < mount.carries().size(); i++) {
            PartEnd end = mount.carries().get(i);
            List<PartEnd> known = PartEnd.known(end.axle() == End.FRONT ? front : rear, end.axle());
            require(
                    known.contains(end),
                    "mounts." + mount.name() + ".carries[" + i + "]",
                    "there is no end \"" + end.key() + "\"; known ends: "
                            + String.join(", ", known.stream().map(PartEnd::key).toList()));
        }
    }

    private static double shareOf(BrakeParts parts, Weights weights, Axle front, Axle rear) {
        return BrakeForces.frontShare(
                parts, front.tyre().loadedRadius(), rear.tyre().loadedRadius(), Brakes.SHARE_AT * weights.mass());
    }

    public Axle axle(End end) {
        return end == End.FRONT ? front : rear;
    }

    /** Where the driver's seat is bolted down, m behind the front axle; given or estimated. */
    public double seatBehindFront() {
        return seat.behindFront(wheelbase);
    }

    /** Share of the brake force at the front wheels, given, that of the parts at 0.5 g, or estimated. */
    public double frontBrakeShare() {
        if (brakes.parts().isPresent()) {
            return shareOf(brakes.parts().get(), weights, front, rear);
        }
        return brakes.frontShare()
                .orElseGet(() -> SideView.estimatedFrontBrakeShare(wheelbase - cgBehindFront(), cgHeight, wheelbase));
    }

    /** The brakes with their share written down: an estimate is that of the car as it was read, however it stands since. */
    Brakes sharedBrakes() {
        return brakes.parts().isPresent() ? brakes : brakes.sharing(frontBrakeShare());
    }

    /**
     * The links of an axle with what they need to know of this car, its {@code lowered} carried out, where they are given by
     * points.
     */
    public Optional<LinkedAxle> linked(End end) {
        Car settled = settled();
        Axle drawn = axle(end);
        return settled.axle(end).links().map(links -> {
            double load = axleLoad(end) - drawn.unsprung().mass() * Weights.GRAVITY;
            OptionalDouble free = drawn.spring().lengths().free();
            return links.inCar(
                    new SideView(
                            wheelbase,
                            settled.cgHeight(),
                            frontBrakeShare(),
                            links.sideView().brakesAt(),
                            drive.axle() == end),
                    free.isPresent()
                            ? Optional.of(new Carried(load, drawn.spring().rate(), free.getAsDouble(), drawn.stops()))
                            : Optional.empty());
        });
    }

    /**
     * Torque of the propeller shaft over the drive force of a driven live axle, about x: it turns the housing by its negative.
     *
     * <pre>  T/P = ±loadedRadius/finalDrive  </pre>
     *
     * @return m, above zero where the shaft turns anticlockwise seen from behind; zero where no shaft turns a housing
     */
    public double shaftTorquePerDrive() {
        Axle driven = axle(drive.axle());
        if (!(driven instanceof Axle.Live) || drive.finalDrive().isEmpty()) {
            return 0;
        }
        double sense = drive.shaftTurns() == Drive.ShaftTurns.ANTICLOCKWISE ? 1 : -1;
        return sense * driven.tyre().loadedRadius() / drive.finalDrive().getAsDouble();
    }

    /** Centre of gravity behind the front axle, m. */
    public double cgBehindFront() {
        return wheelbase * (1 - weights.frontFraction());
    }

    /** Load of a tyre at rest, N. */
    public double staticLoad(End end, Side side) {
        double axleShare = end == End.FRONT ? weights.frontFraction() : 1 - weights.frontFraction();
        return weights.mass() * Weights.GRAVITY * axleShare * weights.fraction(end, side);
    }

    /** Load of an axle's two tyres at rest, N. */
    public double axleLoad(End end) {
        return staticLoad(end, Side.LEFT) + staticLoad(end, Side.RIGHT);
    }

    /** How far the centre of gravity lies to the left of the middle: y = Σ Fz0_j·(±t_i/2)/(m·g), m. */
    public double cgLeftOfMiddle() {
        double moment = 0;
        for (End end : End.values()) {
            moment += (staticLoad(end, Side.LEFT) - staticLoad(end, Side.RIGHT))
                    * axle(end).track()
                    / 2;
        }
        return moment / (weights.mass() * Weights.GRAVITY);
    }

    /** The part that the springs carry. */
    public Sprung sprung() {
        return Sprung.of(weights, wheelbase, cgHeight, front, rear);
    }

    /**
     * Sprung mass, by moments of mass about the front axle and the ground.
     *
     * @param mass kg
     * @param behindFront of its centre behind the front axle, m
     * @param height of its centre above the ground, m
     * @param frontShare part of it over the front axle
     * @param rearShare part of it over the rear axle
     */
    public record Sprung(double mass, double behindFront, double height, double frontShare, double rearShare) {
        private static Sprung of(Weights weights, double wheelbase, double cgHeight, Axle front, Axle rear) {
            double muf = front.unsprung().mass();
            double mur = rear.unsprung().mass();
            double mass = weights.mass() - muf - mur;
            double cgBehindFront = wheelbase * (1 - weights.frontFraction());
            double behindFront = (weights.mass() * cgBehindFront - mur * wheelbase) / mass;
            double height = (weights.mass() * cgHeight
                            - muf * front.unsprung().height()
                            - mur * rear.unsprung().height())
                    / mass;
            return new Sprung(mass, behindFront, height, 1 - behindFront / wheelbase, behindFront / wheelbase);
        }

        public double share(End end) {
            return end == End.FRONT ? frontShare : rearShare;
        }
    }

    /**
     * This car with its body to be let down by so much more, both ends alike: added to what its axles are {@code lowered}.
     *
     * @throws InvalidValue if that is further than a body can go; its text says what is in the way
     */
    public Car letDown(double by) {
        return by == 0 ? this : with(front.letDown(by), rear.letDown(by));
    }

    /** This car on springs of other rates, N/m along their line, that carry the same. */
    public Car onSpringsOf(double frontRate, double rearRate) {
        return with(front.onSpringsOf(frontRate), rear.onSpringsOf(rearRate));
    }

    /** This car with another inertia in pitch, kg·m², and its seat at another place, m behind the front axle. */
    public Car riding(double itsPitchInertia, double seatBehindFront) {
        return with(front, rear, OptionalDouble.of(itsPitchInertia), new Seat(OptionalDouble.of(seatBehindFront)));
    }

    /** This car with another drive. */
    public Car driven(Drive other) {
        return with(front, rear, other, pitchInertia, seat, brakes);
    }

    /** This car with other brakes. */
    public Car braked(Brakes other) {
        return with(front, rear, drive, pitchInertia, seat, other);
    }

    private Car with(Axle newFront, Axle newRear) {
        return with(newFront, newRear, pitchInertia, seat);
    }

    private Car with(Axle newFront, Axle newRear, OptionalDouble newPitchInertia, Seat newSeat) {
        return with(newFront, newRear, drive, newPitchInertia, newSeat, brakes);
    }

    private Car with(
            Axle newFront,
            Axle newRear,
            Drive newDrive,
            OptionalDouble newPitchInertia,
            Seat newSeat,
            Brakes newBrakes) {
        return new Car(
                weights,
                wheelbase,
                cgHeight,
                chassisTorsionalStiffness,
                steering,
                air,
                rollingResistance,
                newFront,
                newRear,
                newDrive,
                newPitchInertia,
                newSeat,
                newBrakes,
                mounts);
    }

    /** This car at the height that its axles' {@code lowered} leave; they are zero afterwards. */
    public Car settled() {
        return Lowering.settle(this);
    }

    /**
     * This car as read, its {@code lowered} carried out, with a load aboard under which its axles have sunk.
     *
     * @return none where no car can be so: where something would come below the ground, or coils be bound
     */
    public Optional<Car> laden(LoadCase load, Sinking front, Sinking rear) {
        try {
            return Optional.of(Loading.settle(this, load, front, rear));
        } catch (InvalidValue e) {
            return Optional.empty();
        }
    }

    /** This car seen in a mirror: its right turn is the mirror image of this one's left turn. */
    public Car mirrored() {
        return new Car(
                weights.mirrored(),
                wheelbase,
                cgHeight,
                chassisTorsionalStiffness,
                steering,
                air,
                rollingResistance,
                front.mirrored(),
                rear.mirrored(),
                drive.mirrored(),
                pitchInertia,
                seat,
                brakes,
                mounts.stream().map(Mount::mirrored).toList());
    }

    /**
     * Whether a turn to the right is the mirror image of one to the left: the scales stand alike on both sides, no propeller
     * shaft turns the driven axle's housing, and the links of an axle are alike on both.
     */
    public boolean turnsAlikeBothWays() {
        boolean shaft =
                axle(drive.axle()) instanceof Axle.Live && drive.finalDrive().isPresent();
        return !shaft && weights.equals(weights.mirrored()) && front.alikeBothWays() && rear.alikeBothWays();
    }
}
