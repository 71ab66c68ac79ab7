package evenhand.suspension;

import evenhand.car.Curve;

/**
 * A measured curve as arithmetic wants it: straight lines through its points, the last slope going on. Piece p, 1 to
 * {@link #count}, ends at point p.
 *
 * <pre>  F(x) = F_(p−1) + slope_p·(x − x_(p−1)),  slope_p = (F_p − F_(p−1))/(x_p − x_(p−1))  </pre>
 */
public final class PointLines {
    private final double[] places;
    private final double[] forces;
    private final double[] slopes;

    public PointLines(Curve curve) {
        places = curve.points().stream().mapToDouble(Curve.Point::at).toArray();
        forces = curve.points().stream().mapToDouble(Curve.Point::force).toArray();
        slopes = new double[places.length];
        for (int p = 1; p < places.length; p++) {
            slopes[p] = (forces[p] - forces[p - 1]) / (places[p] - places[p - 1]);
        }
    }

    /** How many straight pieces there are. */
    int count() {
        return places.length - 1;
    }

    /** Where piece p ends; 0: where the first begins. */
    double end(int piece) {
        return places[piece];
    }

    /** The piece on which a place above zero lies. */
    int pieceAt(double place) {
        int p = 1;
        while (p < count() && place > places[p]) {
            p++;
        }
        return p;
    }

    double slope(int piece) {
        return slopes[piece];
    }

    double force(int piece, double place) {
        return forces[piece - 1] + slopes[piece] * (place - places[piece - 1]);
    }

    /** Force at a place above zero; nothing at or below. */
    public double force(double place) {
        return place > 0 ? force(pieceAt(place), place) : 0;
    }
}
