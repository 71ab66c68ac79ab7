package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Side;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedAxles.Kind;
import evenhand.linkage.AxleLines.Line;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** An axle as lines to be drawn: what is drawn is what moves. */
class AxleLinesTest {
    private static final int EACH = 12;

    private interface Claim {
        void of(String which, AxleLinkage axle);
    }

    private static void always(Claim claim) {
        for (Kind kind : Kind.values()) {
            for (long seed = 0; seed < EACH; seed++) {
                if (Assembly.of(LinkedAxles.of(kind, seed)) instanceof Assembly.Standing standing) {
                    standing.linkage().rest();
                    claim.of(kind + " " + seed, standing.linkage());
                }
            }
        }
    }

    private static List<AxleLines> poses(AxleLinkage axle) {
        List<AxleLines> poses = new ArrayList<>(List.of(axle.lines()));
        double[][] places = {{0.03, 0.03}, {-0.03, 0.02}, {0.025, -0.025}};
        for (double[] to : places) {
            if (axle.moveTo(to[0], to[1])) {
                poses.add(axle.lines());
            }
        }
        if (axle instanceof WheelPairLinkage wheels && wheels.steered() && wheels.moveTo(0.01, -0.01, 0.2)) {
            poses.add(axle.lines());
        }
        assertThat(poses).hasSizeGreaterThan(2);
        return poses;
    }

    @Test
    void whatIsRigidKeepsItsLengthAndWhatHangsOnTheBodyStaysThere() {
        Map<AxleLines.Kind, Integer> seen = new HashMap<>();
        always((which, axle) -> {
            boolean gives = axle instanceof LiveAxleLinkage live && live.overConstrained();
            List<Line> rest = axle.lines().lines();
            for (AxleLines pose : poses(axle)) {
                assertThat(pose.lines()).as(which).hasSameSizeAs(rest);
                for (int i = 0; i < rest.size(); i++) {
                    Line before = rest.get(i);
                    Line now = pose.lines().get(i);
                    String line = which + " " + now;
                    assertThat(now.name()).isEqualTo(before.name());
                    seen.merge(now.kind(), 1, Integer::sum);
                    if (now.kind().isRigid()) {
                        double give = gives && now.kind() == AxleLines.Kind.ROD ? 0.03 : 1e-11;
                        assertThat(now.length()).as(line).isCloseTo(before.length(), within(give));
                    }
                    if (now.kind() == AxleLines.Kind.LEAF || now.kind() == AxleLines.Kind.SHACKLE) {
                        assertThat(sideLength(now)).as(line).isCloseTo(sideLength(before), within(1e-11));
                    }
                    boolean steered = now.name().startsWith("tieRod");
                    if (now.hangs() && !steered) {
                        assertThat(now.from().distanceTo(before.from()))
                                .as(line)
                                .isLessThan(1e-11);
                    }
                }
            }
        });
        assertThat(seen.keySet())
                .contains(
                        AxleLines.Kind.ROD,
                        AxleLines.Kind.ARM,
                        AxleLines.Kind.TORQUE_ARM,
                        AxleLines.Kind.CRANK,
                        AxleLines.Kind.LEAF,
                        AxleLines.Kind.SHACKLE,
                        AxleLines.Kind.STRUT,
                        AxleLines.Kind.UPRIGHT,
                        AxleLines.Kind.BRACKET,
                        AxleLines.Kind.RACK,
                        AxleLines.Kind.SPRING,
                        AxleLines.Kind.DAMPER);
    }

    private static double sideLength(Line line) {
        return Math.hypot(
                line.to().x() - line.from().x(), line.to().z() - line.from().z());
    }

    /** Lines meet where parts are joined: a leaf's front eye stays on the body though its end is worked out from its hinge. */
    @Test
    void springsAndDampersAreAsLongAsTheFiguresSay() {
        always((which, axle) -> {
            axle.moveTo(0.02, -0.02);
            for (Side side : Side.values()) {
                String suffix = side == Side.LEFT ? "Left" : "Right";
                for (Line line : axle.lines().lines()) {
                    if (line.name().equals("damper" + suffix)) {
                        assertThat(line.length()).as(which).isCloseTo(axle.damperLength(side), within(1e-12));
                    }
                }
            }
        });
    }

    @Test
    void wheelsAndRollCentreStandWhereTheFiguresSay() {
        always((which, axle) -> {
            double left = axle.lines().wheels().get(0).centre().z();
            double right = axle.lines().wheels().get(1).centre().z();
            if (!axle.moveTo(0.03, -0.01)) {
                return;
            }
            AxleLines lines = axle.lines();
            AxleLines.Wheel wheel = lines.wheels().get(0);
            AxleLines.Wheel other = lines.wheels().get(1);
            assertThat(wheel.side()).isEqualTo(Side.LEFT);
            assertThat(wheel.centre().z() - left).as(which).isCloseTo(0.03, within(1e-12));
            assertThat(other.centre().z() - right).as(which).isCloseTo(-0.01, within(1e-12));
            assertThat(wheel.centre().distanceTo(wheel.contact()))
                    .as(which)
                    .isCloseTo(axle.given().stance().loadedRadius(), within(1e-12));
            assertThat(wheel.spin().y()).as(which).isPositive();
            assertThat(other.spin().y()).as(which).isNegative();
            assertThat(lines.rollCentre().isPresent())
                    .isEqualTo(axle.rollCentreHeight().isPresent());
            lines.rollCentre().ifPresent(place -> {
                // Its height is a distance from the line through both contact points, and every force line leads
                // through it.
                double dy = wheel.contact().y() - other.contact().y();
                double dz = wheel.contact().z() - other.contact().z();
                double above = ((place.z() - other.contact().z()) * dy
                                - (place.y() - other.contact().y()) * dz)
                        / Math.hypot(dy, dz);
                assertThat(above)
                        .as(which)
                        .isCloseTo(
                                axle.rollCentreHeight().orElseThrow(), within(1e-9 * Math.max(1, Math.abs(place.y()))));
                for (AxleLines.ForceLine line : lines.forceLines()) {
                    double at = line.through().z()
                            + line.slope() * (place.y() - line.through().y());
                    assertThat(at).as(which).isCloseTo(place.z(), within(1e-9 * Math.max(1, Math.abs(place.y()))));
                }
            });
        });
    }
}
