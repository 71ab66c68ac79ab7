package evenhand.car.links;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.End;

/**
 * How the wheels of an axle stood when its points were measured, and how far the body has come down since.
 *
 * @param track between the contact points, m
 * @param offset how far a live axle's middle stood left of the car's, m
 * @param loadedRadius wheel centre to contact point along the wheel's plane, m
 * @param camber rad, top inwards negative
 * @param toe of each wheel, rad, in positive
 * @param cameDown how far the body was let down or sank on its springs since, m
 */
public record Stance(
        End end, double track, double offset, double loadedRadius, double camber, double toe, double cameDown) {
    public Stance {
        require(track > 0, "track", "must be above zero");
        require(Math.abs(offset) < track / 2, "offset", "must be less than half the track");
        require(loadedRadius > 0, "loadedRadius", "must be above zero");
        require(Math.abs(camber) < 0.5, "camber", "must be less than 28 deg");
        require(Math.abs(toe) < 0.5, "toe", "must be less than 28 deg");
        require(Math.abs(cameDown) < 0.5, "lowered", "must be less than half a metre");
    }

    /** The same with the body that far down. */
    public Stance down(double by) {
        return new Stance(end, track, offset, loadedRadius, camber, toe, by);
    }
}
