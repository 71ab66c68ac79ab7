package evenhand.car.links;

/** A rod of a pair between the body and a live axle: a lower or an upper link of one side. */
public record Link(Point body, Point axle, Rod rod) {
    public Link {
        rod.fits(body.distanceTo(axle), "axle");
    }
}
