package evenhand.linkage;

import evenhand.car.LateralLocator.CarriedBy;
import evenhand.car.Side;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Leaf;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddleLink;
import evenhand.car.links.Rod;
import evenhand.car.links.TorqueArm;
import evenhand.linear.LinearSolve;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The pose of a live axle under its links, its two wheel centres held at given heights.
 *
 * <p>Unknown are the six of a rigid body, the turn of a Watt's crank, and for leaves the side-view angle of each half.
 * Each link gives a constraint: by how much it is longer than it was made. Where there are as many constraints as unknowns,
 * Newton's method solves them. Where there are more, or where leaves decide the pitch, a constraint may give: it has a
 * compliance C, its force λ is unknown too, and the pose is that of least energy Σ ½·λ²·C,
 * <pre>  Σ λ_i·∂c_i/∂q = 0,   c_i − C_i·λ_i = 0 </pre>
 * with C = 0 for what is rigid. What gives is put into the rows of q, so that its forces are no unknowns of the elimination:
 * dλ = (∂c·dq + c − C·λ)/C. Slopes are exact: turns are exponentials of rotation vectors, so that second derivatives of
 * a point are {@code ω × (ω × r)}. The same matrix, at the solution, gives the twists of heave and roll.
 *
 * <p>A pose is found from its neighbour: in steps of at most {@link #STEP}, starting from the tangent; a step that turns
 * anything by more than {@link #LARGEST_TURN}, or that changes the determinant's sign, is refused, for it would lead to another
 * assembly of the same links. Nothing is allocated per pose. One per thread.
 */
final class LiveAxlePose {
    /** Rise of both wheels by one, and of the left one by one with the right one going down by one. */
    static final int HEAVE = 0;

    static final int ROLL = 1;

    /** Longest way of a wheel, or of a link's length, to the next pose, m. */
    static final double STEP = 8e-3;

    /** Shortest, where longer ones fail, m. */
    private static final double SHORTEST_STEP = STEP / 32;

    /** Largest turn of anything in one step of Newton's method, rad. */
    static final double LARGEST_TURN = 0.3;

    /** Largest error of a constraint, m: well below 1e-12 m, well above rounding at lengths of some metres. */
    static final double TOLERANCE = 2e-13;

    static final int MOST_STEPS = 20;

    private static final int BODY = 6;
    private static final int HEIGHTS = 2;

    final LinkedLiveAxle given;
    final Part axle;
    final List<AxleRod> rods;
    private final WheelPlace left;
    private final WheelPlace right;

    private final int unknowns;
    private final int constraints;
    private final int firstGiving; // rows with a compliance: these and those up to the end
    private final int endGiving;
    private final int size; // of the elimination
    private final int all; // unknowns and, where anything gives, forces
    private final boolean elastic;
    private final boolean overConstrained;
    private final double unitRate; // N/m for one unit of λ

    private final double[] slopes; // constraints × unknowns
    private final double[] errors; // of the constraints
    private final double[] compliance;
    private final double[] curvature; // unknowns × unknowns: Σ λ·∂²c
    private final LinearSolve elimination;
    private final double[] rightSide; // of the elimination
    private final double[] gaps; // c − C·λ of what gives
    private final double[] step;
    private final double[] tangents; // of heave, of roll
    private final double[] scratch;
    private final double[] forces; // λ

    // rods
    private final int firstRod = HEIGHTS;
    private final double[] rodLengths;
    private final double[] rodLonger;

    // crank
    private final int crankAt;
    private final Place pivot;
    private double crank;

    // ideal locator
    private final int locatorAt;
    private final double locatorRise; // height less the middle's, as measured
    private final double perBump;

    // leaves
    private final int leavesAt; // first of their constraints, −1 without
    private final int leafAngleAt; // first of their unknowns
    private final Place[] hinges = new Place[4]; // left front, left rear, right front, right rear
    private final Place[] eyes = new Place[4]; // front eye, shackle pivot
    private final double[] halves = new double[4];
    private final double[] shackles = new double[4];
    private final double[] measuredAngles = new double[4];
    private final double[] leafAngles = new double[4];

    // place
    private double leftHeight; // rise over what was measured, m
    private double rightHeight;
    private double madeLonger; // share of "longer" that is carried out

    private int signAtRest;
    private final double[] kept;
    private final double[] keptAtRest;
    private final double[] origin; // of a move
    private double restRise;

    LiveAxlePose(LinkedLiveAxle given) {
        this.given = given;
        left = WheelPlace.of(given.stance(), Side.LEFT);
        right = WheelPlace.of(given.stance(), Side.RIGHT);
        Place middle = left.centre().plus(1, right.centre());
        axle = new Part(middle.x() / 2, middle.y() / 2, middle.z() / 2);
        rods = rodsOf(given);

        AxleLinks links = given.links();
        Optional<Locator> locator = given.locator();
        boolean leaves = links.leaf().isPresent();
        overConstrained = !leaves && links.count() + (locator.isPresent() ? 1 : 0) > 4;
        elastic = leaves || overConstrained;
        boolean watt = locator.filter(Locator.WattPoints.class::isInstance).isPresent();
        boolean ideal = locator.filter(Locator.Ideal.class::isInstance).isPresent();

        crankAt = watt ? BODY : -1;
        leafAngleAt = BODY + (watt ? 1 : 0);
        unknowns = leafAngleAt + (leaves ? 4 : 0);
        locatorAt = ideal ? firstRod + rods.size() : -1;
        leavesAt = leaves ? firstRod + rods.size() + (ideal ? 1 : 0) : -1;
        constraints = firstRod + rods.size() + (ideal ? 1 : 0) + (leaves ? 10 : 0);
        firstGiving = overConstrained ? firstRod : leaves ? leavesAt + 6 : constraints;
        endGiving = overConstrained ? firstRod + rods.size() : constraints;
        size = elastic ? unknowns + constraints - (endGiving - firstGiving) : Math.max(unknowns, constraints);
        all = elastic ? unknowns + constraints : size;

        slopes = new double[constraints * unknowns];
        errors = new double[constraints];
        compliance = new double[constraints];
        curvature = new double[unknowns * unknowns];
        elimination = new LinearSolve(size);
        rightSide = new double[size];
        gaps = new double[constraints];
        step = new double[all];
        tangents = new double[2 * all];
        scratch = new double[4 * unknowns];
        forces = new double[constraints];
        rodLengths = new double[rods.size()];
        rodLonger = new double[rods.size()];
        double rates = 0;
        for (AxleRod rod : rods) {
            rates += rod.rod().rate();
        }
        unitRate = rods.isEmpty() ? 1 : rates / rods.size();
        for (int r = 0; r < rods.size(); r++) {
            AxleRod rod = rods.get(r);
            rodLengths[r] = rod.measured();
            rodLonger[r] = rod.rod().longer();
            compliance[firstRod + r] = overConstrained ? unitRate / rod.rod().rate() : 0;
        }

        if (locator.isPresent() && locator.get() instanceof Locator.WattPoints w) {
            pivot = Place.of(w.pivot());
        } else {
            pivot = new Place(0, 0, 0);
        }
        if (locator.isPresent() && locator.get() instanceof Locator.Ideal i) {
            locatorRise = i.height() - axle.measuredZ;
            perBump = i.perBump();
        } else {
            locatorRise = 0;
            perBump = 0;
        }
        if (leaves) {
            leavesOf(given);
        }
        kept = new double[poseSize()];
        keptAtRest = new double[poseSize()];
        origin = new double[poseSize()];
    }

    private static List<AxleRod> rodsOf(LinkedLiveAxle given) {
        List<AxleRod> rods = new ArrayList<>();
        AxleLinks links = given.links();
        for (Side side : Side.values()) {
            links.lowerLink().ifPresent(pair -> rods.add(rod("lowerLink", side, pair.of(side))));
        }
        for (Side side : Side.values()) {
            links.upperLink().ifPresent(pair -> rods.add(rod("upperLink", side, pair.of(side))));
        }
        if (links.middleLink().isPresent()) {
            MiddleLink link = links.middleLink().get();
            rods.add(single("middleLink", Place.of(link.body()), Place.of(link.axle()), link.rod()));
        }
        if (links.torqueArm().isPresent()) {
            TorqueArm arm = links.torqueArm().get();
            rods.add(single("dropLink", Place.of(arm.hanger()), Place.of(arm.end()), arm.dropLink()));
        }
        if (given.locator().isPresent()) {
            Locator locator = given.locator().get();
            if (locator instanceof Locator.PanhardPoints p) {
                rods.add(single("panhardRod", Place.of(p.body()), Place.of(p.axle()), p.rod()));
            } else if (locator instanceof Locator.WattPoints w) {
                rods.add(wattRod("upperRod", Place.of(w.upperPin()), w.upperRod(), w.carriedBy()));
                rods.add(wattRod("lowerRod", Place.of(w.lowerPin()), w.lowerRod(), w.carriedBy()));
            }
        }
        return List.copyOf(rods);
    }

    private static AxleRod rod(String name, Side side, Link link) {
        return new AxleRod(
                name + (side == Side.LEFT ? "Left" : "Right"),
                Optional.of(side),
                Place.of(link.body(), side),
                Place.of(link.axle(), side),
                link.rod(),
                AxleRod.Crank.NONE);
    }

    private static AxleRod single(String name, Place body, Place axle, Rod rod) {
        return new AxleRod(name, Optional.empty(), body, axle, rod, AxleRod.Crank.NONE);
    }

    private static AxleRod wattRod(String name, Place pin, Locator.WattRod rod, CarriedBy carriedBy) {
        Place end = Place.of(rod.end());
        return carriedBy == CarriedBy.BODY
                ? new AxleRod(name, Optional.empty(), pin, end, rod.rod(), AxleRod.Crank.ON_BODY)
                : new AxleRod(name, Optional.empty(), end, pin, rod.rod(), AxleRod.Crank.ON_AXLE);
    }

    /**
     * Leaves as three links: each half a side-view link of ¾ of the distance d from seat to eye, hinged to the axle at ¼ of
     * the line between them. A hinge resists with a stiffness in proportion to 1/d. Angles count from where they were measured,
     * against the side-view angle of the axle's direction that was the x axis.
     *
     * <p>Source: three-link equivalent of the SAE spring design manual HS-788 (¾ of the half).
     */
    private void leavesOf(LinkedLiveAxle axleGiven) {
        for (Side side : Side.values()) {
            Leaf leaf = axleGiven.links().leaf().orElseThrow().of(side);
            Place seat = Place.of(leaf.seat(), side);
            for (int end = 0; end < 2; end++) {
                int half = 2 * side.index() + end;
                Place eye = Place.of(end == 0 ? leaf.frontEye() : leaf.rearEye(), side);
                Place shackle = Place.of(leaf.shackle(), side);
                double distance = Math.hypot(eye.x() - seat.x(), eye.z() - seat.z());
                hinges[half] = seat.plus(0.25, eye.minus(seat));
                eyes[half] = end == 0 ? eye : shackle;
                halves[half] = 0.75 * distance;
                shackles[half] = end == 0 ? 0 : Math.hypot(eye.x() - shackle.x(), eye.z() - shackle.z());
                measuredAngles[half] = Math.atan2(eye.z() - seat.z(), eye.x() - seat.x());
                leafAngles[half] = measuredAngles[half];
                compliance[leavesAt + 6 + half] = distance;
            }
        }
    }

    // ---------------------------------------------------------------- constraints

    /** Errors, slopes and curvatures of all constraints at the present pose, in one pass so that they cannot drift apart. */
    private void constrain() {
        Arrays.fill(slopes, 0);
        if (elastic) {
            Arrays.fill(curvature, 0);
        }
        height(0, left.centre(), leftHeight);
        height(1, right.centre(), rightHeight);
        for (int r = 0; r < rodLengths.length; r++) {
            rod(r);
        }
        if (locatorAt >= 0) {
            idealLocator();
        }
        if (leavesAt >= 0) {
            for (int side = 0; side < 2; side++) {
                frontHalf(leavesAt + 3 * side, 2 * side);
                rearHalf(leavesAt + 3 * side + 2, 2 * side + 1);
            }
            for (int half = 0; half < 4; half++) {
                hinge(leavesAt + 6 + half, half);
            }
        }
    }

    /** A wheel centre W stands so much higher than it was measured: z_W − z_W0 − rise = 0. */
    private void height(int row, Place centre, double rise) {
        double rx = turnedArmX(centre);
        double ry = turnedArmY(centre);
        double rz = turnedArmZ(centre);
        int at = row * unknowns;
        slopes[at + 2] = 1;
        slopes[at + 3] = ry;
        slopes[at + 4] = -rx;
        errors[row] = axle.z + rz - centre.z() - rise;
        if (elastic) {
            bend(forces[row], 0, 0, 1, rx, ry, rz);
        }
    }

    /** A rod of length l between B on the body and A on the axle: |A − B| − l = 0; either end may be a crank's pin. */
    private void rod(int r) {
        AxleRod rod = rods.get(r);
        Place body = rod.body();
        Place end = rod.axle();
        int row = firstRod + r;
        int at = row * unknowns;
        double bx = body.x();
        double by = body.y();
        double bz = body.z();
        double rx;
        double ry;
        double rz;
        double tx = 0; // velocity of A − B per turn of the crank
        double ty = 0;
        double tz = 0;
        double qx = 0; // its own change per turn
        double qy = 0;
        double qz = 0;
        switch (rod.crank()) {
            case ON_BODY -> {
                double y = by - pivot.y();
                double z = bz - pivot.z();
                double cosine = Math.cos(crank);
                double sine = Math.sin(crank);
                double py = cosine * y - sine * z; // top to the right: y falls as z turns over
                double pz = sine * y + cosine * z;
                by = pivot.y() + py;
                bz = pivot.z() + pz;
                ty = pz;
                tz = -py;
                qy = py;
                qz = pz;
                rx = turnedArmX(end);
                ry = turnedArmY(end);
                rz = turnedArmZ(end);
            }
            case ON_AXLE -> {
                double y = end.y() - pivot.y();
                double z = end.z() - pivot.z();
                double cosine = Math.cos(crank);
                double sine = Math.sin(crank);
                double py = cosine * y - sine * z;
                double pz = sine * y + cosine * z;
                double x = end.x() - axle.measuredX;
                double ax = x;
                double ay = pivot.y() + py - axle.measuredY;
                double az = pivot.z() + pz - axle.measuredZ;
                rx = axle.turnedX(ax, ay, az);
                ry = axle.turnedY(ax, ay, az);
                rz = axle.turnedZ(ax, ay, az);
                tx = axle.turnedX(0, -pz, py);
                ty = axle.turnedY(0, -pz, py);
                tz = axle.turnedZ(0, -pz, py);
                qx = axle.turnedX(0, -py, -pz);
                qy = axle.turnedY(0, -py, -pz);
                qz = axle.turnedZ(0, -py, -pz);
            }
            default -> {
                rx = turnedArmX(end);
                ry = turnedArmY(end);
                rz = turnedArmZ(end);
            }
        }
        double dx = axle.x + rx - bx;
        double dy = axle.y + ry - by;
        double dz = axle.z + rz - bz;
        double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
        double nx = dx / length;
        double ny = dy / length;
        double nz = dz / length;
        slopes[at] = nx;
        slopes[at + 1] = ny;
        slopes[at + 2] = nz;
        slopes[at + 3] = ry * nz - rz * ny;
        slopes[at + 4] = rz * nx - rx * nz;
        slopes[at + 5] = rx * ny - ry * nx;
        boolean turns = rod.crank() != AxleRod.Crank.NONE;
        if (turns) {
            slopes[at + crankAt] = nx * tx + ny * ty + nz * tz;
        }
        errors[row] = length - rodLengths[r] - madeLonger * rodLonger[r];
        if (!elastic || forces[row] == 0) {
            return;
        }
        double force = forces[row];
        bend(force, nx, ny, nz, rx, ry, rz);
        swing(force / length, rx, ry, rz);
        if (turns) {
            double weight = force / length;
            cross(0, crankAt, weight * tx);
            cross(1, crankAt, weight * ty);
            cross(2, crankAt, weight * tz);
            cross(3, crankAt, weight * (ry * tz - rz * ty));
            cross(4, crankAt, weight * (rz * tx - rx * tz));
            cross(5, crankAt, weight * (rx * ty - ry * tx));
            add(crankAt, crankAt, weight * (tx * tx + ty * ty + tz * tz));
        }
        outer(-force / length, slopes, at);
        if (turns) {
            curvature[crankAt * unknowns + crankAt] += force * (nx * qx + ny * qy + nz * qz);
            if (rod.crank() == AxleRod.Crank.ON_AXLE) {
                cross(3, crankAt, force * (ty * nz - tz * ny));
                cross(4, crankAt, force * (tz * nx - tx * nz));
                cross(5, crankAt, force * (tx * ny - ty * nx));
            }
        }
    }

    /**
     * The axle's own middle plane crosses the body's at a height that is known:
     * <pre>  y_m − offset + (e_y/e_z)·(z − z_m) = 0,   z = height + (1 + perBump)·(z_m − z_m0) </pre>
     * m middle of the wheel centres, e the axle's upright direction.
     */
    private void idealLocator() {
        double ex = axle.turn[2];
        double ey = axle.turn[5];
        double ez = axle.turn[8];
        double lean = ey / ez;
        double above = locatorRise + perBump * (axle.z - axle.measuredZ);
        // first changes of e_y and e_z with the turn, as rows over ω
        double yx = -ez;
        double yz = ex;
        double zx = ey;
        double zy = -ex;
        double gx = (yx - lean * zx) / ez;
        double gy = -lean * zy / ez;
        double gz = yz / ez;
        int at = locatorAt * unknowns;
        slopes[at + 1] = 1;
        slopes[at + 2] = lean * perBump;
        slopes[at + 3] = above * gx;
        slopes[at + 4] = above * gy;
        slopes[at + 5] = above * gz;
        errors[locatorAt] = axle.y - given.stance().offset() + lean * above;
        if (!elastic) {
            return;
        }
        double force = forces[locatorAt];
        cross(2, 3, force * perBump * gx);
        cross(2, 4, force * perBump * gy);
        cross(2, 5, force * perBump * gz);
        // lean has the second part (e2_y − lean·e2_z)/e_z − (e1_z)(g·ω)/e_z
        double weight = force * above / ez;
        bend(weight, 0, 1, -lean, ex, ey, ez);
        add(3, 3, -weight * 2 * zx * gx);
        cross(3, 4, -weight * (zx * gy + zy * gx));
        cross(3, 5, -weight * zx * gz);
        add(4, 4, -weight * 2 * zy * gy);
        cross(4, 5, -weight * zy * gz);
    }

    /** The front half of a leaf reaches from its hinge to its eye, in side view: two constraints, one of them for its angle. */
    private void frontHalf(int row, int half) {
        Place hinge = hinges[half];
        double rx = turnedArmX(hinge);
        double ry = turnedArmY(hinge);
        double rz = turnedArmZ(hinge);
        double cx = halves[half] * Math.cos(leafAngles[half]);
        double cz = halves[half] * Math.sin(leafAngles[half]);
        pointRows(rx, ry, rz);
        int at = row * unknowns;
        System.arraycopy(scratch, 0, slopes, at, unknowns);
        System.arraycopy(scratch, 2 * unknowns, slopes, at + unknowns, unknowns);
        slopes[at + leafAngleAt + half] = -cz;
        slopes[at + unknowns + leafAngleAt + half] = cx;
        errors[row] = axle.x + rx + cx - eyes[half].x();
        errors[row + 1] = axle.z + rz + cz - eyes[half].z();
        bend(forces[row], 1, 0, 0, rx, ry, rz);
        bend(forces[row + 1], 0, 0, 1, rx, ry, rz);
        add(leafAngleAt + half, leafAngleAt + half, -forces[row] * cx - forces[row + 1] * cz);
    }

    /** The rear half's end hangs on the shackle, in side view: |H + ¾d·(cos β, sin β) − S| − shackle = 0. */
    private void rearHalf(int row, int half) {
        Place hinge = hinges[half];
        double rx = turnedArmX(hinge);
        double ry = turnedArmY(hinge);
        double rz = turnedArmZ(hinge);
        double cx = halves[half] * Math.cos(leafAngles[half]);
        double cz = halves[half] * Math.sin(leafAngles[half]);
        double dx = axle.x + rx + cx - eyes[half].x();
        double dz = axle.z + rz + cz - eyes[half].z();
        double length = Math.sqrt(dx * dx + dz * dz);
        double nx = dx / length;
        double nz = dz / length;
        pointRows(rx, ry, rz);
        int angle = leafAngleAt + half;
        scratch[angle] = -cz;
        scratch[2 * unknowns + angle] = cx;
        int at = row * unknowns;
        for (int u = 0; u < unknowns; u++) {
            slopes[at + u] = nx * scratch[u] + nz * scratch[2 * unknowns + u];
        }
        errors[row] = length - shackles[half];
        double force = forces[row];
        bend(force, nx, 0, nz, rx, ry, rz);
        add(angle, angle, -force * (nx * cx + nz * cz));
        outer(force / length, scratch, 0);
        outer(force / length, scratch, 2 * unknowns);
        outer(-force / length, slopes, at);
    }

    /** A leaf's half has turned against the axle, in side view, by as much as its hinge's moment bends it. */
    private void hinge(int row, int half) {
        double fx = axle.turn[0];
        double fy = axle.turn[3];
        double fz = axle.turn[6];
        double flat = Math.sqrt(fx * fx + fz * fz);
        double nx = fx / flat;
        double nz = fz / flat;
        // rows over ω of the tangential and radial change of the direction, per its length in side view
        double tangentX = nx * fy / flat;
        double tangentY = (-nz * fz - nx * fx) / flat;
        double tangentZ = nz * fy / flat;
        double radialX = nz * fy / flat;
        double radialY = (nx * fz - nz * fx) / flat;
        double radialZ = -nx * fy / flat;
        int at = row * unknowns;
        slopes[at + 3] = -tangentX;
        slopes[at + 4] = -tangentY;
        slopes[at + 5] = -tangentZ;
        slopes[at + leafAngleAt + half] = 1;
        errors[row] = Angles.wrapped(leafAngles[half] - Math.atan2(fz, fx) - measuredAngles[half]);
        double moment = forces[row];
        bend(-moment / flat, -nz, 0, nx, fx, fy, fz);
        add(3, 3, moment * 2 * radialX * tangentX);
        add(4, 4, moment * 2 * radialY * tangentY);
        add(5, 5, moment * 2 * radialZ * tangentZ);
        cross(3, 4, moment * (radialX * tangentY + radialY * tangentX));
        cross(3, 5, moment * (radialX * tangentZ + radialZ * tangentX));
        cross(4, 5, moment * (radialY * tangentZ + radialZ * tangentY));
    }

    /** Rows of a point's velocity over the unknowns, into the scratch: v + ω × r. */
    private void pointRows(double rx, double ry, double rz) {
        Arrays.fill(scratch, 0, 3 * unknowns, 0);
        scratch[0] = 1;
        scratch[4] = rz;
        scratch[5] = -ry;
        scratch[unknowns + 1] = 1;
        scratch[unknowns + 3] = -rz;
        scratch[unknowns + 5] = rx;
        scratch[2 * unknowns + 2] = 1;
        scratch[2 * unknowns + 3] = ry;
        scratch[2 * unknowns + 4] = -rx;
    }

    /**
     * Adds the second derivative of n·(p + exp(ω)·r) over ω.
     *
     * <pre>  ½·(n·rᵀ + r·nᵀ) − (n·r)·1 </pre>
     */
    private void bend(double weight, double nx, double ny, double nz, double rx, double ry, double rz) {
        if (weight == 0) {
            return;
        }
        double dot = nx * rx + ny * ry + nz * rz;
        add(3, 3, weight * (nx * rx - dot));
        add(4, 4, weight * (ny * ry - dot));
        add(5, 5, weight * (nz * rz - dot));
        cross(3, 4, weight * (nx * ry + ny * rx) / 2);
        cross(3, 5, weight * (nx * rz + nz * rx) / 2);
        cross(4, 5, weight * (ny * rz + nz * ry) / 2);
    }

    /** Adds a weight times vᵀ·v for the velocity v = (1, −[r]×) of a point over the six of the body. */
    private void swing(double weight, double rx, double ry, double rz) {
        add(0, 0, weight);
        add(1, 1, weight);
        add(2, 2, weight);
        cross(0, 4, weight * rz);
        cross(0, 5, -weight * ry);
        cross(1, 3, -weight * rz);
        cross(1, 5, weight * rx);
        cross(2, 3, weight * ry);
        cross(2, 4, -weight * rx);
        add(3, 3, weight * (ry * ry + rz * rz));
        add(4, 4, weight * (rx * rx + rz * rz));
        add(5, 5, weight * (rx * rx + ry * ry));
        cross(3, 4, -weight * rx * ry);
        cross(3, 5, -weight * rx * rz);
        cross(4, 5, -weight * ry * rz);
    }

    private void add(int row, int column, double value) {
        curvature[row * unknowns + column] += value;
    }

    private void cross(int row, int column, double value) {
        curvature[row * unknowns + column] += value;
        curvature[column * unknowns + row] += value;
    }

    private void outer(double weight, double[] rows, int at) {
        for (int a = 0; a < unknowns; a++) {
            double value = weight * rows[at + a];
            if (value != 0) {
                for (int b = 0; b < unknowns; b++) {
                    curvature[a * unknowns + b] += value * rows[at + b];
                }
            }
        }
    }

    private double turnedArmX(Place point) {
        return axle.turnedX(point.x() - axle.measuredX, point.y() - axle.measuredY, point.z() - axle.measuredZ);
    }

    private double turnedArmY(Place point) {
        return axle.turnedY(point.x() - axle.measuredX, point.y() - axle.measuredY, point.z() - axle.measuredZ);
    }

    private double turnedArmZ(Place point) {
        return axle.turnedZ(point.x() - axle.measuredX, point.y() - axle.measuredY, point.z() - axle.measuredZ);
    }

    // ---------------------------------------------------------------- solving

    /** Fills matrix and right-hand side; returns the largest error. */
    private double system() {
        constrain();
        double worst = 0;
        double[] matrix = elimination.matrix;
        if (!elastic) {
            System.arraycopy(slopes, 0, matrix, 0, slopes.length);
            for (int row = 0; row < constraints; row++) {
                rightSide[row] = -errors[row];
                worst = Math.max(worst, Math.abs(errors[row]));
            }
            return worst;
        }
        Arrays.fill(matrix, 0);
        for (int u = 0; u < unknowns; u++) {
            System.arraycopy(curvature, u * unknowns, matrix, u * size, unknowns);
        }
        for (int u = 0; u < unknowns; u++) {
            double sum = 0;
            double sizes = 1;
            for (int row = 0; row < constraints; row++) {
                double slope = slopes[row * unknowns + u];
                sum += forces[row] * slope;
                sizes += Math.abs(forces[row] * slope);
            }
            rightSide[u] = -sum;
            worst = Math.max(
                    worst, Math.abs(sum) / sizes); // close to a dead point forces grow, and their rounding with them
        }
        for (int row = 0; row < constraints; row++) {
            double error = errors[row] - compliance[row] * forces[row];
            worst = Math.max(worst, Math.abs(error));
            if (gives(row)) {
                giving(row, error);
            } else {
                int column = column(row);
                for (int u = 0; u < unknowns; u++) {
                    double slope = slopes[row * unknowns + u];
                    matrix[u * size + column] = slope;
                    matrix[column * size + u] = slope;
                }
                rightSide[column] = -error;
            }
        }
        return worst;
    }

    private boolean gives(int row) {
        return row >= firstGiving && row < endGiving;
    }

    /** Where the elimination has the force of a constraint that is rigid. */
    private int column(int row) {
        return unknowns + (row < firstGiving ? row : row - (endGiving - firstGiving));
    }

    /** Puts a constraint that gives into the rows of the unknowns: ∂c·∂cᵀ/C, and −∂c·(c − C·λ)/C on the right. */
    private void giving(int row, double gap) {
        gaps[row] = gap;
        int at = row * unknowns;
        for (int a = 0; a < unknowns; a++) {
            double share = slopes[at + a] / compliance[row];
            if (share != 0) {
                rightSide[a] -= share * gap;
                for (int b = 0, to = a * size; b < unknowns; b++, to++) {
                    elimination.matrix[to] += share * slopes[at + b];
                }
            }
        }
    }

    /** Solves for the right-hand side and finds the forces of what gives. */
    private void solve() {
        elimination.solve(rightSide);
        if (!elastic) {
            System.arraycopy(rightSide, 0, step, 0, size);
            return;
        }
        System.arraycopy(rightSide, 0, step, 0, unknowns);
        for (int row = 0; row < constraints; row++) {
            if (gives(row)) {
                double sum = gaps[row];
                for (int u = 0, at = row * unknowns; u < unknowns; u++, at++) {
                    sum += slopes[at] * step[u];
                }
                step[unknowns + row] = sum / compliance[row];
            } else {
                step[unknowns + row] = rightSide[column(row)];
            }
        }
    }

    /** Newton's method from the present pose; false where it finds none, or another assembly. */
    private boolean settle() {
        for (int i = 0; i < MOST_STEPS; i++) {
            double worst = system();
            if (!(worst < 1)) {
                return false;
            }
            int sign = elimination.factor();
            if (sign == 0) {
                return false;
            }
            if (worst < TOLERANCE) {
                if (sign != signAtRest) {
                    return false;
                }
                tangents();
                return true;
            }
            solve();
            if (!(largestTurn() <= LARGEST_TURN)) {
                return false;
            }
            apply(step, 1);
        }
        return false;
    }

    private double largestTurn() {
        double largest = Math.sqrt(step[3] * step[3] + step[4] * step[4] + step[5] * step[5]);
        for (int u = BODY; u < unknowns; u++) {
            largest = Math.max(largest, Math.abs(step[u]));
        }
        return largest;
    }

    private void apply(double[] change, double share) {
        axle.move(
                share * change[0],
                share * change[1],
                share * change[2],
                share * change[3],
                share * change[4],
                share * change[5]);
        if (crankAt >= 0) {
            crank += share * change[crankAt];
        }
        if (leavesAt >= 0) {
            for (int half = 0; half < 4; half++) {
                leafAngles[half] += share * change[leafAngleAt + half];
            }
        }
        if (elastic) {
            for (int row = 0; row < constraints; row++) {
                forces[row] += share * change[unknowns + row];
            }
        }
    }

    /** Twists of heave and roll, by the matrix at the solution, which is factored. */
    private void tangents() {
        int rows = elastic ? unknowns : 0;
        for (int motion = 0; motion < 2; motion++) {
            Arrays.fill(rightSide, 0);
            Arrays.fill(gaps, 0);
            rightSide[rows] = 1;
            rightSide[rows + 1] = motion == HEAVE ? 1 : -1;
            solve();
            System.arraycopy(step, 0, tangents, motion * all, all);
            axle.twist(motion, step[0], step[1], step[2], step[3], step[4], step[5]);
        }
    }

    /**
     * How much the axle answers to a rod, or an ideal locator, that grows by one: change of the unknowns, in order sideways,
     * fore and aft, turn about y, turn about z. For the pose as it stands.
     */
    void answerTo(int row, double[] moves) {
        Arrays.fill(rightSide, 0);
        Arrays.fill(gaps, 0);
        if (!elastic) {
            rightSide[row] = 1;
        } else if (gives(row)) {
            gaps[row] = -1;
            for (int u = 0; u < unknowns; u++) {
                rightSide[u] = slopes[row * unknowns + u] / compliance[row];
            }
        } else {
            rightSide[column(row)] = 1;
        }
        solve();
        moves[0] = step[1];
        moves[1] = step[0];
        moves[2] = step[4];
        moves[3] = step[5];
    }

    /** Constraints of rods and ideal locator: first and one beyond the last; leaves' front halves count as rods. */
    int firstHeld() {
        return HEIGHTS;
    }

    int heldEnd() {
        return constraints - (leavesAt >= 0 ? 4 : 0);
    }

    /** Slopes of heights and of what holds the axle over the unknowns, at the present pose; without the leaves' hinges. */
    double[][] heldSlopes() {
        constrain();
        double[][] rows = new double[heldEnd()][];
        for (int row = 0; row < rows.length; row++) {
            rows[row] = Arrays.copyOfRange(slopes, row * unknowns, (row + 1) * unknowns);
        }
        return rows;
    }

    /** Solves the pose as measured, whose determinant's sign is kept; false where it is singular. */
    boolean measured() {
        system();
        signAtRest = elimination.factor();
        if (signAtRest != 0) {
            tangents();
        }
        return signAtRest != 0 && Double.isFinite(tangents[0]);
    }

    /**
     * Goes to rest: links made longer with both wheels held, then the body let down, both in steps.
     *
     * @return how far it came
     */
    Reach toRest() {
        double made = makeLonger(1);
        if (made < 1) {
            return new Reach(Reach.Stage.LONGER, made);
        }
        double down = given.stance().cameDown();
        double came = furthest(down);
        if (came < 1) {
            return new Reach(Reach.Stage.DOWN, came * down);
        }
        restRise = down;
        keep(keptAtRest);
        return new Reach(Reach.Stage.REST, 0);
    }

    /** Makes links longer by a share of what they are to be, in steps; returns the share that it came to. */
    double makeLonger(double share) {
        double most = 0;
        for (double longer : rodLonger) {
            most = Math.max(most, Math.abs(longer));
        }
        double longest = most > STEP ? STEP / most : 1;
        double stride = longest;
        while (madeLonger != share) {
            keep(kept);
            double left = share - madeLonger;
            madeLonger = Math.abs(left) <= stride * (1 + 1e-9) ? share : madeLonger + Math.copySign(stride, left);
            if (settle()) {
                stride = Math.min(longest, 2 * stride);
            } else {
                restore(kept);
                settle();
                stride /= 2;
                if (stride * most < 1e-7) {
                    return madeLonger;
                }
            }
        }
        return share;
    }

    private double furthest(double down) {
        double done = 0;
        double stride = 1;
        while (done < 1) {
            double next = Math.min(1, done + stride);
            if (moveToHeights(next * down, next * down)) {
                done = next;
            } else {
                stride /= 2;
                if (stride * Math.abs(down) < 1e-7) {
                    return done;
                }
            }
        }
        return 1;
    }

    /** Back to rest. */
    void rest() {
        restore(keptAtRest);
        settle();
    }

    /** Moves to these travels from rest, m; false, and the pose as it was, where the links do not reach. */
    boolean moveTo(double leftTravel, double rightTravel) {
        return moveToHeights(restRise + leftTravel, restRise + rightTravel);
    }

    private boolean moveToHeights(double leftTo, double rightTo) {
        double leftFrom = leftHeight;
        double rightFrom = rightHeight;
        double way = Math.max(Math.abs(leftTo - leftFrom), Math.abs(rightTo - rightFrom));
        if (way == 0) {
            return true;
        }
        double longest = Math.min(1, STEP / way);
        double shortest = Math.min(longest, SHORTEST_STEP / way);
        keep(origin);
        double done = 0;
        double stride = longest;
        while (done < 1) {
            double next = 1 - done <= stride * (1 + 1e-9) ? 1 : done + stride;
            keep(kept);
            leftHeight = next == 1 ? leftTo : leftFrom + next * (leftTo - leftFrom);
            rightHeight = next == 1 ? rightTo : rightFrom + next * (rightTo - rightFrom);
            double dl = leftHeight - kept[0];
            double dr = rightHeight - kept[1];
            alongTangent((dl + dr) / 2, (dl - dr) / 2);
            if (settle()) {
                done = next;
                stride = Math.min(longest, 2 * stride);
            } else {
                restore(kept);
                settle();
                if (stride <= shortest) {
                    restore(origin);
                    settle();
                    return false;
                }
                stride = Math.max(shortest, stride / 2);
            }
        }
        return true;
    }

    private void alongTangent(double heave, double roll) {
        for (int u = 0; u < all; u++) {
            step[u] = heave * tangents[u] + roll * tangents[all + u];
        }
        if (largestTurn() <= LARGEST_TURN) {
            apply(step, 1);
        }
    }

    private int poseSize() {
        return 3 + Part.POSE + 1 + 4 + constraints;
    }

    private void keep(double[] pose) {
        pose[0] = leftHeight;
        pose[1] = rightHeight;
        pose[2] = madeLonger;
        axle.keep(pose, 3);
        int at = 3 + Part.POSE;
        pose[at] = crank;
        System.arraycopy(leafAngles, 0, pose, at + 1, 4);
        System.arraycopy(forces, 0, pose, at + 5, constraints);
    }

    private void restore(double[] pose) {
        leftHeight = pose[0];
        rightHeight = pose[1];
        madeLonger = pose[2];
        axle.restore(pose, 3);
        int at = 3 + Part.POSE;
        crank = pose[at];
        System.arraycopy(pose, at + 1, leafAngles, 0, 4);
        System.arraycopy(pose, at + 5, forces, 0, constraints);
    }

    // ---------------------------------------------------------------- what the pose tells

    double leftTravel() {
        return leftHeight - restRise;
    }

    double rightTravel() {
        return rightHeight - restRise;
    }

    boolean hasCrank() {
        return crankAt >= 0;
    }

    /** Turn of the crank from where it was measured, top to the right positive, rad. */
    double crank() {
        return crank;
    }

    boolean overConstrained() {
        return overConstrained;
    }

    /** Largest error of a rigid constraint at the present pose, m. */
    double worstError() {
        constrain();
        double worst = 0;
        for (int row = 0; row < constraints; row++) {
            if (compliance[row] == 0) {
                worst = Math.max(worst, Math.abs(errors[row]));
            }
        }
        return worst;
    }

    /** Energy of the rods, Σ ½·rate·(change of length)², J. */
    double bindEnergy() {
        double energy = 0;
        for (int r = 0; r < rodLengths.length; r++) {
            double force = forces[firstRod + r];
            energy += 0.5 * compliance[firstRod + r] * force * force;
        }
        return unitRate * energy;
    }

    /** Force along a rod, N, tension positive; zero where the links are no more than they need to be. */
    double rodForce(int rod) {
        return overConstrained ? unitRate * forces[firstRod + rod] : 0;
    }

    /** Slope of the bind energy per heave, N: dE/du = −(λ_L + λ_R). */
    double bindByHeave() {
        return overConstrained ? -unitRate * (forces[0] + forces[1]) : 0;
    }

    /** Slope of the bind energy, left wheel up by one and right down by one, N. */
    double bindByRoll() {
        return overConstrained ? -unitRate * (forces[0] - forces[1]) : 0;
    }

    /** Second derivative of the bind energy over heave, N/m. */
    double bindHeaveRate() {
        return overConstrained ? -unitRate * (tangents[unknowns] + tangents[unknowns + 1]) : 0;
    }

    /** The same over the motion of {@link #bindByRoll}, N/m. */
    double bindRollRate() {
        return overConstrained ? -unitRate * (tangents[all + unknowns] - tangents[all + unknowns + 1]) : 0;
    }

    /** A rod between its joints now. */
    AxleJoints.RodAt rodAt(int r) {
        AxleRod rod = rods.get(r);
        double[] body = new double[3];
        double[] moving = new double[3];
        bodyEnd(r, body);
        axleEnd(r, moving);
        Place from = new Place(body[0], body[1], body[2]);
        Place to = new Place(moving[0], moving[1], moving[2]);
        double stretch = overConstrained ? from.distanceTo(to) - rodLengths[r] - rodLonger[r] : 0;
        AxleJoints.Pin pin = switch (rod.crank()) {
            case NONE -> AxleJoints.Pin.NONE;
            case ON_BODY -> AxleJoints.Pin.BODY_END;
            case ON_AXLE -> AxleJoints.Pin.AXLE_END;
        };
        return new AxleJoints.RodAt(rod.name(), from, to, rod.rod().rate(), stretch, pin);
    }

    /** Where the bell-crank turns, now; only where there is one. */
    Place crankPivot() {
        return crankOnAxle() ? axle.placeOf(pivot) : pivot;
    }

    boolean crankOnAxle() {
        return rods.stream().anyMatch(rod -> rod.crank() == AxleRod.Crank.ON_AXLE);
    }

    boolean hasLeaves() {
        return leavesAt >= 0;
    }

    /** Hinge of half a leaf on the axle, now; halves in the order left front, left rear, right front, right rear. */
    Place leafHinge(int half) {
        return axle.placeOf(hinges[half]);
    }

    /** Eye of half a leaf, now: at the front on the body, at the rear on the shackle. */
    Place leafEye(int half) {
        Place hinge = leafHinge(half);
        return new Place(
                hinge.x() + halves[half] * Math.cos(leafAngles[half]),
                eyes[half].y(),
                hinge.z() + halves[half] * Math.sin(leafAngles[half]));
    }

    /** Where the shackle of a rear half hangs on the body. */
    Place shacklePivot(int half) {
        return eyes[half];
    }

    /** End of a rod on the body, or on the crank that it carries, now. */
    void bodyEnd(int rod, double[] at) {
        Place body = rods.get(rod).body();
        at[0] = body.x();
        at[1] = body.y();
        at[2] = body.z();
        if (rods.get(rod).crank() == AxleRod.Crank.ON_BODY) {
            double y = body.y() - pivot.y();
            double z = body.z() - pivot.z();
            at[1] = pivot.y() + Math.cos(crank) * y - Math.sin(crank) * z;
            at[2] = pivot.z() + Math.sin(crank) * y + Math.cos(crank) * z;
        }
    }

    /** End of a rod on the axle, or on the crank that it carries, now. */
    void axleEnd(int rod, double[] at) {
        Place end = rods.get(rod).axle();
        double y = end.y();
        double z = end.z();
        if (rods.get(rod).crank() == AxleRod.Crank.ON_AXLE) {
            double fromY = end.y() - pivot.y();
            double fromZ = end.z() - pivot.z();
            y = pivot.y() + Math.cos(crank) * fromY - Math.sin(crank) * fromZ;
            z = pivot.z() + Math.sin(crank) * fromY + Math.cos(crank) * fromZ;
        }
        at[0] = axle.placeX(end.x(), y, z);
        at[1] = axle.placeY(end.x(), y, z);
        at[2] = axle.placeZ(end.x(), y, z);
    }
}
