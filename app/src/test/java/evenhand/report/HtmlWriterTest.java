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
                .isEqualTo("<script>alert(\"x\")</script> & \uFFFD \uFFFD ]]>");
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
    }
}
