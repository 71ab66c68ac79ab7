package evenhand.level;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.turn.Wheel;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The car standing still on level ground, its perches where they were turned to. Travels and rolls count from where it stood when
 * it was weighed.
 *
 * @param corners in the order of {@link Wheel}
 * @param frontRoll roll of the body over the front axle, rad, right side down positive
 * @param rearRoll the same over the rear axle
 */
public record Posture(List<Corner> corners, double frontRoll, double rearRoll) {
    /**
     * One corner.
     *
     * @param load of its tyre, N
     * @param rise how much further the body stands above its wheel's centre, m
     * @param springForce along its spring, N; below zero it is loose
     * @param coilMargin left between the coils, in sum, when metal meets in bump, m; below zero they bind first
     * @param bumpGap left to its bump stop, m; below zero it stands on it
     */
    public record Corner(
            double load, double rise, double springForce, OptionalDouble coilMargin, OptionalDouble bumpGap) {}

    public Posture {
        corners = List.copyOf(corners);
    }

    public Corner corner(Wheel wheel) {
        return corners.get(wheel.index());
    }

    /** Cross weight: the part of the weight that the left front and the right rear tyre carry. */
    public double crossWeight() {
        return (corner(Wheel.FRONT_LEFT).load() + corner(Wheel.REAR_RIGHT).load()) / weight();
    }

    /** Part of the weight that the left tyres carry; perches hardly move it. */
    public double leftFraction() {
        return (corner(Wheel.FRONT_LEFT).load() + corner(Wheel.REAR_LEFT).load()) / weight();
    }

    /** Mean rise of an axle's two corners, m. */
    public double rise(End end) {
        return (corner(Wheel.of(end, Side.LEFT)).rise()
                        + corner(Wheel.of(end, Side.RIGHT)).rise())
                / 2;
    }

    private double weight() {
        return corners.stream().mapToDouble(Corner::load).sum();
    }
}
