package evenhand.suspension;

import evenhand.car.Axle;
import evenhand.car.Side;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import java.util.Optional;

/**
 * Springs that are known by their points, and links that bind, wherever the travel takes them: each spring pushes along its own
 * line, and reaches the wheel, or the axle in heave and roll, as its length changes with them.
 *
 * <pre>
 *   F = max(0, F0 + rate·(ℓ0 − ℓ)),  F0 = S0/ratio at rest,  ratio = −∂ℓ/∂u
 *   force  ΣF·(−∂ℓ/∂u) + ∂E/∂u,   moment against roll  ΣF·(−∂ℓ/∂φs) + ∂E/∂φs, both slopes of E and the moment from rest
 * </pre>
 * ℓ length of a spring, m; S0 what stands on it at rest, N; E energy of links that bind, J. Of wheels on links of their own the
 * load at the wheel is F·ratio, half the track from the middle.
 *
 * <p>Source: virtual work; Milliken &amp; Milliken 1995 ch. 16 (motion ratio that changes with travel).
 */
abstract sealed class SpringsOnLinks {
    private static final int MOST_STEPS = 30;

    /** A spring goes loose within so much travel or not at all, and where is known so closely, m. */
    private static final double FARTHEST = 1;

    private static final double CLOSE = 1e-10;

    final double rate;

    private SpringsOnLinks(double rate) {
        this.rate = rate;
    }

    /** Those of an axle; none where its links are not known by points. */
    static Optional<SpringsOnLinks> of(Axle axle, double leftLoad, double rightLoad) {
        double rate = axle.spring().rate();
        if (axle instanceof Axle.Live live && live.motion().isPresent()) {
            return Optional.of(new OnAxle(live.motion().get(), rate, leftLoad, rightLoad));
        }
        if (axle instanceof Axle.Independent wheels && wheels.motion().isPresent()) {
            return Optional.of(new AtWheels(wheels.motion().get(), rate, leftLoad, rightLoad));
        }
        return Optional.empty();
    }

    /** What reads the figures of a live axle; who asks for the same place shares it. */
    Optional<LiveAxleMotion.Reading> axle() {
        return Optional.empty();
    }

    /** The same of a wheel on links of its own. */
    Optional<WheelPairMotion.Reading> wheel(Side side) {
        return Optional.empty();
    }

    /** Adds force, moment and their slopes, and the pieces that tell which spring is loose. */
    abstract void addTo(AxleSuspension sum, double travel, double roll);

    /** What a spring would push with at its wheel, or on its side of the axle in heave, could it pull, N. */
    abstract double load(double travel, double roll, Side side);

    /** Rate in heave at rest, mean of both sides, N/m. */
    abstract double heaveRateAtRest();

    /**
     * What its side of the axle pushes over mean travel, the roll held: its spring, no less than nothing, and half of what links
     * hold that bind.
     */
    abstract CurvedForce side(Side side, double roll);

    /** Whether anything pushes that is known by points. */
    abstract boolean pushes();

    /** Half of the axle in heave: the mean of both sides. */
    final CurvedForce half() {
        CurvedForce left = side(Side.LEFT, 0);
        CurvedForce right = side(Side.RIGHT, 0);
        return new CurvedForce() {
            @Override
            void at(double travel) {
                left.at(travel);
                right.at(travel);
                force = (left.force + right.force) / 2;
                rate = (left.rate + right.rate) / 2;
                energy = (left.energy + right.energy) / 2;
            }
        };
    }

    /** Mean travel at which the spring of a side goes loose, the roll held, by Newton's method, m; −∞ where it does not. */
    final double looseAt(Side side, double roll) {
        double travel = 0;
        for (int i = 0; i < MOST_STEPS && Math.abs(travel) < FARTHEST; i++) {
            double step = -pull(travel, roll, side) / pullByTravel();
            travel += step;
            if (Math.abs(step) < CLOSE) {
                return travel;
            }
        }
        return Double.NEGATIVE_INFINITY;
    }

    /** Raises the perches from where they stood at rest, m along each spring. */
    abstract void raisePerches(double left, double right);

    /** Force along a spring, N, below zero where it is loose; −∞ of springs without points. */
    abstract double pull(double travel, double roll, Side side);

    /** Its slope over mean travel where it was asked last, N/m. */
    abstract double pullByTravel();

