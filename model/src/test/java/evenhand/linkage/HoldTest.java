package evenhand.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.End;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Leaf;
import evenhand.car.links.Link;
import evenhand.car.links.LinkedAxles;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.Locator;
import evenhand.car.links.MiddleLink;
import evenhand.car.links.MiddlePoint;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.Point;
import evenhand.car.links.Rod;
import evenhand.car.links.Stance;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Links that leave an axle free say what is free. */
class HoldTest {
    private static final Rod ROD = Rod.AS_MEASURED;
    private static final Stance STANCE = new Stance(End.REAR, 1.4, 0, 0.3, 0, 0, 0);
    private static final Link LOWER = new Link(new Point(0.5, 0.45, 0.24), new Point(0, 0.45, 0.2), ROD);
    private static final Link UPPER = new Link(new Point(0.4, 0.4, 0.41), new Point(0, 0.4, 0.42), ROD);
    private static final MiddleLink MIDDLE =
            new MiddleLink(new MiddlePoint(0.4, 0, 0.41), new MiddlePoint(0, 0, 0.42), ROD);
    private static final Locator PANHARD =
            new Locator.PanhardPoints(new MiddlePoint(0, 0.45, 0.27), new MiddlePoint(0, -0.45, 0.25), ROD);

    private static Assembly assembly(
            boolean lower, boolean upper, boolean middle, Optional<Locator> locator, Optional<Pair<Leaf>> leaf) {
        return Assembly.of(new LinkedLiveAxle(
                STANCE,
                new AxleLinks(
                        lower ? Optional.of(Pair.alike(LOWER)) : Optional.empty(),
                        upper ? Optional.of(Pair.alike(UPPER)) : Optional.empty(),
                        middle ? Optional.of(MIDDLE) : Optional.empty(),
                        Optional.empty(),
                        leaf),
                locator,
                Mounts.NONE,
                Optional.empty(),
                LinkedAxles.CAR,
                Optional.empty()));
    }

    private static Assembly assembly(boolean lower, boolean upper, boolean middle, Optional<Locator> locator) {
        return assembly(lower, upper, middle, locator, Optional.empty());
    }

    @Test
    void withoutALocatorThreeLinksLetTheAxleGoSideways() {
        assertThat(assembly(true, false, true, Optional.empty())).isEqualTo(free(Freedom.SIDEWAYS));
    }

    @Test
    void fourParallelLinksAreFourAndYetLetItGoSideways() {
        assertThat(assembly(true, true, false, Optional.empty())).isEqualTo(free(Freedom.SIDEWAYS));
        // nor does a fifth, along the car as well
        assertThat(assembly(true, true, true, Optional.empty())).isEqualTo(free(Freedom.SIDEWAYS));
    }

    @Test
    void lowerLinksAndARodLetItWindUp() {
        assertThat(assembly(true, false, false, Optional.of(PANHARD))).isEqualTo(free(Freedom.PITCH));
    }

    @Test
    void aMiddleLinkAndARodLeaveTwoWays() {
        assertThat(((Assembly.Free) assembly(false, false, true, Optional.of(PANHARD))).ways())
                .hasSize(2);
        assertThat(((Assembly.Free) assembly(false, false, false, Optional.of(PANHARD))).ways())
                .containsExactlyInAnyOrder(Freedom.FORE_AND_AFT, Freedom.PITCH, Freedom.YAW);
    }

    @Test
    void leavesWithoutALocatorLetItGoSideways() {
        Leaf leaf = new Leaf(
                new Point(0.6, 0.5, 0.32),
                new Point(-0.65, 0.5, 0.33),
                new Point(-0.68, 0.5, 0.42),
                new Point(0, 0.5, 0.27));
        assertThat(assembly(false, false, false, Optional.empty(), Optional.of(Pair.alike(leaf))))
                .isEqualTo(free(Freedom.SIDEWAYS));
        assertThat(assembly(false, false, false, Optional.of(PANHARD), Optional.of(Pair.alike(leaf))))
                .isInstanceOf(Assembly.Standing.class);
    }

    @Test
    void splayedUppersHoldHardlyWhereTheyAreHardlySplayed() {
        assertThat(hold(0.30)).satisfies(h -> assertThat(h.hardly()).isFalse());
        Hold hardly = hold(0.03);
        assertThat(hardly.hardly()).isTrue();
        assertThat(hardly.where()).isEqualTo(Freedom.SIDEWAYS);
        // a millimetre more in one link goes sideways by half of what its splay makes of it
        assertThat(hardly.worst()).isCloseTo(Math.hypot(0.4, 0.03) / (2 * 0.03), within(0.02));
        assertThat(splayed(0.0015)).isEqualTo(free(Freedom.SIDEWAYS));
    }

    private static Hold hold(double splay) {
        return ((Assembly.Standing) splayed(splay)).hold().orElseThrow();
    }

    private static Assembly splayed(double splay) {
        Link upper = new Link(new Point(0.4, 0.2 + splay, 0.42), new Point(0, 0.2, 0.42), ROD);
        Link lower = new Link(new Point(0.5, 0.45, 0.2), new Point(0, 0.45, 0.2), ROD);
        return Assembly.of(new LinkedLiveAxle(
                STANCE,
                new AxleLinks(
                        Optional.of(Pair.alike(lower)),
                        Optional.of(Pair.alike(upper)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                Optional.empty(),
                Mounts.NONE,
                Optional.empty(),
                LinkedAxles.CAR,
                Optional.empty()));
    }

    private static Assembly free(Freedom... ways) {
        return new Assembly.Free(java.util.List.of(ways));
    }

    @Test
    void aLinkThatCannotBeSoLongSaysHowFarItGoes() {
        Rod longer = ROD.longer(0.3);
        Locator rod = new Locator.PanhardPoints(new MiddlePoint(0, 0.45, 0.27), new MiddlePoint(0, -0.45, 0.25), ROD);
        LinkedLiveAxle axle = new LinkedLiveAxle(
                STANCE,
                new AxleLinks(
                        Optional.of(Pair.alike(LOWER)),
                        Optional.empty(),
                        Optional.of(new MiddleLink(MIDDLE.body(), MIDDLE.axle(), longer)),
                        Optional.empty(),
                        Optional.empty()),
                Optional.of(rod),
                Mounts.NONE,
                Optional.empty(),
                LinkedAxles.CAR,
                Optional.empty());
        Assembly.OutOfReach out = (Assembly.OutOfReach) Assembly.of(axle);
        assertThat(out.stage()).isEqualTo(Reach.Stage.LONGER);
        assertThat(out.far()).isBetween(0.2, 0.99);
    }
}
