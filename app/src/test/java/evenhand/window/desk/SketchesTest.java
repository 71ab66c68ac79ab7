package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.drawing.DrawingPainter;
import evenhand.drawing.Item;
import evenhand.drawing.measuring.Sketch;
import evenhand.drawing.measuring.Sketches;
import evenhand.look.Theme;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where tape, rule, level and scale go. */
class SketchesTest {
    /** Measuring up in each way that there is. */
    private static List<MeasureUp> ways() {
        List<MeasureUp> ways = new ArrayList<>();
        for (MeasureUp.Weighing weighing : MeasureUp.Weighing.values()) {
            for (MeasureUp.Height height : MeasureUp.Height.values()) {
                MeasureUp way = MeasureUp.NEW.weighed(weighing).lifted(height);
                ways.add(way.with("front.layout", "independent")
                        .with("rear.layout", "live axle")
                        .with("rear.lateralLocator.kind", "watt"));
                ways.add(way.with("front.layout", "live axle")
                        .with("front.lateralLocator.kind", "panhard")
                        .with("rear.layout", "independent"));
            }
        }
        return ways;
    }

    @Test
    void everyValueThatIsMeasuredUpHasItsSketch() {
        for (MeasureUp way : ways()) {
            for (MeasureUp.Step step : way.steps()) {
                for (FormField field : step.fields()) {
                    if (!field.path().equals(MeasureUp.TITLE)) {
                        assertThat(Sketches.of(field.path()))
                                .as(step.title() + ": " + field.path())
                                .isPresent();
                    }
                }
            }
        }
    }

    /** What is measured by hand, in the words of the catalogue, and what all demo cars together have of it. */
    @Test
    void soHasEveryLengthOfEveryDemoCarThatATapeOrARuleMeasures() {
        Set<String> without = new LinkedHashSet<>();
        for (FormField field : fields().values()) {
            boolean byHand = field.how().contains("tape") || field.how().contains("steel rule");
            if (byHand && Sketches.of(field.path()).isEmpty()) {
                without.add(field.path().replaceAll("\\[\\d+]", ""));
            }
        }
        without.removeIf(
                path -> path.startsWith("mounts.") || path.startsWith("brakes.") || path.contains("propShaft"));
        assertThat(without).isEmpty();
    }

    private static Map<String, FormField> fields() {
        Map<String, FormField> fields = new HashMap<>();
        for (String demo : Demos.NAMES) {
            Form.of(Desks.demo(demo).work().scenario()).fields().forEach(field -> fields.put(field.path(), field));
        }
        return fields;
    }

    @Test
    void allItsWordsAreInSightAtTheSmallestSizeAndEachHasADimensionOrAMark() {
        Set<String> paths = new LinkedHashSet<>(fields().keySet());
        ways().forEach(way -> way.steps().forEach(step -> step.fields().forEach(field -> paths.add(field.path()))));
        Rectangle2D area = new Rectangle2D.Double(0, 0, 250, 143);
        BufferedImage image = new BufferedImage(250, 143, BufferedImage.TYPE_INT_RGB);
        Set<Sketch> seen = new LinkedHashSet<>();
        Set<String> kinds = new LinkedHashSet<>();
        for (String path : paths) {
            Sketches.of(path).ifPresent(sketch -> {
                if (kinds.add(sketch.how() + words(sketch))) {
                    seen.add(sketch);
                }
            });
        }
        assertThat(seen).hasSizeGreaterThan(35);
        List<String> outside = new ArrayList<>();
        for (Sketch sketch : seen) {
            Graphics2D g = image.createGraphics();
            List<DrawingPainter.Label> labels = DrawingPainter.paint(sketch.drawing(), Theme.light(13), g, area)
                    .labels();
            g.dispose();
            labels.stream()
                    .filter(label -> !area.contains(label.place()))
                    .forEach(label -> outside.add(label.words() + " of: " + sketch.how()));
            assertThat(sketch.items())
                    .as(sketch.how())
                    .anyMatch(item -> item instanceof Item.Mark
                            || item instanceof Item.Words
                            || (item instanceof Item.Outline outline && outline.ink() == Item.Ink.DIMENSION));
        }
        assertThat(outside).isEmpty();
    }

    private static List<String> words(Sketch sketch) {
        return sketch.items().stream()
                .filter(Item.Words.class::isInstance)
                .map(item -> ((Item.Words) item).words())
                .toList();
    }
}
