package evenhand.linkage;

import evenhand.car.Side;
import evenhand.car.links.Rod;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A link with a joint at either end: its slopes at rest, and by how much it leaves the planes square to its bolts. A bolt is
 * level and square to the link at rest; of a tie rod it stands upright, of an upright link it lies across, both made square
 * to the link. One end's bolt stays with the body, the other's goes with the moving part.
 */
final class JointedLink {
    /** Reads where both ends are. */
    interface Ends {
        void read(double[] body, double[] moving);
    }

    /** Which way the bolts of a link lie. */
    enum Bolts {
        LEVEL,
        UPRIGHT
    }

    final String name;
    final Rod rod;
    private final double length;
    private final LinkSlopes slopes;
    private final Optional<Side> side;
    private final Ends ends;
    private final Part part;
    private final Place bodyBolt;
    private final Place movingBolt; // as it would have lain when the points were measured
    private final double[] body = new double[3];
    private final double[] moving = new double[3];
    double bodyAngle;
    double movingAngle;
    double greatestBodyAngle;
    double greatestMovingAngle;

    /** Made with the axle at rest. */
    JointedLink(String name, Optional<Side> side, Rod rod, Bolts bolts, Ends ends, Part part) {
        this.name = name;
        this.rod = rod;
        this.side = side;
        this.ends = ends;
        this.part = part;
        ends.read(body, moving);
        Place line = new Place(moving[0] - body[0], moving[1] - body[1], moving[2] - body[2]);
        length = line.length();
        slopes = LinkSlopes.of(line, side);
        Place along = line.unit();
        Place bolt;
        if (bolts == Bolts.UPRIGHT) {
            bolt = squareTo(along, new Place(0, 0, 1));
        } else if (slopes instanceof LinkSlopes.Upright) {
            bolt = squareTo(along, new Place(0, 1, 0));
        } else {
            bolt = new Place(0, 0, 1).cross(along).unit();
        }
        bodyBolt = bolt;
        double[] turn = part.turn;
        movingBolt = new Place(
                turn[0] * bolt.x() + turn[3] * bolt.y() + turn[6] * bolt.z(),
                turn[1] * bolt.x() + turn[4] * bolt.y() + turn[7] * bolt.z(),
                turn[2] * bolt.x() + turn[5] * bolt.y() + turn[8] * bolt.z());
    }

    private static Place squareTo(Place along, Place direction) {
        return direction.plus(-direction.dot(along), along).unit();
    }

    /** Sets the angles of both joints in the present pose. */
    void read() {
        ends.read(body, moving);
        double dx = moving[0] - body[0];
        double dy = moving[1] - body[1];
        double dz = moving[2] - body[2];
        bodyAngle = Angles.square(dx, dy, dz, bodyBolt.x(), bodyBolt.y(), bodyBolt.z());
        Place b = movingBolt;
        movingAngle = Angles.square(
                dx,
                dy,
                dz,
                part.turnedX(b.x(), b.y(), b.z()),
                part.turnedY(b.x(), b.y(), b.z()),
                part.turnedZ(b.x(), b.y(), b.z()));
    }

    /** How it lies in the present pose. */
    LinkSlopes presentSlopes() {
        ends.read(body, moving);
        return LinkSlopes.of(new Place(moving[0] - body[0], moving[1] - body[1], moving[2] - body[2]), side);
    }

    /** Reads the joints and keeps the greatest angles. */
    void look() {
        read();
        greatestBodyAngle = Math.max(greatestBodyAngle, bodyAngle);
        greatestMovingAngle = Math.max(greatestMovingAngle, movingAngle);
    }

    LinkAnswer answer() {
        return new LinkAnswer(
                name,
                length,
                slopes,
                greatestBodyAngle,
                greatestMovingAngle,
                rod.perTurn().isPresent()
                        ? OptionalDouble.of(rod.longer() / rod.perTurn().getAsDouble())
                        : OptionalDouble.empty());
    }
}
