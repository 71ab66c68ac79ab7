package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.OwnerCharts;
import evenhand.words.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

class PdfTagsTest {
    private static final List<Block.Row> MANY = java.util.stream.IntStream.range(0, 90)
            .mapToObj(i -> Block.Row.of("row " + i, "1"))
            .toList();

    private static byte[] paper(String... titles) {
        List<Paper> papers = new ArrayList<>();
        for (String title : titles) {
            papers.add(new Paper(
                    "A car",
                    title,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(
                            new Section(
                                    "First",
                                    false,
                                    List.of(
                                            new Block.Heading("Heading"),
                                            Block.Text.plain("Words of a paragraph. ".repeat(400)),
                                            new Block.Points(List.of("one point", "another")),
                                            Block.Figures.even(
                                                    0.3,
                                                    new Block.Plot(OwnerCharts.whichEnd(List.of(), Units.METRIC))))),
                            new Section(
                                    "Second",
                                    true,
                                    List.of(new Block.Table(
                                            List.of(Block.Column.words("what", 1), Block.Column.number("n", 1)),
                                            MANY))))));
        }
        return PdfWriter.write(papers, PaperSize.A4).bytes();
    }

    /** All elements below one, with their depth by blanks: in the order in which they are read. */
    private static void tree(PDStructureNode node, List<PDStructureElement> all) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                all.add(element);
                tree(element, all);
            }
        }
    }

    private static List<PDStructureElement> tree(PDDocument document) {
        List<PDStructureElement> all = new ArrayList<>();
        tree(document.getDocumentCatalog().getStructureTreeRoot(), all);
        return all;
    }

    @Test
    void headingsParagraphsTablesAndFiguresAreToldAsWhatTheyAre() throws IOException {
        try (PDDocument document = Loader.loadPDF(paper("For the owner"))) {
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
            assertThat(document.getDocumentCatalog().getViewerPreferences().displayDocTitle())
                    .isTrue();
            assertThat(document.getDocumentInformation().getAuthor()).isNull();
            List<PDStructureElement> all = tree(document);
            assertThat(all.stream().map(PDStructureElement::getStructureType).limit(16))
                    .containsExactly(
                            "Document",
                            "Part",
                            "H1",
                            "P",
                            "Sect",
                            "H2",
                            "H3",
                            "P",
                            "L",
                            "LI",
                            "Lbl",
                            "LBody",
                            "LI",
                            "Lbl",
                            "LBody",
                            "Figure");
            assertThat(all)
                    .filteredOn(one -> one.getStructureType().equals("TH"))
                    .hasSize(2);
            assertThat(all)
                    .filteredOn(one -> one.getStructureType().equals("TD"))
                    .hasSize(180);
            assertThat(all)
                    .filteredOn(one -> one.getStructureType().equals("Figure"))
                    .extracting(PDStructureElement::getAlternateDescription)
                    .containsExactly("Which end works harder");
        }
    }

    @Test
    void everyWordOnAPageBelongsToAnElementOrIsAnArtefact() throws IOException {
        try (PDDocument document = Loader.loadPDF(paper("For the owner"))) {
            COSArray numbers = document.getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getParentTree()
                    .getCOSObject()
                    .getCOSArray(COSName.NUMS);
            for (PDPage page : document.getPages()) {
                PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
                extractor.processPage(page);
                COSBase own = numbers.getObject(2 * page.getStructParents() + 1);
                Set<Integer> places = new HashSet<>();
                for (PDMarkedContent content : extractor.getMarkedContents()) {
                    if (content.getTag().equals("Artifact")) {
                        continue;
                    }
                    assertThat(places.add(content.getMCID()))
                            .as("each place once")
                            .isTrue();
                    PDStructureElement of = new PDStructureElement(
                            (org.apache.pdfbox.cos.COSDictionary) ((COSArray) own).getObject(content.getMCID()));
                    assertThat(of.getStructureType()).isEqualTo(content.getTag());
                }
                assertThat(places).hasSize(((COSArray) own).size());
                long marked = extractor.getMarkedContents().stream()
                        .flatMap(content -> content.getContents().stream())
                        .filter(TextPosition.class::isInstance)
                        .count();
                assertThat(marked).isPositive();
            }
        }
    }

    @Test
    void bookmarksLeadToSectionsAndHeadingsAndToEachPaperOfSeveral() throws IOException {
        try (PDDocument document = Loader.loadPDF(paper("For the owner"))) {
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(item.getTitle());
                item.children().forEach(below -> titles.add("> " + below.getTitle()));
            }
            assertThat(titles).containsExactly("First", "> Heading", "Second");
            PDOutlineItem last =
                    document.getDocumentCatalog().getDocumentOutline().getLastChild();
            assertThat(document.getPages().indexOf(last.findDestinationPage(document)))
                    .isEqualTo(document.getNumberOfPages() - 2);
        }
        try (PDDocument document = Loader.loadPDF(paper("For the owner", "For the engineer"))) {
            assertThat(document.getDocumentCatalog().getDocumentOutline().children())
                    .extracting(PDOutlineItem::getTitle)
                    .containsExactly("For the owner", "For the engineer");
        }
    }
}
