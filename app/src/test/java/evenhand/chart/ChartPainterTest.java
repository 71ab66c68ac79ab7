package evenhand.chart;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.ChartPainter.Label;
import evenhand.chart.ChartPainter.Painted;
import evenhand.look.Picture;
import evenhand.look.SetupStyle;
import evenhand.look.Theme;
import evenhand.quantity.Unit;
import evenhand.turn.Direction;
import evenhand.words.Units;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class ChartPainterTest {
    private static final List<Theme> THEMES = List.of(Theme.light(12), Theme.dark(14), Theme.paper(10));

    private static final int[][] SIZES = {{1024, 700}, {640, 420}, {480, 320}};

    private static Painted paint(Chart chart, Theme theme, int width, int height, BufferedImage image) {
        Graphics2D g = image.createGraphics();
        Painted painted = ChartPainter.paint(chart, theme, g, new Rectangle2D.Double(0, 0, width, height));
        g.dispose();
        return painted;
    }

    @ParameterizedTest
    @MethodSource("evenhand.scenario.Demo#names")
    void wordsStandInsideAndNeverOverEachOther(String demo) {
        List<Shown> cars = DemoCharts.shown(demo, Direction.LEFT);
        for (Units units : Units.values()) {
            Map<String, Chart> charts = DemoCharts.all(cars.subList(0, Math.min(4, cars.size())), units);
            charts.put("effects", DemoCharts.effects(demo, 12, units));
            charts.forEach((name, chart) -> {
                for (int i = 0; i < THEMES.size(); i++) {
                    int width = SIZES[i][0];
                    int height = SIZES[i][1];
                    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
                    Painted painted = paint(chart, THEMES.get(i), width, height, image);
                    check(name + " " + width, painted, width, height);
                    assertThat(colours(image)).as(name).hasSizeGreaterThan(20);
                }
            });
        }
    }

    private static void check(String name, Painted painted, int width, int height) {
        Rectangle2D all = new Rectangle2D.Double(0, 0, width, height);
        List<Label> labels = painted.labels();
        assertThat(labels).as(name).isNotEmpty();
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            assertThat(all.contains(label.place()))
                    .as("%s: %s inside", name, label)
                    .isTrue();
            for (int j = 0; j < i; j++) {
                Label other = labels.get(j);
                Rectangle2D shared = label.place().createIntersection(other.place());
                boolean over = shared.getWidth() > 1
                        && shared.getHeight() > 0.2 * label.place().getHeight();
                assertThat(over).as("%s: %s over %s", name, label, other).isFalse();
            }
        }
    }

    /** Colours on some of its lines. */
    private static Set<Integer> colours(BufferedImage image) {
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y += 7) {
            for (int x = 0; x < image.getWidth(); x++) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours;
    }

    @Test
    void endsOfAllLinesAreNamedWhereThereIsRoomAndInAKeyWhereThereIsNone() {
        List<Shown> cars = DemoCharts.shown("harbour-saloon", Direction.LEFT);
        Chart chart = TurnCharts.roll(cars, Units.METRIC);
        for (int height : new int[] {700, 260}) {
            BufferedImage image = new BufferedImage(1024, height, BufferedImage.TYPE_INT_RGB);
            List<Label> labels =
                    paint(chart, Theme.light(12), 1024, height, image).labels();
            for (Shown car : cars) {
                assertThat(labels).anyMatch(label -> label.words().startsWith(car.name()));
            }
        }
    }

    /** Of five set-ups three were named, and of the others there was no word. */
    @Test
    void everySetupIsNamedInTheKeyOrItIsSaidHowManyAreNot() {
        List<Shown> cars = DemoCharts.shown("harbour-saloon", Direction.LEFT);
        assertThat(cars).hasSize(8);
        Chart chart = TurnCharts.gripUsed(cars, Units.METRIC);
        List<String> roomy = keys(chart, 480, 320);
        assertThat(roomy).contains("front", "rear").noneMatch(words -> words.contains("more"));
        for (Shown car : cars) {
            assertThat(roomy).contains(car.name());
        }
        List<String> narrow = keys(chart, 300, 190);
        String more = narrow.stream()
                .filter(words -> words.startsWith("and "))
                .findFirst()
                .orElseThrow();
        long named = cars.stream().filter(car -> narrow.contains(car.name())).count();
        long all = cars.size() + 2L; // which of its lines is which stands there too
        assertThat(named).isPositive();
        assertThat(more).isEqualTo("and " + (all - named) + " more");
    }

    private static List<String> keys(Chart chart, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        return paint(chart, Theme.light(12), width, height, image).labels().stream()
                .map(Label::words)
                .toList();
    }

    /** The foot of the balance with its bands: no place near the rule was free of lines, and the words went under it. */
    @Test
    void theWordsOfARuleAtTheFootStandAboveTheNumbersOfTheAxis() {
        Span wide = new Span(0, 0.8);
        List<Part> parts =
                new ArrayList<>(List.of(new Part.Rule(Part.Rule.Kind.ZERO, Part.Rule.Along.UP, 0, "both alike")));
        for (int i = 1; i <= 4; i++) {
            List<Part.Point> level = List.of(new Part.Point(0, 0.5 * i), new Part.Point(0.8, 0.5 * i));
            parts.add(new Part.Line("line " + i, "", "", new SetupStyle(i), Part.Weight.HEAVY, level));
        }
        Chart chart = new Chart(
                "Balance",
                Axis.Measure.of("lateral acceleration", Unit.of("g"), 3, wide),
                Axis.Measure.of("balance", Unit.of("%"), 1, new Span(0, 30)),
                parts,
                List.of());
        Painted painted =
                paint(chart, Theme.dark(13), 480, 300, new BufferedImage(480, 300, BufferedImage.TYPE_INT_RGB));
        Label words = painted.labels().stream()
                .filter(label -> label.words().equals("both alike"))
                .findFirst()
                .orElseThrow();
        assertThat(words.place().getMaxY()).isLessThanOrEqualTo(painted.plot().getMaxY() + 1);
    }

    @Test
    void aLabelIsNeverBrokenBetweenANumberAndItsUnit() {
        FontRenderContext context = new FontRenderContext(null, true, true);
        String words = "As bought: limit 0.771 g";
        Font font = Theme.light(13).plain();
        for (int width = 85; width < 200; width++) {
            List<String> lines = Wrapped.lines(words, font, context, width, 3);
            assertThat(lines).as("%d px", width).doesNotContain("g");
            assertThat(String.join(" ", lines)).as("%d px", width).isEqualTo(words);
        }
    }

    @Test
    void absurdNamesAreCutAndNotLetOut() {
        List<Shown> cars = new ArrayList<>();
        for (Shown car : DemoCharts.shown("orchard-estate", Direction.LEFT)) {
            cars.add(new Shown(
                    car.name() + " and a name that goes on, ".repeat(12) + "x".repeat(200),
                    car.style(),
                    car.car(),
                    car.turn(),
                    car.sums()));
        }
        DemoCharts.all(cars, Units.METRIC).forEach((name, chart) -> {
            BufferedImage image = new BufferedImage(900, 500, BufferedImage.TYPE_INT_RGB);
            check(name, paint(chart, Theme.light(12), 900, 500, image), 900, 500);
        });
    }

    @Test
    void whatIsReadOffAPlaceIsPaintedThere() {
        Chart chart = DemoCharts.frequencies(Units.METRIC);
        BufferedImage image = new BufferedImage(900, 500, BufferedImage.TYPE_INT_RGB);
        Painted painted = paint(chart, Theme.light(12), 900, 500, image);
        for (double frequency : new double[] {0.5, 1.4, 20}) {
            assertThat(painted.x().value(painted.x().px(frequency)))
                    .isCloseTo(frequency, org.assertj.core.api.Assertions.within(1e-9));
        }
        assertThat(painted.x().px(0.5)).isCloseTo(painted.plot().getX(), org.assertj.core.api.Assertions.within(1e-9));
        assertThat(painted.x().px(20))
                .isCloseTo(painted.plot().getMaxX(), org.assertj.core.api.Assertions.within(1e-6));
        double octave = painted.x().px(2) - painted.x().px(1);
        assertThat(painted.x().px(20) - painted.x().px(10))
                .isCloseTo(octave, org.assertj.core.api.Assertions.within(1e-6));
    }

    @Test
    void anSvgIsWellFormedHoldsItsWordsAndIsTheSameEachTime() throws Exception {
        List<Shown> cars = DemoCharts.shown("harbour-saloon", Direction.LEFT).subList(0, 2);
        Chart chart = TurnCharts.understeerGradient(cars, Units.METRIC);
        Picture picture = ChartPainter.picture(chart, Theme.paper(12), 800, 400);
        String svg = picture.svg();
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        assertThat(document.getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(document.getDocumentElement().getAttribute("width")).isEqualTo("800");
        String words = document.getDocumentElement().getTextContent();
        assertThat(words).contains("Understeer gradient", "lateral acceleration, g", "Lowered: limit", "brisk 0.5 g");
        assertThat(svg).contains("Roboto");
        assertThat(ChartPainter.picture(chart, Theme.paper(12), 800, 400).svg()).isEqualTo(svg);
    }

    @Test
    void aPngIsAsLargeAsItsScaleSays() throws Exception {
        Chart chart = DemoCharts.search(Units.IMPERIAL);
        byte[] png = ChartPainter.picture(chart, Theme.light(12), 400, 300).png(2.5);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(image.getWidth()).isEqualTo(1000);
        assertThat(image.getHeight()).isEqualTo(750);
    }

    @Test
    void aPictureOfOnePixelIsNoAccident() {
        for (Chart chart : DemoCharts.all(DemoCharts.shown("orchard-estate", Direction.LEFT), Units.METRIC)
                .values()) {
            for (int size : new int[] {1, 30, 90}) {
                BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
                assertThat(paint(chart, Theme.light(12), size, size, image)).isNotNull();
            }
        }
    }
}
