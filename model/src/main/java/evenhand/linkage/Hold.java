package evenhand.linkage;

import evenhand.car.links.Stance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * How well links hold a live axle besides heave and roll.
 *
 * <p>Four coordinates say how the axle moves: its middle sideways and fore and aft, its turn about the axle's line times the
 * loaded radius, its turn in plan times half the track, all in m. What answers to a rod's one millimetre by more than
 * {@link #NOT_HELD} is not held at all; by more than {@link #HARDLY}, it hardly is.
 *
 * @param worst greatest of these coordinates per length of any rod
 * @param where the coordinate that it is
 */
public record Hold(double worst, Freedom where) {
    static final double NOT_HELD = 100;
    static final double HARDLY = 5;

    /** Singular values below this share of the largest are none. */
    private static final double RANK = 1e-9;

    /** Whether the axle is held, but hardly. */
    public boolean hardly() {
        return worst > HARDLY;
    }

    boolean holds() {
        return worst <= NOT_HELD;
    }

    /** Answer of the pose as measured to its rods, one after the other. */
    static Hold of(LiveAxlePose pose, Stance stance) {
        double[] moves = new double[4];
        double worst = 0;
        Freedom where = Freedom.SIDEWAYS;
        for (int row = pose.firstHeld(); row < pose.heldEnd(); row++) {
            pose.answerTo(row, moves);
            for (Freedom freedom : Freedom.values()) {
                double move = Math.abs(moves[freedom.ordinal()]) * scale(freedom, stance);
                if (!(move <= worst)) {
                    worst = Double.isNaN(move) ? Double.POSITIVE_INFINITY : move;
                    where = freedom;
                }
            }
        }
        return new Hold(worst, where);
    }

    private static double scale(Freedom freedom, Stance stance) {
        return switch (freedom) {
            case SIDEWAYS, FORE_AND_AFT -> 1;
            case PITCH -> stance.loadedRadius();
            case YAW -> stance.track() / 2;
        };
    }

    /**
     * What is free under these constraints: from the space of motions that leave all of them alone, as many coordinates as
     * it has dimensions, those with the largest share in it. Empty where nothing is.
     *
     * @param pitchIsSprung whether leaves hold the pitch, which then is free of constraints and yet held
     */
    static List<Freedom> free(double[][] slopes, boolean pitchIsSprung, Stance stance) {
        int unknowns = slopes[0].length;
        int rows = Math.max(slopes.length, unknowns);
        double[][] square = new double[rows][unknowns];
        double radius = stance.loadedRadius();
        double half = stance.track() / 2;
        for (int row = 0; row < slopes.length; row++) {
            for (int u = 0; u < unknowns; u++) {
                double unit = u == 4 ? 1 / radius : u == 5 || u == 3 ? 1 / half : u > 5 ? 1 / radius : 1;
                square[row][u] = slopes[row][u] * unit;
            }
        }
        SingularValueDecomposition svd = new SingularValueDecomposition(new Array2DRowRealMatrix(square, false));
        double[] values = svd.getSingularValues();
        List<double[]> space = new ArrayList<>();
        for (int s = 0; s < values.length; s++) {
            if (values[s] <= RANK * values[0]) {
                space.add(svd.getV().getColumn(s));
            }
        }
        int[] place = {1, 0, 4, 5}; // of the freedoms among the unknowns
        List<Freedom> free = new ArrayList<>();
        int count = space.size() - (pitchIsSprung ? 1 : 0);
        for (int found = 0; found < count; found++) {
            Optional<Freedom> largest = Optional.empty();
            double most = -1;
            for (Freedom freedom : Freedom.values()) {
                double share = 0;
                for (double[] motion : space) {
                    double part = motion[place[freedom.ordinal()]];
                    share += part * part;
                }
                boolean counts = !free.contains(freedom) && !(pitchIsSprung && freedom == Freedom.PITCH);
                if (counts && share > most) {
                    most = share;
                    largest = Optional.of(freedom);
                }
            }
            largest.ifPresent(free::add);
        }
        return free;
    }
}