    /** Energy in a spring, J: F²/(2·rate). */
    final double stored(double force) {
        return force * force / (2 * rate);
    }

    private static final class AtWheels extends SpringsOnLinks {
        private final WheelPairMotion.Reading[] wheels = new WheelPairMotion.Reading[2];
        private final double[] lengthAtRest = new double[2];
        private final double[] forceAtRest = new double[2];
        private final double[] pressed = new double[2]; // by perches that were raised since, N
        private final double[] restLoad;
        private final double halfTrack;
        private final boolean springs;

        // Of the wheel at hand.
        private double load;
        private double loadByTravel;
        private double pull; // along the spring, below zero where it is loose
        private WheelPairMotion.Reading last;

        private AtWheels(WheelPairMotion motion, double rate, double leftLoad, double rightLoad) {
            super(rate);
            last = motion.reading(true);
            restLoad = new double[] {leftLoad, rightLoad};
            halfTrack = motion.made().track() / 2;
            springs = motion.guidesSprings();
            for (Side side : Side.values()) {
                int i = side.index();
                wheels[i] = motion.reading(side == Side.LEFT);
                if (!springs) {
                    continue;
                }
                wheels[i].at(0);
                wheels[i].read(WheelPairMotion.SPRING);
                lengthAtRest[i] = wheels[i].value();
                forceAtRest[i] = restLoad[i] / -wheels[i].byTravel();
            }
        }

        @Override
        Optional<WheelPairMotion.Reading> wheel(Side side) {
            return Optional.of(wheels[side.index()]);
        }

        @Override
        void raisePerches(double left, double right) {
            pressed[0] = rate * left;
            pressed[1] = rate * right;
        }

        private void at(int i, double travel) {
            WheelPairMotion.Reading wheel = wheels[i];
            last = wheel;
            wheel.at(travel);
            wheel.bend(WheelPairMotion.SPRING);
            pull = forceAtRest[i] + pressed[i] + rate * (lengthAtRest[i] - wheel.value());
            load = -pull * wheel.byTravel();
            loadByTravel = rate * wheel.byTravel() * wheel.byTravel() - pull * wheel.byTravelTwice();
        }

        @Override
        void addTo(AxleSuspension sum, double travel, double roll) {
            for (int i = 0; springs && i < 2; i++) {
                double sense = i == 0 ? -1 : 1; // roll lifts the right wheel
                at(i, travel + sense * halfTrack * roll);
                boolean pushes = pull > 0;
                sum.pieces = 2 * sum.pieces + (pushes ? 1 : 0);
                double here = pushes ? load : 0;
                double slope = pushes ? loadByTravel : 0;
                sum.force += here;
                sum.forceByTravel += slope;
                sum.forceByRoll += sense * halfTrack * slope;
                sum.moment += sense * halfTrack * (here - restLoad[i]);
                sum.momentByTravel += sense * halfTrack * slope;
                sum.momentByRoll += halfTrack * halfTrack * slope;
            }
        }

        @Override
        double load(double travel, double roll, Side side) {
            at(side.index(), travel - side.sign() * halfTrack * roll);
            return load;
        }

        @Override
        double heaveRateAtRest() {
            at(0, 0);
            double left = loadByTravel;
            at(1, 0);
            return (left + loadByTravel) / 2;
        }

        @Override
        boolean pushes() {
            return springs;
        }

        @Override
        double pull(double travel, double roll, Side side) {
            at(side.index(), travel - side.sign() * halfTrack * roll);
            return pull;
        }

        @Override
        double pullByTravel() {
            return -rate * last.byTravel();
        }

        @Override
        CurvedForce side(Side side, double roll) {
            return new CurvedForce() {
                @Override
                void at(double travel) {
                    boolean pushes = pull(travel, roll, side) > 0;
                    force = pushes ? load : 0;
                    rate = pushes ? loadByTravel : 0;
                    energy = pushes ? stored(pull) : 0;
                }
            };
        }
    }

    private static final class OnAxle extends SpringsOnLinks {
        private final LiveAxleMotion.Reading axle;
        private final boolean springs;
        private final boolean binds;
        private final double[] lengthAtRest = new double[2];
        private final double[] forceAtRest = new double[2];
        private final double[] pressed = new double[2]; // by perches that were raised since, N
        private double momentAtRest;
        private double bindForceAtRest;
        private double pull;

