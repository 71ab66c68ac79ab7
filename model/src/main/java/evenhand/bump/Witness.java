package evenhand.bump;

import evenhand.bump.StepMotion.Watched;
import java.util.OptionalDouble;

/**
 * Sees every step of a {@link Crossing}: peaks, turning points within the step included, time off the ground, mean load
 * and grip, and the rows that are due. Allocates nothing but its rows.
 */
final class Witness {
    /** Gauss points of a step, in parts of it. */
    private static final double GAUSS = 0.5 - Math.sqrt(3) / 6;

    double peakBodyPull;
    double mostTravel;
    double leastTravel;
    double leastDeflection;
    double offGround;

    /** Load and side force are summed until somebody says that it is enough. */
    boolean countsGrip = true;

    private double gripTime;
    private double loadSum;
    private double gripSum;

    private final QuarterCarStep step;
    private final StepMotion motion;
    private final SideGrip grip;
    private final double wheelMore;
    private final double heldDeflection; // of the tyre in balance, m
    private final Series.Recorder rows;

    Witness(QuarterCarStep step, StepMotion motion, double finestRow) {
        this.step = step;
        this.motion = motion;
        grip = step.station.grip();
        wheelMore = step.station.wheelMore();
        heldDeflection = step.station.tyreHeld() / step.station.tyreRate();
        rows = new Series.Recorder(finestRow);
        mostTravel = step.station.travel();
        leastTravel = mostTravel;
        leastDeflection = step.deflection();
    }

    /** The very beginning, on the road of the event. */
    void start() {
        if (rows.due() <= step.time) {
            row(step.roadHeight, step.bodyPull, step.travel(), step.deflection());
        }
    }

    /** A step that will be kept. */
    void see() {
        travel();
        bodyPull();
        contact();
        if (countsGrip) {
            grip(GAUSS);
            grip(1 - GAUSS);
            gripTime += motion.length;
        }
        double end = step.time + motion.length;
        while (rows.due() <= end) {
            double part = (rows.due() - step.time) / motion.length;
            row(
                    step.roadHeight(part * motion.length),
                    motion.at(Watched.BODY_PULL, part),
                    motion.at(Watched.TRAVEL, part),
                    motion.at(Watched.DEFLECTION, part));
        }
    }

    private void row(double road, double bodyPull, double travel, double deflection) {
        rows.add(road, bodyPull, travel + wheelMore, step.tyreLoad(deflection), road + heldDeflection - deflection);
    }

    private void travel() {
        double start = step.travelRate();
        double end = step.nextTravelRate();
        mostTravel = Math.max(mostTravel, step.nextTravel());
        leastTravel = Math.min(leastTravel, step.nextTravel());
        if (StepMotion.turns(start, end)) {
            double there = motion.at(Watched.TRAVEL, motion.turningPoint(Watched.TRAVEL_RATE));
            mostTravel = Math.max(mostTravel, there);
            leastTravel = Math.min(leastTravel, there);
        }
    }

    private void bodyPull() {
        double start = step.bodyJerk(step.travel(), step.travelRate(), step.travelPull());
        double end = step.bodyJerk(step.nextTravel(), step.nextTravelRate(), step.nextTravelPull());
        double most = Math.max(Math.abs(step.bodyPull), Math.abs(step.nextBodyPull));
        peakBodyPull = Math.max(peakBodyPull, most);
        if (StepMotion.turns(start, end)) {
            double there = motion.at(Watched.BODY_PULL, motion.turningPoint(Watched.BODY_JERK));
            peakBodyPull = Math.max(peakBodyPull, Math.abs(there));
        }
    }

    private void contact() {
        if (!step.onGround) {
            offGround += motion.length;
            leastDeflection = Math.min(leastDeflection, 0);
            return;
        }
        double least = Math.min(step.deflection(), step.nextDeflection());
        leastDeflection = Math.min(leastDeflection, least);
        double start = step.deflectionRate();
        double end = step.nextDeflectionRate();
        if (start < 0 && end > 0) {
            double there = motion.at(Watched.DEFLECTION, motion.turningPoint(Watched.DEFLECTION_RATE));
            leastDeflection = Math.min(leastDeflection, there);
        }
    }

    private void grip(double part) {
        double load = step.tyreLoad(motion.at(Watched.DEFLECTION, part));
        loadSum += load * motion.length / 2;
        gripSum += grip.at(load) * motion.length / 2;
    }

    /** Part of the side force at the mean load that the mean side force lacks; none where there is no side force. */
    OptionalDouble gripLost() {
        double atMean = grip.at(loadSum / gripTime);
        double lost = 1 - gripSum / gripTime / atMean;
        return Double.isFinite(lost) ? OptionalDouble.of(lost) : OptionalDouble.empty();
    }

    /** How long load and side force were summed, s. */
    double gripTime() {
        return gripTime;
    }

    Series series() {
        return rows.series();
    }
}
