package evenhand.tyre;

import static evenhand.quantity.InvalidValue.require;

import java.util.OptionalDouble;

/**
 * One tyre of an axle, both being alike.
 *
 * @param loadedRadius height of the wheel's centre at rest, m
 * @param verticalRate vertical stiffness, N/m
 * @param lateral law of side force and aligning moment
 * @param longitudinalFrictionRatio greatest drive or brake force over greatest side force
 * @param longitudinalStiffness slope of drive force over slip ratio at the reference load, N; where absent, the
 *     cornering stiffness stands in
 * @param rollingRadius way of one turn over 2π, m; a belt rolls on as it is long, however flat it stands
 */
public record Tyre(
        double loadedRadius,
        double verticalRate,
        LateralLaw lateral,
        double longitudinalFrictionRatio,
        OptionalDouble longitudinalStiffness,
        double rollingRadius) {
    /** A tyre that rolls on as its wheel's centre is high. */
    public Tyre(
            double loadedRadius,
            double verticalRate,
            LateralLaw lateral,
            double longitudinalFrictionRatio,
            OptionalDouble longitudinalStiffness) {
        this(loadedRadius, verticalRate, lateral, longitudinalFrictionRatio, longitudinalStiffness, loadedRadius);
    }

    public Tyre {
        require(loadedRadius > 0, "loadedRadius", "must be above zero");
        require(verticalRate > 0, "verticalRate", "must be above zero");
        require(longitudinalFrictionRatio > 0, "longitudinalFrictionRatio", "must be above zero");
        require(longitudinalStiffness.orElse(1) > 0, "longitudinalStiffness", "must be above zero");
        require(rollingRadius > 0, "rollingRadius", "must be above zero");
    }

    /** This tyre with its wheel's centre {@code by} m lower, under a greater load. */
    public Tyre squashed(double by) {
        return new Tyre(
                loadedRadius - by,
                verticalRate,
                lateral,
                longitudinalFrictionRatio,
                longitudinalStiffness,
                rollingRadius);
    }
}
