package evenhand.report;

import evenhand.answers.Progress;
import java.util.ArrayList;
import java.util.List;

/**
 * A report, or the set-up sheet alone, that was written to its file; whoever asks for one, this is how.
 *
 * @param remarks what the reader of the file does not see: what could not be set as it was written, and set-ups without an answer
 * @param complete whether every set-up has an answer
 */
public record Delivery(List<String> remarks, boolean complete) {
    public Delivery {
        remarks = List.copyOf(remarks);
    }

    /**
     * Asks what is to be reported, and writes it for each of its readers: whole or not at all.
     *
     * @throws CannotReport where the file cannot be written
     * @throws java.util.concurrent.CancellationException if the progress was told to stop
     */
    public static Delivery write(
            Question question, List<Reader> readers, ReportFile target, PaperSize size, Progress progress)
            throws CannotReport {
        if (target.kind() == ReportFile.Kind.CSV) {
            target.write(SheetCsv.write(Papers.sheet(question)));
            return new Delivery(List.of(), true);
        }
        Findings findings = Findings.of(question, progress);
        List<Paper> papers = Papers.of(findings, readers);
        Printed printed =
                target.kind() == ReportFile.Kind.PDF ? PdfWriter.write(papers, size) : HtmlWriter.write(papers);
        target.write(printed.bytes());
        List<String> remarks = new ArrayList<>(printed.remarks());
        remarks.addAll(silences(findings));
        return new Delivery(remarks, findings.silent().isEmpty());
    }

    private static List<String> silences(Findings findings) {
        return findings.silent().stream()
                .flatMap(one -> one.silence().map(why -> "no answer for \"" + one.name() + "\": " + why).stream())
                .toList();
    }

    /**
     * The same pages to be looked at; nothing is written.
     *
     * @throws java.util.concurrent.CancellationException if the progress was told to stop
     */
    public static SeenPages seen(Question question, List<Reader> readers, PaperSize size, Progress progress) {
        return SeenPages.of(PdfWriter.write(Papers.of(Findings.of(question, progress), readers), size));
    }
}