        private OnAxle(LiveAxleMotion motion, double rate, double leftLoad, double rightLoad) {
            super(rate);
            axle = motion.reading();
            springs = motion.guidesSprings();
            binds = motion.made().binds();
            axle.at(0, 0);
            if (springs) {
                for (int i = 0; i < 2; i++) {
                    axle.read(LiveAxleMotion.LEFT_SPRING + i);
                    lengthAtRest[i] = axle.value();
                    forceAtRest[i] = (i == 0 ? leftLoad : rightLoad) / -axle.byTravel();
                    momentAtRest -= forceAtRest[i] * axle.byRoll();
                }
            }
            if (binds) {
                axle.read(LiveAxleMotion.BIND);
                bindForceAtRest = axle.byTravel();
                momentAtRest += axle.byRoll();
            }
        }

        @Override
        Optional<LiveAxleMotion.Reading> axle() {
            return Optional.of(axle);
        }

        @Override
        void raisePerches(double left, double right) {
            pressed[0] = rate * left;
            pressed[1] = rate * right;
        }

        private void read(int i) {
            axle.bend(LiveAxleMotion.LEFT_SPRING + i);
            pull = forceAtRest[i] + pressed[i] + rate * (lengthAtRest[i] - axle.value());
        }

        @Override
        void addTo(AxleSuspension sum, double travel, double roll) {
            axle.at(travel, roll);
            for (int i = 0; springs && i < 2; i++) {
                read(i);
                boolean pushes = pull > 0;
                sum.pieces = 2 * sum.pieces + (pushes ? 1 : 0);
                if (pushes) {
                    double byTravel = axle.byTravel();
                    double byRoll = axle.byRoll();
                    double across = rate * byTravel * byRoll - pull * axle.byTravelAndRoll();
                    sum.force -= pull * byTravel;
                    sum.forceByTravel += rate * byTravel * byTravel - pull * axle.byTravelTwice();
                    sum.forceByRoll += across;
                    sum.moment -= pull * byRoll;
                    sum.momentByTravel += across;
                    sum.momentByRoll += rate * byRoll * byRoll - pull * axle.byRollTwice();
                }
            }
            if (binds) {
                axle.bend(LiveAxleMotion.BIND);
                sum.force += axle.byTravel() - bindForceAtRest;
                sum.forceByTravel += axle.byTravelTwice();
                sum.forceByRoll += axle.byTravelAndRoll();
                sum.moment += axle.byRoll();
                sum.momentByTravel += axle.byTravelAndRoll();
                sum.momentByRoll += axle.byRollTwice();
            }
            sum.moment -= momentAtRest;
        }

        @Override
        double load(double travel, double roll, Side side) {
            axle.at(travel, roll);
            read(side.index());
            return -pull * axle.byTravel();
        }

        @Override
        double heaveRateAtRest() {
            axle.at(0, 0);
            double sum = 0;
            for (int i = 0; i < 2; i++) {
                read(i);
                sum += rate * axle.byTravel() * axle.byTravel() - pull * axle.byTravelTwice();
            }
            return sum / 2;
        }

        @Override
        boolean pushes() {
            return springs || binds;
        }

        @Override
        double pull(double travel, double roll, Side side) {
            if (!springs) {
                return Double.NEGATIVE_INFINITY;
            }
            axle.at(travel, roll);
            read(side.index());
            return pull;
        }

        @Override
        double pullByTravel() {
            return -rate * axle.byTravel();
        }

        @Override
        CurvedForce side(Side side, double roll) {
            return new CurvedForce() {
                @Override
                void at(double travel) {
                    boolean pushes = pull(travel, roll, side) > 0;
                    force = pushes ? -pull * axle.byTravel() : 0;
                    rate = pushes
                            ? OnAxle.this.rate * axle.byTravel() * axle.byTravel() - pull * axle.byTravelTwice()
                            : 0;
                    energy = pushes ? stored(pull) : 0;
                    if (binds) {
                        axle.at(travel, roll);
                        axle.bend(LiveAxleMotion.BIND);
                        force += (axle.byTravel() - bindForceAtRest) / 2;
                        rate += axle.byTravelTwice() / 2;
                        energy += (axle.value() - bindForceAtRest * travel) / 2;
                    }
                }
            };
        }
    }
}
