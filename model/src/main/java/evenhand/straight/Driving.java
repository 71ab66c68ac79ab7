package evenhand.straight;

import evenhand.car.Air;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.car.End;
import evenhand.car.Engine;
import evenhand.car.Weights;
import evenhand.turn.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a car answers when it pulls away straight ahead and in its gears: which driven wheel spins first, what engine and grip allow,
 * how it squats and leans, how far its leaves wind up.
 *
 * <p>States come from {@link StraightAhead}; the limit of grip is looked for in {@link EvenSteps}, for a
 * tyre that loses friction with its load makes it implicit. Source: Gillespie 1992 ch. 2.
 */
public final class Driving {
    /** Furthest that the limit of grip is looked for, g. */
    private static final double FURTHEST = 3;

    private static final int STEPS = 100;

    /** What ends an acceleration. */
    public enum LimitedBy {
        ENGINE("engine"),
        GRIP("grip");

        private final String key;

        LimitedBy(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /**
     * One gear, at the engine's best torque where there is an engine.
     *
     * @param gear from 1 on
     * @param overallRatio turns of the engine per turn of the wheels
     * @param speedPer1000rpm m/s
     * @param speedAtRedLine m/s
     * @param engineSpeed at the speed that was asked, rad/s
     * @param pull what the engine makes of it
     */
    public record Gear(
            int gear,
            double overallRatio,
            double speedPer1000rpm,
            OptionalDouble speedAtRedLine,
            double engineSpeed,
            Optional<Pulls> pull) {}

    /**
     * What the engine's best torque gives in a gear.
     *
     * @param force at the wheels, N
     * @param acceleration m/s²
     * @param grade steepest, as a tangent; none where neither the force nor grip ends it
     */
    public record Pulls(double force, double acceleration, OptionalDouble grade, LimitedBy limitedBy) {}

    /**
     * Pulling away.
     *
     * @param limitedBy what ends it
     * @param engine what the engine allows, m/s²; none without engine and gears
     * @param grip what grip allows, m/s²; none where no wheel spins before the car stands up
     * @param firstWheel that spins first at the limit of grip
     * @param state at the acceleration
     */
    public record Launch(
            LimitedBy limitedBy,
            OptionalDouble engine,
            OptionalDouble grip,
            Optional<Wheel> firstWheel,
            Pulling state) {}

    /** Load and force along the car of one wheel, N. */
    public record WheelPull(Wheel wheel, double load, double force) {}

    /**
     * The car as it accelerates.
     *
     * @param acceleration m/s²
     * @param driveForce N
     * @param shaftTorque that turns the driven axle's housing, N·m; none where nothing does
     * @param anti share of the load transfer that the links of the driven axle carry; none at no acceleration
     * @param pitch rad, nose down positive
     * @param roll rad, right side down positive
     * @param windUp of the driven axle's leaves, rad, nose of the axle up positive
     */
    public record Pulling(
            double acceleration,
            double driveForce,
            OptionalDouble shaftTorque,
            OptionalDouble anti,
            double frontHeave,
            double rearHeave,
            double pitch,
            double roll,
            OptionalDouble windUp,
            List<WheelPull> wheels) {
        public Pulling {
            wheels = List.copyOf(wheels);
        }
    }

    /** The answer; the limit of grip with the differential open and locked besides, m/s². */
    public record Answer(
            List<Gear> gears, Optional<Launch> launch, OptionalDouble openGrip, OptionalDouble lockedGrip) {}

    private final Car car;
    private final StraightAhead ahead;
    private final Drive drive;
    private final End driven;
    private final double mass;
    private final double weight;

    /** @param car at rest, its {@code lowered} carried out */
    public Driving(Car car) {
        this.car = car;
        ahead = new StraightAhead(car);
        drive = car.drive();
        driven = drive.axle();
        mass = car.weights().mass();
        weight = mass * Weights.GRAVITY;
    }

    /** @param speed at which the engine's speed in each gear is told, m/s */
    public Answer answer(double speed) {
        Optional<Launch> launch = launch();
        OptionalDouble grip = launch.map(Launch::grip).orElseGet(this::gripLimit);
        return new Answer(
                gears(speed, grip),
                launch,
                gripLimit(StraightAhead.leastShare(new Drive.Differential.Open())),
                gripLimit(StraightAhead.leastShare(new Drive.Differential.Locked())));
    }

    private List<Gear> gears(double speed, OptionalDouble grip) {
        List<Gear> gears = new ArrayList<>();
        for (int i = 0; i < drive.gears().size(); i++) {
            double ratio = drive.gears().get(i) * drive.finalDrive().orElseThrow();
            double perRadian = car.axle(driven).tyre().rollingRadius() / ratio;
            OptionalDouble redLine = drive.engine().map(Engine::redLine).orElse(OptionalDouble.empty());
            gears.add(new Gear(
                    i + 1,
                    ratio,
                    PER_1000_RPM * perRadian,
                    redLine.isPresent() ? OptionalDouble.of(redLine.getAsDouble() * perRadian) : OptionalDouble.empty(),
                    speed / perRadian,
                    drive.engine().map(engine -> pulls(engine, ratio, perRadian, grip))));
        }
        return gears;
    }

    private static final double PER_1000_RPM = 1000 * 2 * Math.PI / 60;

    /**
     * What the engine's best torque T gives in a gear of overall ratio i, the drag at that engine speed against it:
     *
     * <pre>
     *   P = T·i·efficiency/loadedRadius,  a = (P − drag − rr·m·g)/m
     *   grade = tan(asin((P − drag)/(m·g·√(1 + rr²))) − atan rr), never above what grip allows
     * </pre>
     */
    private Pulls pulls(Engine engine, double ratio, double speedPerRadian, OptionalDouble grip) {
        Engine.Torque.Point best = engine.torque().best();
        double force = force(best.torque(), ratio);
        double speed = best.speed() * speedPerRadian;
        double drag = Air.DENSITY / 2 * car.air().dragArea() * speed * speed;
        double resistance = car.rollingResistance();
        double sine = (force - drag) / (weight * Math.sqrt(1 + resistance * resistance));
        OptionalDouble byEngine = Math.abs(sine) < 1
                ? OptionalDouble.of(Math.tan(Math.asin(sine) - Math.atan(resistance)))
                : OptionalDouble.empty();
        OptionalDouble byGrip =
                grip.isPresent() ? OptionalDouble.of(grip.getAsDouble() / Weights.GRAVITY) : OptionalDouble.empty();
        boolean spins = grip.isPresent() && force > ahead.driveForce(grip.getAsDouble());
        return new Pulls(
                force,
                (force - drag - resistance * weight) / mass,
                lesser(byEngine, byGrip),
                spins ? LimitedBy.GRIP : LimitedBy.ENGINE);
    }

    private static OptionalDouble lesser(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() && other.isPresent()
                ? OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()))
                : one.isPresent() ? one : other;
    }

