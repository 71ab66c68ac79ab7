package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.words.Units;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class HtmlWriterTest {
    private static final String NASTY = "<script>alert(\"x\")</script> & \u0000 \uD800 ]]>";

    private static Document parsed(byte[] html) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(html));
    }

    @Test
    void whatPeopleWriteIsTextAndNeverMarkup() throws Exception {
        Paper paper = new Paper(
                NASTY,
                NASTY,
                Optional.of(NASTY),
                Optional.empty(),
                Optional.empty(),
                List.of(new Section(
                        NASTY,
                        true,
                        List.of(
                                new Block.Heading(NASTY),
                                Block.Text.plain(NASTY),
                                new Block.Points(List.of(NASTY)),
                                new Block.Fields(List.of(NASTY)),
                                new Block.Table(
                                        List.of(Block.Column.words(NASTY, 1)), List.of(Block.Row.of(NASTY)))))));
        Document document = parsed(HtmlWriter.write(paper).bytes());
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(document.getElementsByTagName("h1").item(0).getTextContent())
                .isEqualTo("<script>alert(“x”)</script> & \uFFFD \uFFFD ]]>");
    }

    @Test
    void aReportIsWellFormedAloneAndItsPicturesDoNotShareNames() throws Exception {
        byte[] html = HtmlWriter.write(Papers.of(Reports.demo("orchard-estate", Units.METRIC), Reader.all()))
                .bytes();
        Document document = parsed(html);
        assertThat(document.getElementsByTagName("svg").getLength()).isGreaterThan(5);
        Set<String> ids = new HashSet<>();
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            assertThat(id.isEmpty() || ids.add(id)).as("id %s", id).isTrue();
        }
        String text = new String(html, StandardCharsets.UTF_8);
        assertThat(text).doesNotContain("src=\"http").doesNotContain("url(http").doesNotContain("@import");
        assertThat(text.replaceAll("http://www\\.w3\\.org/[0-9a-zA-Z/]+", "")).doesNotContain("http:", "https:");
        assertThat(text)
                .contains("prefers-color-scheme:dark")
                .contains("@media print")
                .contains("max-width:600px");
        assertThat(text).contains("What you asked").contains("Before you drive it");
        NodeList pictures = document.getElementsByTagName("svg");
        for (int i = 0; i < pictures.getLength(); i++) {
            Element picture = (Element) pictures.item(i);
            assertThat(picture.getAttribute("role")).isEqualTo("img");
            assertThat(ids).contains(picture.getAttribute("aria-labelledby"));
            assertThat(picture.getElementsByTagName("title").item(0).getTextContent())
                    .isNotBlank();
        }
        NodeList tables = document.getElementsByTagName("table");
        for (int i = 0; i < tables.getLength(); i++) {
            Element table = (Element) tables.item(i);
            assertThat(table.getElementsByTagName("caption").item(0).getTextContent())
                    .isNotBlank();
            NodeList heads = table.getElementsByTagName("th");
            for (int k = 0; k < heads.getLength(); k++) {
                assertThat(((Element) heads.item(k)).getAttribute("scope")).isIn("col", "row");
            }
        }
        NodeList links = document.getElementsByTagName("a");
        assertThat(links.getLength()).isGreaterThan(10);
        for (int i = 0; i < links.getLength(); i++) {
            assertThat(ids)
                    .contains(((Element) links.item(i)).getAttribute("href").substring(1));
        }
        java.util.regex.Pattern.compile("(?:fill|stroke)=\"(rgb[^\"]*)\"")
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .distinct()
                .forEach(colour -> assertThat(text).contains("svg [fill=\"" + colour + "\"]{fill:"));
        for (String colour : Set.of("white", "rgb(1,1,1)", "rgb(84,84,84)", "rgb(220,220,220)")) {
            assertThat(text).contains("svg [fill=\"" + colour + "\"]{fill:rgb(");
        }
    }

    @Test
    void aPageOfOneReaderIsSmall() {
        Findings findings = Reports.demo("harbour-saloon", Units.METRIC);
        assertThat(HtmlWriter.write(Papers.of(findings, Reader.OWNER)).bytes()).hasSizeLessThan(300_000);
    }

    @Test
    void quotesOpenAndCloseAndNoNumberIsTornFromItsUnit() {
        assertThat(Typeset.of("\"As bought\" (\"B\"), the car's 12 mm ± 3 mm, 4.2 deg/g, 40 N·m/deg, 5 % of 3 girls"))
                .isEqualTo("“As bought” (“B”), the car’s 12\u00a0mm ±\u00a03\u00a0mm, 4.2\u00a0deg/g, 40\u00a0N·m/deg,"
                        + " 5\u00a0% of 3 girls");
    }
}
