package evenhand.car.links;

/** A rod between the body and a live axle that is there once: the upper link of three. */
public record MiddleLink(MiddlePoint body, MiddlePoint axle, Rod rod) {
    public MiddleLink {
        rod.fits(body.distanceTo(axle), "axle");
    }
}