    private double force(double torque, double ratio) {
        return torque * ratio * drive.efficiency() / car.axle(driven).tyre().loadedRadius();
    }

    /** The least of what the engine gives in first gear and what grip allows; nothing where neither is known. */
    public Optional<Launch> launch() {
        OptionalDouble grip = gripLimit();
        Optional<Wheel> spins =
                grip.isPresent() ? Optional.of(Wheel.of(driven, ahead.nearer(driven))) : Optional.empty();
        OptionalDouble engine = engineLimit();
        OptionalDouble least = lesser(engine, grip);
        if (least.isEmpty()) {
            return Optional.empty();
        }
        LimitedBy by = grip.isPresent() && engine.orElse(Double.MAX_VALUE) > grip.getAsDouble()
                ? LimitedBy.GRIP
                : LimitedBy.ENGINE;
        return pulling(least.getAsDouble()).map(state -> new Launch(by, engine, grip, spins, state));
    }

    /** What the engine gives in first gear at walking pace, m/s². */
    private OptionalDouble engineLimit() {
        if (drive.engine().isEmpty() || drive.gears().isEmpty()) {
            return OptionalDouble.empty();
        }
        double ratio = drive.gears().get(0) * drive.finalDrive().orElseThrow();
        double force = force(drive.engine().get().torque().best().torque(), ratio);
        return OptionalDouble.of((force - car.rollingResistance() * weight) / mass);
    }

    /** What grip allows through the car's own differential, m/s². */
    public OptionalDouble gripLimit() {
        return gripLimit(StraightAhead.leastShare(drive.differential()));
    }

    private OptionalDouble gripLimit(double share) {
        EvenSteps steps = new EvenSteps(ahead, STEPS, acceleration -> ahead.drive(acceleration, share));
        double ofLow = Double.NaN;
        for (int i = 1; steps.at(i) <= FURTHEST; i++) {
            double ofHigh = steps.reach(i) ? left() : Double.NaN;
            if (!(ofHigh > 0)) {
                return spun(steps, steps.closeIn(steps.at(i - 1), ofLow, steps.at(i), ofHigh, this::left));
            }
            ofLow = ofHigh;
        }
        return OptionalDouble.empty();
    }

    private double left() {
        return ahead.leastLeft(driven, Double.NaN);
    }

    /** Nothing where the car stands up on its rear wheels before one of them spins. */
    private OptionalDouble spun(EvenSteps steps, double at) {
        if (!steps.standsThere()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of((left() <= 0 ? at : steps.lastLeft()) * Weights.GRAVITY);
    }

    /** The car at an acceleration, m/s²; nothing where there is no such state. */
    public Optional<Pulling> pulling(double acceleration) {
        if (!ahead.drive(acceleration)) {
            return Optional.empty();
        }
        double force = ahead.driveForce();
        Axle axle = car.axle(driven);
        boolean turnsHousing = axle instanceof Axle.Live && drive.finalDrive().isPresent();
        double transfer = mass * acceleration * car.cgHeight() / car.wheelbase();
        double sign = driven == End.REAR ? 1 : -1;
        OptionalDouble stiffness = axle.reaction().windUpStiffness();
        Car.Sprung sprung = car.sprung();
        List<WheelPull> wheels = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            AxleAlong of = ahead.axle(wheel.end());
            wheels.add(new WheelPull(wheel, of.load[wheel.side().index()], of.forward(wheel.side()) + 0.0));
        }
        return Optional.of(new Pulling(
                acceleration,
                force,
                turnsHousing ? OptionalDouble.of(ahead.shaftTorque(force)) : OptionalDouble.empty(),
                transfer == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(sign * ahead.axle(driven).liftOfDrive() / transfer + 0.0),
                ahead.heave(End.FRONT),
                ahead.heave(End.REAR),
                ahead.pitch(),
                sprung.frontShare() * ahead.roll(End.FRONT) + sprung.rearShare() * ahead.roll(End.REAR),
                stiffness.isPresent()
                        ? OptionalDouble.of(force * axle.tyre().loadedRadius() / stiffness.getAsDouble())
                        : stiffness,
                wheels));
    }
}
