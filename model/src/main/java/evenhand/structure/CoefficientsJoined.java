package evenhand.structure;

import evenhand.car.Axle;
import evenhand.car.Side;
import evenhand.car.mounts.PartEnd;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** An axle known by coefficients: one joint stands for all its links, so what comes of it is a hand sum. */
final class CoefficientsJoined {
    private CoefficientsJoined() {}

    /**
     * A live axle: the locator across the car at its height, and one joint in the middle of the wheel centres that pulls along the
     * car and holds against pitch and yaw.
     */
    static void live(Joining joining, Axle.Live axle, Vector3D middle, double rise) {
        joining.body(Joining.AXLE, middle);
        double height =
                axle.lateralLocator().height() + (1 + axle.lateralLocator().perBump()) * rise;
        joining.clamp(
                joining.member("lateralLocator"),
                "body",
                Joining.SHELL,
                "axle",
                Joining.AXLE,
                new Vector3D(middle.getX(), 0, height),
                List.of(Vector3D.PLUS_J),
                List.of());
        joining.clamp(
                joining.member("links"),
                "body",
                Joining.SHELL,
                "axle",
                Joining.AXLE,
                middle,
                List.of(Vector3D.PLUS_I),
                List.of(Vector3D.PLUS_J, Vector3D.PLUS_K));
    }

    /** A wheel of its own: one joint at its centre holds everything but the vertical force. */
    static void wheel(Joining joining, Side side, Vector3D centre) {
        joining.body(Joining.upright(side), centre);
        joining.clamp(
                joining.member(PartEnd.on(side, "links")),
                "body",
                Joining.SHELL,
                "upright",
                Joining.upright(side),
                centre,
                List.of(Vector3D.PLUS_I, Vector3D.PLUS_J),
                Joining.ALL_WAYS);
    }
}
