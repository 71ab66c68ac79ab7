package evenhand.drawing;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.Side;
import evenhand.car.Sinking;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleLines;
import evenhand.linkage.AxleLinkage;
import evenhand.linkage.WheelPairLinkage;
import evenhand.load.Laden;
import evenhand.look.SetupStyle;
import evenhand.suspension.AxleSuspension;
import evenhand.turn.TurnRow;
import evenhand.turn.Wheel;
import evenhand.turn.WheelState;
import evenhand.tyre.TyreSize;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A set-up as it stands at rest, or leans at one point of a turn. SI; y to the left, z up, rolls with the right side down
 * positive.
 *
 * @param given the car as read from a file, {@code lowered} not yet carried out
 * @param car settled
 * @param frontTyre size on the wall, where known
 * @param rearTyre size on the wall, where known
 * @param row the car in the turn; none at rest
 * @param inTurn the car that the row is of: while a value is pulled, the one of a moment ago
 * @param frontSunk how far a load has let the body down over the front axle, on springs and tyres, m
 * @param rearSunk the same over the rear axle, m
 */
public record Stance(
        String name,
        SetupStyle style,
        Car given,
        Car car,
        Optional<TyreSize> frontTyre,
        Optional<TyreSize> rearTyre,
        Optional<TurnRow> row,
        Car inTurn,
        double frontSunk,
        double rearSunk) {
    /** Width of a tyre over its loaded radius, where its size is not known. Common practice, no source. */
    private static final double WIDTH_BY_RADIUS = 0.64;

    /** A rim's radius over the loaded radius, where the size is not known. Common practice, no source. */
    private static final double RIM_BY_RADIUS = 0.62;

    /**
     * A set-up at rest.
     *
     * @param look its colour, line and marker
     * @param given the car as built, {@code lowered} not yet carried out
     * @param entries what was given of it: the tyres' sizes are read from it
     */
    public static Stance atRest(String name, int look, Car given, Entries entries) {
        return standing(name, look, given, new Laden.AtRest(given.settled(), Sinking.NONE, Sinking.NONE), entries);
    }

    /** A set-up at rest with a load aboard; without it where it cannot come to rest with it. */
    public static Stance laden(String name, int look, Car given, Optional<LoadCase> load, Entries entries) {
        return Laden.of(given, load) instanceof Laden.AtRest rest
                ? standing(name, look, given, rest, entries)
                : atRest(name, look, given, entries);
    }

    private static Stance standing(String name, int look, Car given, Laden.AtRest rest, Entries entries) {
        return new Stance(
                name,
                new SetupStyle(look),
                given,
                rest.car(),
                Catalogue.tyreSize(entries, End.FRONT),
                Catalogue.tyreSize(entries, End.REAR),
                Optional.empty(),
                rest.car(),
                rest.front().drop(),
                rest.rear().drop());
    }

    /** The same car at a point of a turn. */
    public Stance turning(TurnRow at) {
        return turning(at, car);
    }

    /**
     * The same car at a point of a turn that another version of it was asked about: what has been pulled since is where it was
     * pulled to, and leans as the other does.
     */
    public Stance turning(TurnRow at, Car asked) {
        return new Stance(name, style, given, car, frontTyre, rearTyre, Optional.of(at), asked, frontSunk, rearSunk);
    }

    /** How a wheel stands: its centre's height, its lean to the right and steer to the left, and the load on its tyre. */
    record Posture(double y, double height, double lean, double steer, double load) {}

    Posture wheel(Wheel wheel) {
        Axle axle = car.axle(wheel.end());
        double side = wheel.side().sign();
        double y = side * axle.track() / 2;
        double radius = axle.tyre().loadedRadius();
        if (row.isEmpty()) {
            return new Posture(
                    y,
                    radius,
                    -side * axle.alignment().camber(),
                    -side * axle.alignment().toe(),
                    car.staticLoad(wheel.end(), wheel.side()));
        }
        WheelState state = row.get().wheel(wheel);
        return new Posture(y, radius + rise(wheel), state.lean(), state.steer(), state.load());
    }

    /** How far a wheel is above where it stood at rest: its travel against the body, and what the body does there. */
    double rise(Wheel wheel) {
        if (row.isEmpty()) {
            return 0;
        }
        double y = wheel.side().sign() * car.axle(wheel.end()).track() / 2;
        return row.get().wheel(wheel).travel() + heave(wheel.end()) + y * roll(wheel.end());
    }

    /** Rise of the body over an axle since rest, m. */
    double heave(End end) {
        return row.map(at -> end == End.FRONT ? at.frontHeave() : at.rearHeave())
                .orElse(0.0);
    }

    /** Roll of the body at an axle, rad. */
    double roll(End end) {
        return row.map(at -> end == End.FRONT ? at.frontRoll() : at.rearRoll()).orElse(0.0);
    }

    double rollCentreHeight(End end) {
        double rest = car.axle(end).geometry().rollCentreHeight();
        return row.map(at -> (end == End.FRONT ? at.frontRollCentreHeight() : at.rearRollCentreHeight())
                        + rest
                        - inTurn.axle(end).geometry().rollCentreHeight())
                .orElse(rest);
    }

    /**
     * The measured links of an axle, standing as the wheels do in the turn.
     *
     * @param down how far the body's axes, in which they are given, have come down since they were measured, m
     */
    record Links(AxleLines lines, double down) {}

    /** The links of an axle where they are known by points; as they stand at rest if they do not reach as far as the turn. */
    Optional<Links> links(End end) {
        return car.linked(end).flatMap(linked -> {
            if (!(Assembly.of(linked) instanceof Assembly.Standing standing)) {
                return Optional.empty();
            }
            AxleLinkage axle = standing.linkage();
            axle.rest();
            row.ifPresent(at -> {
                double left = at.wheel(Wheel.of(end, Side.LEFT)).travel();
                double right = at.wheel(Wheel.of(end, Side.RIGHT)).travel();
                boolean there = (axle instanceof WheelPairLinkage wheels && wheels.steered())
                        ? wheels.moveTo(left, right, at.steer())
                        : axle.moveTo(left, right);
                if (!there) {
                    axle.rest();
                }
            });
            double flatter =
                    linked.stance().loadedRadius() - car.axle(end).tyre().loadedRadius();
            return Optional.of(new Links(axle.lines(), linked.stance().cameDown() + flatter));
        });
    }

    /** How far the body has come down over an axle since it was measured: let down, and sunk under a load, m. */
    double down(End end) {
        return given.axle(end).lowered() + (end == End.FRONT ? frontSunk : rearSunk);
    }

    /** Height of the centre of gravity, which rises with the body. */
    double cgHeight() {
        double front = car.weights().frontFraction();
        return car.cgHeight() + front * heave(End.FRONT) + (1 - front) * heave(End.REAR);
    }

    double tyreWidth(End end) {
        return size(end)
                .map(TyreSize::width)
                .orElse(WIDTH_BY_RADIUS * car.axle(end).tyre().loadedRadius());
    }

    double rimRadius(End end) {
        return size(end)
                .map(tyre -> tyre.rim() / 2)
                .orElse(RIM_BY_RADIUS * car.axle(end).tyre().loadedRadius());
    }

    /** Radius of the tyre's upper half; its lower half is as high as the wheel's centre. */
    double freeRadius(End end) {
        double loaded = car.axle(end).tyre().loadedRadius();
        return size(end).map(tyre -> Math.max(loaded, tyre.freeRadius())).orElse(1.04 * loaded);
    }

    private Optional<TyreSize> size(End end) {
        return end == End.FRONT ? frontTyre : rearTyre;
    }

    /**
     * Travel that is left at a stop of one side, m; none without that stop. Measured where the car's file has it: at the wheel of
     * an independent axle, at the stop of a live one. Below zero where the stop is squeezed.
     */
    record Left(OptionalDouble bump, OptionalDouble droop) {}

    Left left(Wheel wheel) {
        Axle axle = car.axle(wheel.end());
        AxleSuspension suspension = AxleSuspension.of(car, wheel.end());
        double travel = 0;
        double roll = 0;
        if (row.isPresent()) {
            double left = row.get().wheel(Wheel.of(wheel.end(), Side.LEFT)).travel();
            double right = row.get().wheel(Wheel.of(wheel.end(), Side.RIGHT)).travel();
            travel = (left + right) / 2;
            roll = (right - left) / axle.track();
        }
        double bump = -suspension.bumpDeflection(travel, roll, wheel.side());
        double droop = -suspension.droopExcess(travel, roll, wheel.side());
        return new Left(
                axle.stops().bump().isPresent() ? OptionalDouble.of(bump) : OptionalDouble.empty(),
                axle.stops().droop().isPresent() ? OptionalDouble.of(droop) : OptionalDouble.empty());
    }
}
