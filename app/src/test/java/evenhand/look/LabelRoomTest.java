package evenhand.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LabelRoomTest {
    private final LabelRoom room = new LabelRoom(new Rectangle2D.Double(0, 0, 100, 100));

    @Test
    void wordsStandBesideTheirPointAndNeverOverEachOther() {
        Point2D middle = new Point2D.Double(50, 50);
        Optional<Rectangle2D> first = room.beside(middle, 20, 10, 2);
        assertThat(first).contains(new Rectangle2D.Double(52, 45, 20, 10));
        for (int i = 0; i < 3; i++) {
            Optional<Rectangle2D> next = room.beside(middle, 20, 10, 2);
            assertThat(next).isPresent();
        }
        for (Rectangle2D one : room.taken()) {
            assertThat(room.taken().stream().filter(other -> other.intersects(one)))
                    .containsExactly(one);
        }
    }

    @Test
    void aPlaceOffTheLinesIsPreferred() {
        room.avoid(50, 50, 100, 50);
        assertThat(room.beside(new Point2D.Double(50, 50), 20, 10, 2)
                        .orElseThrow()
                        .getMaxX())
                .isLessThanOrEqualTo(50);
    }

    @Test
    void nothingIsPutOutside() {
        assertThat(room.beside(new Point2D.Double(99, 50), 20, 10, 2)
                        .orElseThrow()
                        .getMaxX())
                .isLessThanOrEqualTo(100);
        assertThat(room.beside(new Point2D.Double(50, 50), 120, 10, 2)).isEmpty();
    }

    @Test
    void aNameTooLongEndsInAnEllipsis() {
        FontRenderContext context = new FontRenderContext(new AffineTransform(), true, true);
        String cut = LabelRoom.cut("A set-up with a name that goes on and on", Typeface.plain(12), context, 80);
        assertThat(cut).startsWith("A set-up").endsWith("…");
        assertThat(Typeface.plain(12).getStringBounds(cut, context).getWidth()).isLessThanOrEqualTo(80);
        assertThat(LabelRoom.cut("short", Typeface.plain(12), context, 80)).isEqualTo("short");
    }
}
