package evenhand.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlacementTest {
    private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 400, 300);
    private static final Point2D MIDDLE = new Point2D.Double(200, 150);

    private static Placement.Sought words(Point2D at) {
        return new Placement.Sought(at, 60, 14, 6, Optional.empty(), Optional.empty());
    }

    @Test
    void oneAfterAnotherFindsRoomOverNoneAndAcrossNoLeader() {
        Placement room = new Placement(AREA);
        List<Placement.Found> all = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Point2D at = new Point2D.Double(150 + i % 4 * 30, 140 + i / 4 * 20);
            room.take(new Rectangle2D.Double(at.getX() - 5, at.getY() - 5, 10, 10)); // its mark
        }
        for (int i = 0; i < 8; i++) {
            all.add(room.place(words(new Point2D.Double(150 + i % 4 * 30, 140 + i / 4 * 20)))
                    .orElseThrow());
        }
        for (int i = 0; i < all.size(); i++) {
            Placement.Found one = all.get(i);
            assertThat(AREA.contains(one.place())).isTrue();
            for (int j = 0; j < all.size(); j++) {
                Placement.Found other = all.get(j);
                if (i != j) {
                    assertThat(one.place().intersects(other.place())).isFalse();
                    assertThat(one.leader().map(line -> line.intersects(other.place())))
                            .isNotEqualTo(Optional.of(true));
                    assertThat(one.leader().flatMap(line -> other.leader().map(line::intersectsLine)))
                            .isNotEqualTo(Optional.of(true));
                }
            }
        }
        assertThat(all).anyMatch(one -> one.leader().isPresent());
    }

    @Test
    void aLineIsKeptOffWhereThereIsRoomBesideIt() {
        Placement room = new Placement(AREA);
        for (int x = 210; x < 400; x += 8) {
            room.avoid(new Line2D.Double(x, 0, x, 300));
        }
        Placement.Found found = room.place(words(MIDDLE)).orElseThrow();
        assertThat(found.clear()).isTrue();
        assertThat(found.place().getMaxX()).isLessThanOrEqualTo(210);
    }

    @Test
    void wordsStayWhereTheyStoodWhileThatIsGood() {
        Point2D above = new Point2D.Double(-40, -20);
        Placement.Sought sought = new Placement.Sought(MIDDLE, 80, 14, 6, Optional.empty(), Optional.of(above));
        assertThat(new Placement(AREA).place(sought).orElseThrow().place())
                .isEqualTo(new Rectangle2D.Double(160, 130, 80, 14));
        Placement full = new Placement(AREA);
        full.take(new Rectangle2D.Double(100, 100, 200, 45));
        assertThat(full.place(sought).orElseThrow().place().getY()).isGreaterThan(145);
    }

    @Test
    void whereThereIsNoRoomThereIsNoPlace() {
        Placement full = new Placement(AREA);
        full.take(AREA);
        assertThat(full.place(words(MIDDLE))).isEmpty();
    }
}
