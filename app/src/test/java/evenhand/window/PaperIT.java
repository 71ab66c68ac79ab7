package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.Chart;
import evenhand.chart.ChartView;
import evenhand.chart.ChartWish;
import evenhand.chart.Part;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.question.Questions;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import javax.print.StreamPrintServiceFactory;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** What leaves the window on paper, in files and by the clipboard; and charts under the mouse. */
class PaperIT extends AtTheWindow {
    private ChartView chart() {
        return hands.find(ChartView.class, "chart 0");
    }

    private void wish(ChartWish.Kind kind, Path file) {
        hands.files.add(file);
        ChartView view = chart();
        Hands.see(() -> {
            ChartWish wish = new ChartWish(kind, view.chart(), view.zoom());
            new Keeping(hands, hands.pane().notice()).accept(wish);
            return true;
        });
    }

    @Test
    void aChartIsKeptAsSvgWithTheTitlesOfItsAxes() throws Exception {
        Path file = folder.resolve("grip.svg");
        wish(ChartWish.Kind.SVG, file);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Document document = factory.newDocumentBuilder().parse(file.toFile());
        assertThat(document.getDocumentElement().getTagName()).isEqualTo("svg");
        Chart chart = chart().chart();
        assertThat(document.getDocumentElement().getTextContent())
                .contains(chart.across().title(), chart.up().title());
    }

    @Test
    void aChartIsKeptAsASharpPictureOnWhite() throws Exception {
        hands.act(new LookAct.ShowDark(true));
        hands.answered();
        Path file = folder.resolve("grip.png");
        wish(ChartWish.Kind.PNG, file);
        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(image.getWidth()).isEqualTo(1800);
        assertThat(image.getHeight()).isEqualTo(1120);
        assertThat(image.getRGB(1, 1) & 0xffffff).isEqualTo(0xffffff);
    }

    @Test
    void aChartIsKeptAsTheNumbersThatItShows() throws Exception {
        Path file = folder.resolve("grip.csv");
        wish(ChartWish.Kind.CSV, file);
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        Chart chart = chart().chart();
        assertThat(lines.get(0)).contains(chart.across().title(), chart.up().title());
        long points =
                chart.lines().stream().mapToLong(line -> line.points().size()).sum();
        assertThat(lines.stream().filter(line -> line.startsWith("curve,"))).hasSize((int) points);
        Part.Point last = chart.lines().get(0).points().get(3);
        assertThat(lines.get(4)).endsWith("," + (last.x() + 0.0) + "," + (last.y() + 0.0));
    }

    @Test
    void aChartThatCannotBeKeptIsSaidSo() throws Exception {
        Path noFolder = Files.writeString(folder.resolve("a-file"), "").resolve("grip.svg");
        wish(ChartWish.Kind.SVG, noFolder);
        assertThat(Hands.see(() -> hands.pane().notice().text())).startsWith("Cannot write " + noFolder);
        Path full = Path.of("/dev/full");
        if (Files.exists(full)) {
            wish(ChartWish.Kind.PNG, full);
            assertThat(Hands.see(() -> hands.pane().notice().text())).startsWith("Cannot write /dev/full");
        }
    }

    @Test
    void aChartIsCopiedAsAPicture() throws Exception {
        wish(ChartWish.Kind.COPY, folder.resolve("unused"));
        Image image = (Image) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.imageFlavor);
        assertThat(image.getWidth(null)).isEqualTo(1800);
        assertThat(image.getHeight(null)).isEqualTo(1120);
    }

    @Test
    void theCrossHairNamesValuesUnderTheMouseAndADragZoomsUntilADoubleClick() {
        ChartView view = chart();
        int width = Hands.see(view::getWidth);
        int height = Hands.see(view::getHeight);
        hands.hover(view, width / 2, height / 2);
        Hands.until("the cross-hair", () -> view.crossHair() != null);
        assertThat(Hands.see(() -> view.crossHair().values())).isNotEmpty();
        double all = Hands.see(() -> view.zoom().across().width());
        hands.drag(view, width / 3, height / 3, 2 * width / 3, 2 * height / 3);
        assertThat(Hands.see(() -> view.zoom().across().width())).isBetween(0.2 * all, 0.8 * all);
        hands.click(view, width / 2, height / 2);
        hands.click(view, width / 2, height / 2);
        Hands.until("all of it again", () -> view.zoom().across().width() == all);
    }

    @Test
    void allPagesTogetherShowTheWholeAnswerAndCutNoLine() throws Exception {
        for (Question question : Questions.ALL) {
            hands.act(new LookAct.Ask(question.key()));
            hands.answered();
            AnswerPane shown = hands.pane().answer();
            int room = Hands.see(() -> shown.getWidth() * 4 / 3);
            List<Integer> ends = Hands.see(() -> Printing.ends(shown, room));
            List<int[]> pieces = Hands.see(() -> Printing.pieces(shown));
            assertThat(pieces).as(question.words()).isNotEmpty();
            assertThat(ends).as(question.words()).isSorted().endsWith(Hands.see(shown::getHeight));
            int top = 0;
            for (int end : ends) {
                assertThat(end - top).as(question.words()).isBetween(0, room);
                for (int[] piece : pieces) {
                    assertThat(piece[0] >= end || piece[1] <= end || piece[1] - piece[0] > room)
                            .as(question.words() + ": cut at " + end + " of " + piece[0] + " to " + piece[1])
                            .isTrue();
                }
                top = end;
            }
        }
    }

    @Test
    void thePagesPaintedAreThoseOfTheAnswer() throws Exception {
        AnswerPane shown = hands.pane().answer();
        PageFormat format = new PageFormat();
        Printable pages = Hands.see(() -> Printing.pages(shown));
        int page = 0;
        int inked = 0;
        while (true) {
            BufferedImage image = new BufferedImage(612, 792, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            g.setColor(java.awt.Color.WHITE);
            g.fillRect(0, 0, 612, 792);
            int number = page;
            int state = Hands.see(() -> pages.print(g, format, number));
            g.dispose();
            if (state == Printable.NO_SUCH_PAGE) {
                break;
            }
            inked += dark(image) > 200 ? 1 : 0;
            page++;
        }
        assertThat(page).isPositive();
        assertThat(inked).isEqualTo(page);
    }

    private static int dark(BufferedImage image) {
        int dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark += (image.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
            }
        }
        return dark;
    }

    @Test
    void aPrinterGetsAllPages() throws Exception {
        StreamPrintServiceFactory[] factories = PrinterJob.lookupStreamPrintServices("application/postscript");
        assertThat(factories).isNotEmpty();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setPrintService(factories[0].getPrintService(out));
        job.setPrintable(Printing.pages(hands.pane().answer()));
        Hands.see(() -> {
            job.print();
            return true;
        });
        assertThat(out.toString(StandardCharsets.ISO_8859_1)).startsWith("%!PS").contains("showpage");
    }
}
