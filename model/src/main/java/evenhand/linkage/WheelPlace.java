package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.Stance;

/**
 * A wheel as it stood when the points were measured.
 *
 * @param spin direction of its axle, outwards
 * @param centre W
 */
record WheelPlace(Side side, Place spin, Place centre) {
    /**
     * Spin axis and centre from camber γ and toe τ.
     *
     * <pre>  a = (cos γ·sin τ, σ·cos γ·cos τ, −sin γ),  e ∝ k − (k·a)·a,  W = C + r·e,  C = (0, offset + σ·t/2, 0) </pre>
     */
    static WheelPlace of(Stance stance, Side side) {
        double sigma = side.sign();
        double camber = stance.camber();
        double toe = stance.toe();
        Place spin = new Place(
                Math.cos(camber) * Math.sin(toe), sigma * Math.cos(camber) * Math.cos(toe), -Math.sin(camber));
        Place up = new Place(-spin.z() * spin.x(), -spin.z() * spin.y(), 1 - spin.z() * spin.z()).unit();
        Place contact = new Place(0, stance.offset() + sigma * stance.track() / 2, 0);
        return new WheelPlace(side, spin, contact.plus(stance.loadedRadius(), up));
    }
}
