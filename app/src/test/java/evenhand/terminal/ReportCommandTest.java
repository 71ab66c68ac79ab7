package evenhand.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.terminal.asked.Status;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {
    @TempDir
    Path folder;

    private String car;

    @BeforeEach
    void writeCar() {
        car = Run.car(folder).toString();
    }

    private String out(String name) {
        return folder.resolve(name).toString();
    }

    private Run stiffer(String name, String... more) {
        String[] args = {"report", car, "-o", out(name), "--setup", "Flatter, stiffer"};
        String[] all = java.util.Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return Run.of(all);
    }

    private String text(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(name).toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private java.util.List<String> files() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aPdfIsWrittenAndNothingElse() throws IOException {
        Run run = stiffer("mule.pdf", "--date", "2026-05-04", "--for", "owner, Engineer");
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).isEmpty();
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(files()).containsExactly("mule.json", "mule.pdf");
        assertThat(text("mule.pdf"))
                .contains("Test mule, “blue”")
                .contains("2026-05-04")
                .contains("For the owner: set-up “Flatter, stiffer”, compared with “As bought”")
                .contains("For the engineer: set-up")
                .contains("front bar roll stiffness goes from none to 300 N·m/deg")
                .contains("no proof of strength");
    }

    @Test
    void theSameFileGivesTheSameReport() throws IOException {
        for (String kind : new String[] {"pdf", "html", "csv"}) {
            stiffer("one." + kind);
            stiffer("two." + kind);
            assertThat(Files.readAllBytes(folder.resolve("one." + kind)))
                    .as(kind)
                    .isNotEmpty()
                    .isEqualTo(Files.readAllBytes(folder.resolve("two." + kind)));
        }
    }

    @Test
    void aFileThatIsThereIsKeptUnlessForced() throws IOException {
        Path there = Files.writeString(folder.resolve("there.pdf"), "mine");
        Run run = stiffer("there.pdf");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).isEqualTo("evenhand report: " + there + ": is there already; --force writes over it\n");
        assertThat(there).hasContent("mine");
        assertThat(stiffer("there.pdf", "--force").status()).isEqualTo(Status.DONE);
        assertThat(Files.size(there)).isGreaterThan(10_000);
    }

    @Test
    void whereNothingCanBeWrittenOneLineSaysSo() throws IOException {
        Run lost = Run.of("report", car, "-o", out("nowhere/x.pdf"));
        assertThat(lost.status()).isEqualTo(Status.WRONG);
        assertThat(lost.err()).contains("there is no folder").hasLineCount(1);
        Run kind = Run.of("report", car, "-o", out("x.doc"));
        assertThat(kind.status()).isEqualTo(Status.WRONG);
        assertThat(kind.err())
                .contains("Let its name end in .pdf, .html or .csv")
                .hasLineCount(1);
        Files.createDirectory(folder.resolve("f.pdf"));
        assertThat(Run.of("report", car, "-o", out("f.pdf"), "--force").err()).contains("is a folder");
        assertThat(Run.of("report", car).err()).contains("-o: where to?");
    }

    @Test
    void severalFilesGoToAFolderEachUnderItsOwnName() throws IOException {
        Path papers = Files.createDirectory(folder.resolve("papers"));
        Path other = Files.copy(Path.of(car), folder.resolve("other.json"));
        Path broken = Files.writeString(folder.resolve("broken.json"), "{");
        Run run = Run.of("report", car, broken.toString(), other.toString(), "--as", "csv", "-o", papers.toString());
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err()).contains("broken.json:1:").hasLineCount(1);
        Run alone = stiffer("alone.csv");
        assertThat(alone.status()).isEqualTo(Status.DONE);
        try (var written = Files.list(papers)) {
            assertThat(written.map(file -> file.getFileName().toString()).sorted())
                    .containsExactly("mule.csv", "other.csv");
        }
        assertThat(papers.resolve("mule.csv")).hasSameBinaryContentAs(papers.resolve("other.csv"));

        Run again = Run.of("report", car, "--as", "csv", "-o", papers.toString());
        assertThat(again.status()).isEqualTo(Status.WRONG);
        assertThat(again.err()).contains("mule.csv: is there already");
        assertThat(Run.of("report", car, car, "-o", out("one.pdf")).err()).contains("is no folder");
        assertThat(Run.of("report", car, "--as", "doc", "-o", papers.toString()).err())
                .contains("--as \"doc\": write pdf, html or csv");
    }

    @Test
    void severalReadersGoToOneFileOrEachToHisOwnInAFolder() throws IOException {
        Path papers = Files.createDirectory(folder.resolve("papers"));
        assertThat(stiffer("papers", "--for", "inspector,owner", "--as", "html").status())
                .isEqualTo(Status.DONE);
        assertThat(papers.resolve("mule.html"))
                .content()
                .contains("For the owner: ")
                .doesNotContain("For the insp");
        assertThat(papers.resolve("mule-inspector.html")).content().contains("For the inspector: ");
        assertThat(stiffer("papers", "--for", "inspector,owner").status()).isEqualTo(Status.DONE);
        assertThat(papers.resolve("mule-inspector.pdf")).isNotEmptyFile();
    }

    @Test
    void aReaderWhomNobodyKnowsIsRefusedInOneLine() {
        assertThat(stiffer("x.pdf", "--for", "banker").err())
                .isEqualTo("evenhand report: --for \"banker\": write owner, engineer, inspector, workshop, handover, or"
                        + " several with commas between them\n");
        assertThat(stiffer("x.csv", "--for", "engineer").err()).contains("set-up sheet alone; leave --for away");
        assertThat(folder.resolve("x.pdf")).doesNotExist();
    }

    @Test
    void wrongOptionsAreNamed() {
        assertThat(stiffer("x.pdf", "--complaint", "leens").err())
                .contains("--complaint \"leens\": write \"pushes\" or")
                .hasLineCount(1);
        assertThat(stiffer("x.pdf", "--paper", "a5").err()).contains("--paper \"a5\": write a4 or letter");
        assertThat(stiffer("x.pdf", "--date", "yesterday").err()).contains("--date \"yesterday\": write year");
        assertThat(stiffer("x.pdf", "--base", "As baught").err()).contains("did you mean \"As bought\"?");
        assertThat(folder.resolve("x.pdf")).doesNotExist();
    }

    @Test
    void aSetUpWithoutAnAnswerIsSaidSoAndTheRestIsPrinted() throws IOException {
        Run run = Run.of("report", car, "-o", out("jelly.pdf"), "--for", "owner,workshop");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(run.err())
                .startsWith("evenhand report: no answer for \"Jelly\": ")
                .hasLineCount(1);
        assertThat(text("jelly.pdf"))
                .contains("“Jelly” has no answer: ")
                .contains("so there is no sheet")
                .doesNotContain("signature")
                .contains("For the workshop: ")
                .contains("no proof of strength");
    }

    @Test
    void aBaseWithoutAnAnswerLeavesTheChosenItsOwn() throws IOException {
        Run run = stiffer("base.pdf", "--base", "Jelly");
        assertThat(run.status()).isEqualTo(Status.NO_ANSWER);
        assertThat(text("base.pdf")).contains("“Jelly” has no answer: ").contains("How sure this is");
    }

    private String withPicture(String picture) {
        return Run.file(
                        folder,
                        "shop.json",
                        Run.CAR.replace(
                                "\"evenhand\": 1,",
                                "\"evenhand\": 1, \"shop\": {\"name\": \"Two Bays & Sons\", \"picture\": \"" + picture
                                        + "\"},"))
                .toString();
    }

    @Test
    void theShopsPictureMustBeThereAndBeOne() throws IOException {
        Run missing = Run.of("report", withPicture("sign.png"), "-o", out("s.pdf"));
        assertThat(missing.status()).isEqualTo(Status.WRONG);
        assertThat(missing.err())
                .startsWith(folder.resolve("shop.json") + ":2:65: shop.picture: \"sign.png\" is not there")
                .hasLineCount(1);
        Files.writeString(folder.resolve("sign.png"), "no picture at all");
        Run none = Run.of("report", withPicture("sign.png"), "-o", out("s.pdf"));
        assertThat(none.status()).isEqualTo(Status.WRONG);
        assertThat(none.err())
                .contains("shop.picture: \"sign.png\" is no picture")
                .hasLineCount(1);
        assertThat(folder.resolve("s.pdf")).doesNotExist();
        BufferedImage image = new BufferedImage(1200, 300, BufferedImage.TYPE_INT_RGB);
        ImageIO.write(image, "png", folder.resolve("sign.png").toFile());
        Run found = Run.of("report", withPicture("sign.png"), "-o", out("s.pdf"), "--setup", "As bought");
        assertThat(found.status()).isEqualTo(Status.DONE);
        assertThat(text("s.pdf")).contains("Two Bays & Sons");
    }

    @Test
    void theSheetAloneIsCsv() throws IOException {
        assertThat(stiffer("sheet.csv").status()).isEqualTo(Status.DONE);
        assertThat(Files.readAllLines(folder.resolve("sheet.csv")))
                .startsWith("setup,path,what,value,tolerance,before,changed")
                .contains("\"Flatter, stiffer\",front.bar.rollStiffness,anti-roll bar,300 N·m/deg,,none,yes");
    }

    @Test
    void lettersOfOtherScriptsAndLongNamesDoNotStopIt() throws IOException {
        String name = "\u05E2\u05D2\u05DC\u05D4 " + "\u8ECA\u9AD8 ".repeat(30) + "\uE123";
        String file = Run.file(folder, "far.json", Run.CAR.replace("Flatter, stiffer", name))
                .toString();
        Run run = Run.of("report", file, "-o", out("far.pdf"), "--setup", name, "--paper", "letter");
        assertThat(run.status()).isEqualTo(Status.DONE);
        assertThat(run.err()).contains("U+E123").contains("shown as").hasLineCount(1);
    }

    @Test
    void noNameOfAFileRunsInASpreadsheet() throws IOException {
        String planted = Files.readString(Path.of(car))
                .replace(
                        "{\"name\": \"As bought\"}",
                        "{\"name\": \"=1+1\", \"sheet\": {\"@castor\": \"+1+cmd|' /C calc'!A0\"}}");
        Files.writeString(Path.of(car), planted);
        assertThat(Run.of("report", car, "--setup", "=1+1", "-o", out("sheet.csv"))
                        .status())
                .isEqualTo(Status.DONE);
        assertThat(folder.resolve("sheet.csv"))
                .content()
                .contains("\"'=1+1\",sheet,\"'@castor\",\"'+1+cmd|' /C calc'!A0\",")
                .doesNotContain("\n=", ",=", ",@", ",+1+");
        assertThat(Run.of("balance", car, "--csv", "--setup", "=1+1").out())
                .contains("\n\"'=1+1\",")
                .containsPattern(",-\\d+\\.\\d+,") // a slip angle to the right
                .doesNotContain("\n=");
    }

    /** Another's file was overwritten through a link of a name that could be foreseen. */
    @Test
    void noLinkThatWasPlantedBesideTheReportIsFollowed() throws IOException {
        Path victim = Files.writeString(folder.resolve("victim.txt"), "mine");
        Files.createSymbolicLink(folder.resolve(".sheet.csv.part"), victim);
        assertThat(stiffer("sheet.csv").status()).isEqualTo(Status.DONE);
        assertThat(victim).hasContent("mine");
        assertThat(Files.size(folder.resolve("sheet.csv"))).isGreaterThan(100);
    }

    @Test
    void aWriteProtectedReportIsNotForced() throws IOException {
        Path there = Files.writeString(folder.resolve("there.csv"), "mine");
        assertThat(there.toFile().setWritable(false)).isTrue();
        Run run = stiffer("there.csv", "--force");
        assertThat(run.status()).isEqualTo(Status.WRONG);
        assertThat(run.err())
                .isEqualTo("evenhand report: " + there
                        + ": is write-protected; write another name, or let it be written first\n");
        assertThat(there).hasContent("mine");
    }
}
