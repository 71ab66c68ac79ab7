package evenhand.structure;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Rigid bodies held by joints whose forces are unknown, and by known forces: the equilibrium of each body.
 *
 * <p>With as many unknowns as equations these decide. With more, of all forces N in equilibrium those hold that store the least
 * energy in what gives,
 *
 * <pre>  Σ (N − b)²·c → least,  A·N + f = 0 </pre>
 *
 * c the compliance of a joint (m/N; zero for what does not give, or whose travel is given), b the force that binding already holds
 * there, A·N + f force and moment left on each body: one symmetric system of N and of Lagrange's factors. Source: Castigliano's
 * theorem of least work, any textbook of structural analysis.
 */
final class FreeBodies {
    /** The car's body, whose equilibrium nobody asks for. */
    static final int SHELL = -1;

    private static final int EQUATIONS = 6;

    /** An unknown: it pushes one body by a unit wrench and the other by its opposite. */
    private record Unknown(
            int on, int from, Vector3D at, Vector3D force, Vector3D moment, double compliance, double bound) {}

    private final List<Unknown> unknowns = new ArrayList<>();
    private final List<Vector3D> references = new ArrayList<>(); // moments of a body are taken about its own place
    private final List<Vector3D> forces = new ArrayList<>(); // known ones on each body
    private final List<Vector3D> moments = new ArrayList<>();

    /** Adds a body; a place near its joints keeps the moments small. */
    int body(Vector3D reference) {
        references.add(reference);
        forces.add(Vector3D.ZERO);
        moments.add(Vector3D.ZERO);
        return references.size() - 1;
    }

    /**
     * Adds a force along a unit direction at a place, on one body and the other way on another.
     *
     * @return its number
     */
    int force(int on, int from, Vector3D at, Vector3D direction, double compliance, double bound) {
        unknowns.add(new Unknown(on, from, at, direction, Vector3D.ZERO, compliance, bound));
        return unknowns.size() - 1;
    }

    /** The same of a moment about a unit direction; compliance in rad/(N·m). */
    int moment(int on, int from, Vector3D about, double compliance) {
        unknowns.add(new Unknown(on, from, Vector3D.ZERO, Vector3D.ZERO, about, compliance, 0));
        return unknowns.size() - 1;
    }

    /** Adds a known force and moment on a body; on the shell it is nobody's concern. */
    void act(int on, Vector3D at, Vector3D force, Vector3D moment) {
        if (on == SHELL) {
            return;
        }
        forces.set(on, forces.get(on).add(force));
        Vector3D about = at.subtract(references.get(on)).crossProduct(force).add(moment);
        moments.set(on, moments.get(on).add(about));
    }

    /**
     * The unknown forces.
     *
     * @throws IllegalStateException where the bodies are not held: poses of links that stand always are
     */
    double[] solve() {
        int count = unknowns.size();
        int equations = EQUATIONS * references.size();
        double stiffest =
                unknowns.stream().mapToDouble(Unknown::compliance).max().orElse(0);
        double scale = stiffest > 0 ? 1 / stiffest : 1;
        RealMatrix system = new Array2DRowRealMatrix(count + equations, count + equations);
        RealVector known = new ArrayRealVector(count + equations);
        for (int k = 0; k < count; k++) {
            Unknown unknown = unknowns.get(k);
            system.setEntry(k, k, scale * unknown.compliance());
            known.setEntry(k, scale * unknown.compliance() * unknown.bound());
            push(system, k, unknown.on(), unknown, 1);
            push(system, k, unknown.from(), unknown, -1);
        }
        for (int body = 0; body < references.size(); body++) {
            int row = count + EQUATIONS * body;
            set(known, row, forces.get(body));
            set(known, row + 3, moments.get(body));
        }
        try {
            var solver = new LUDecomposition(system, SINGULAR).getSolver();
            RealVector solution = solver.solve(known);
            // once more for what rounding left, so that equilibrium closes to the last digits
            solution = solution.add(solver.solve(known.subtract(system.operate(solution))));
            return solution.getSubVector(0, count).toArray();
        } catch (SingularMatrixException e) {
            throw new IllegalStateException("the joints leave a body free", e);
        }
    }

    private static final double SINGULAR = 1e-13;

    private void push(RealMatrix system, int column, int body, Unknown unknown, double sign) {
        if (body == SHELL) {
            return;
        }
        int row = unknowns.size() + EQUATIONS * body;
        Vector3D moment = unknown.at()
                .subtract(references.get(body))
                .crossProduct(unknown.force())
                .add(unknown.moment());
        double[] parts = {
            unknown.force().getX(), unknown.force().getY(), unknown.force().getZ(),
            moment.getX(), moment.getY(), moment.getZ()
        };
        for (int i = 0; i < EQUATIONS; i++) {
            // added, since a member may hold a body twice
            system.addToEntry(row + i, column, -sign * parts[i]);
            system.addToEntry(column, row + i, -sign * parts[i]);
        }
    }

    private static void set(RealVector vector, int row, Vector3D part) {
        vector.setEntry(row, part.getX());
        vector.setEntry(row + 1, part.getY());
        vector.setEntry(row + 2, part.getZ());
    }
}
