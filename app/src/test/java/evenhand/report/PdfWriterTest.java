package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenhand.words.Units;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PdfWriterTest {
    private static final String LONG = "The set-up that nobody could agree upon ".repeat(12);
    private static final String UNBROKEN = "Donaudampfschifffahrtsgesellschaft".repeat(14);
    private static final String FOREIGN = "Żółć Ærø Łódź ğ – עגלה שחורה – 車高短 – سيارة – 🚗 \uD800 \u0007";

    private static Paper paper(String name) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(name));
        blocks.add(Block.Text.plain(name));
        blocks.add(new Block.Points(List.of(name, name)));
        blocks.add(new Block.Table(
                List.of(Block.Column.words(name, 1), Block.Column.number("n", 1), Block.Column.blank("box", 1)),
                List.of(
                        new Block.Row(List.of(name, name, ""), true),
                        Block.Row.of("x", "1", ""),
                        Block.Row.of(name.repeat(12), "2", ""))));
        blocks.add(new Block.Fields(List.of(name, "date")));
        return new Paper(
                name,
                name,
                Optional.of(name),
                Optional.empty(),
                Optional.empty(),
                List.of(new Section(name, false, blocks), new Section("On a new page", true, blocks)));
    }

    /** All letters with the page that they stand on. */
    private static List<TextPosition> letters(byte[] pdf, PaperSize size) throws IOException {
        List<TextPosition> all = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth()).isEqualTo(size.width());
                assertThat(page.getMediaBox().getHeight()).isEqualTo(size.height());
            }
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition position) {
                    all.add(position);
                }
            }.getText(document);
        }
        return all;
    }

    static void nothingOverflows(byte[] pdf, PaperSize size) throws IOException {
        List<TextPosition> letters = letters(pdf, size);
        assertThat(letters).isNotEmpty();
        for (TextPosition letter : letters) {
            assertThat(letter.getXDirAdj())
                    .as(letter.getUnicode())
                    .isGreaterThanOrEqualTo((float) PdfWriter.MARGIN - 1);
            if (!letter.getUnicode().isBlank()) {
                assertThat(letter.getXDirAdj() + letter.getWidthDirAdj())
                        .as(letter.getUnicode())
                        .isLessThanOrEqualTo((float) (size.width() - PdfWriter.MARGIN) + 1);
            }
            assertThat(letter.getYDirAdj())
                    .isBetween((float) PdfWriter.MARGIN - 10, (float) (size.height() - PdfWriter.MARGIN + 16));
        }
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void namesOfAnyLengthAndScriptStayInsideTheMargins(PaperSize size) throws IOException {
        for (String name : List.of("A", LONG, UNBROKEN, FOREIGN, " ", "")) {
            nothingOverflows(PdfWriter.write(paper(name), size).bytes(), size);
        }
    }

    @Test
    void aLetterThatNoFontHasIsShownAsABoxAndToldOnce() {
        Printed printed = PdfWriter.write(paper("Oily \uE123 rag"), PaperSize.A4);
        assertThat(printed.remarks()).containsExactly("no font here has U+E123: shown as ◊");
        assertThat(Reports.text(printed.bytes())).contains("Oily ◊ rag");
        assertThat(PdfWriter.write(paper("Oily rag"), PaperSize.A4).remarks()).isEmpty();
    }

    @Test
    void wordsAreFoundAgainByAReader() {
        String text = Reports.text(PdfWriter.write(paper("Coupé affûté, ± 5 °, φ = ½"), PaperSize.A4)
                .bytes());
        assertThat(text)
                .contains("Coupé affûté, ± 5 °, φ = ½")
                .contains("page 1 of 2")
                .contains("page 2 of 2");
    }

    @ParameterizedTest
    @ValueSource(strings = {"עגלה שחורה", "سيارة صغيرة لا", "Волга ğ ł", "車高短", "ราคาถูก", "한국 자동차"})
    void wordsInOtherScriptsAreFoundAgainWhereTheMachineHasThem(String name) {
        DrawnType machine = new DrawnType();
        assumeTrue(name.codePoints().allMatch(letter -> letter == ' ' || machine.has(letter)), "no font for " + name);
        Printed printed = PdfWriter.write(paper(name), PaperSize.A4);
        assertThat(printed.remarks()).isEmpty();
        assertThat(Reports.text(printed.bytes())).contains(name);
    }

    @Test
    void moreLettersThanOneFontHoldsAreFoundAgain() {
        StringBuilder many = new StringBuilder();
        DrawnType machine = new DrawnType();
        for (int letter = 0x0250; letter < 0x2400 && many.length() < 700; letter++) {
            if (Character.isLetter(letter)
                    && Character.getDirectionality(letter) == Character.DIRECTIONALITY_LEFT_TO_RIGHT
                    && machine.has(letter)) {
                many.appendCodePoint(letter).append(many.length() % 7 == 0 ? " " : "");
            }
        }
        assumeTrue(many.length() > 400, "too few fonts");
        String text = Reports.text(
                        PdfWriter.write(paper(many.toString()), PaperSize.A4).bytes())
                .replace(" ", "");
        assertThat(text.codePoints().boxed().toList())
                .containsAll(
                        many.toString().replace(" ", "").codePoints().boxed().toList());
    }

    @Test
    void theSamePaperGivesTheSameBytes() {
        Paper paper = paper("Twice");
        assertThat(PdfWriter.write(paper, PaperSize.A4).bytes())
                .isEqualTo(PdfWriter.write(paper, PaperSize.A4).bytes());
        Paper foreign = paper(FOREIGN);
        assertThat(PdfWriter.write(foreign, PaperSize.A4).bytes())
                .isEqualTo(PdfWriter.write(foreign, PaperSize.A4).bytes());
    }

    @Test
    void onlyADateThatIsAskedForIsInIt() throws IOException {
        Paper paper = paper("Dated");
        Paper dated = new Paper(
                paper.title(),
                paper.subtitle(),
                paper.shop(),
                paper.picture(),
                Optional.of(LocalDate.of(2026, 5, 4)),
                paper.sections());
        try (PDDocument without =
                        Loader.loadPDF(PdfWriter.write(paper, PaperSize.A4).bytes());
                PDDocument with =
                        Loader.loadPDF(PdfWriter.write(dated, PaperSize.A4).bytes())) {
            assertThat(without.getDocumentInformation().getCreationDate()).isNull();
            assertThat(with.getDocumentInformation().getCreationDate().toInstant())
                    .hasToString("2026-05-04T00:00:00Z");
        }
        assertThat(Reports.text(PdfWriter.write(dated, PaperSize.A4).bytes())).contains("2026-05-04");
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void aReportOfADemoCarHasItsPagesAndNothingOverflows(PaperSize size) throws IOException {
        List<Paper> papers = Papers.of(Reports.demo("harbour-saloon", Units.IMPERIAL), Reader.all());
        byte[] pdf = PdfWriter.write(papers, size).bytes();
        nothingOverflows(pdf, size);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isLessThan(35);
        }
        assertThat(Reports.text(pdf)).contains("lbf").contains("What you asked").contains("the lever between them");
    }
}
