package evenhand.report;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** Sets a paper as PDF. The same paper gives the same bytes. */
public final class PdfWriter {
    static final double MARGIN = 46;
    private static final double FOOT = 44;
    private static final double SIZE = 10;
    private static final double LINE = 13.2;
    private static final double QUIET_SIZE = 8.5;
    private static final double QUIET_LINE = 10.6;
    private static final double CELL = TableLayout.CELL;
    private static final double SECTION_SIZE = 13;
    private static final double HEADING_SIZE = 10;
    private static final double FIELD = 28;

    /** Width of the column of words beside which facts stand. */
    private static final double LEAD = 82;

    /** What must follow a heading on its page. */
    private static final double KEPT = 40;

    private static final Color INK = Color.BLACK;
    private static final Color QUIET = new Color(0x545454);
    private static final Color RULE = new Color(0xb8b8b8);
    private static final Color TINT = new Color(0xeaf1fc);
    private static final Color WARNING = new Color(0xb3261e);

    private final PDDocument document;
    private final PaperSize size;
    private final PdfType type;
    private final PdfPictures pictures;
    private final List<PDPage> pages = new ArrayList<>();
    private PDPageContentStream page;
    private double y;

    private PdfWriter(PDDocument document, PaperSize size) throws IOException {
        this.document = document;
        this.size = size;
        type = new PdfType(document);
        pictures = new PdfPictures(document, type);
        page = open();
    }

    public static Printed write(Paper paper, PaperSize size) {
        return write(List.of(paper), size);
    }

    /** Several papers bound into one file, each with pages of its own. */
    public static Printed write(List<Paper> papers, PaperSize size) {
        try (PDDocument document = new PDDocument()) {
            PdfWriter writer = new PdfWriter(document, size);
            writer.all(papers.get(0));
            for (Paper paper : papers.subList(1, papers.size())) {
                writer.pages.clear();
                writer.page = writer.open();
                writer.all(paper);
            }
            writer.type.close();
            document.setDocumentId(1L); // a clock otherwise
            describe(document, papers.get(0));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return new Printed(out.toByteArray(), writer.type.remarks());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void describe(PDDocument document, Paper paper) {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(paper.title());
        about.setSubject(paper.subtitle());
        about.setCreator("Evenhand");
        paper.date().ifPresent(date -> {
            Calendar day = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC));
            day.setTimeInMillis(date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
            about.setCreationDate(day);
        });
        document.setDocumentInformation(about);
        document.getDocumentCatalog().setLanguage("en-GB");
    }

    private double width() {
        return size.width() - 2 * MARGIN;
    }

    private PDPageContentStream open() throws IOException {
        PDPage next = new PDPage(new PDRectangle(size.width(), size.height()));
        document.addPage(next);
        pages.add(next);
        y = size.height() - MARGIN;
        return new PDPageContentStream(document, next);
    }

    private void newPage() throws IOException {
        page.close();
        page = open();
    }

    private boolean isFresh() {
        return y >= size.height() - MARGIN;
    }

    private double room() {
        return y - MARGIN - FOOT / 2;
    }

    private void need(double height) throws IOException {
        if (height > room() && !isFresh()) {
            newPage();
        }
    }

    private void all(Paper paper) throws IOException {
        head(paper);
        for (Section section : paper.sections()) {
            if (section.opensPage() && !isFresh()) {
                newPage();
            }
            section(section);
        }
        page.close();
        foot(paper);
    }

    private void head(Paper paper) throws IOException {
        double right = size.width() - MARGIN;
        double textWidth = width();
        if (paper.picture().isPresent()) {
            PDImageXObject image = LosslessFactory.createFromImage(
                    document, paper.picture().get().image());
            double scale = Math.min(150.0 / image.getWidth(), 56.0 / image.getHeight());
            double w = scale * image.getWidth();
            double h = scale * image.getHeight();
            page.drawImage(image, (float) (right - w), (float) (y - h), (float) w, (float) h);
            textWidth -= w + 16;
        }
        double top = y;
        if (paper.shop().isPresent()) {
            lines(paper.shop().get(), true, 9.5, 13, textWidth, QUIET, 0);
            y -= 3;
        }
        lines(paper.title(), true, 18, 22, textWidth, INK, 0);
        lines(paper.subtitle(), false, 10.5, 14, textWidth, QUIET, 0);
        if (paper.date().isPresent()) {
            lines(paper.date().get().toString(), false, 9.5, 13, textWidth, QUIET, 0);
        }
        if (paper.picture().isPresent()) {
            y = Math.min(y, top - 60);
        }
        y -= 4;
        rule(INK, 0.8);
        y -= 2;
    }

    private void rule(Color colour, double thick) throws IOException {
        line(MARGIN, y, size.width() - MARGIN, y, colour, thick);
    }

    private void line(double x1, double y1, double x2, double y2, Color colour, double thick) throws IOException {
        page.setStrokingColor(colour);
        page.setLineWidth((float) thick);
        page.moveTo((float) x1, (float) y1);
        page.lineTo((float) x2, (float) y2);
        page.stroke();
    }

    /** Lines of one text below one another, over as many pages as they need. */
    private void lines(
            String text, boolean bold, double size, double leading, double width, Color colour, double indent)
            throws IOException {
        for (String line : type.wrap(type.clean(text), bold, size, width - indent)) {
            need(leading);
            y -= leading;
            type.draw(page, line, MARGIN + indent, y + 0.25 * leading, bold, size, colour);
        }
    }

    private void section(Section section) throws IOException {
        need(SECTION_SIZE + 16 + following(section.blocks(), 0));
        if (!isFresh()) {
            y -= 9;
        }
        lines(section.title(), true, SECTION_SIZE, 17, width(), INK, 0);
        y -= 2;
        for (int i = 0; i < section.blocks().size(); i++) {
            if (section.blocks().get(i) instanceof Block.Heading) {
                need(HEADING_SIZE + 14 + following(section.blocks(), i + 1));
            }
            block(section.blocks().get(i));
        }
    }

    /** Height of what must stand on the page of the title or heading before it: quiet words, and the beginning of what they lead to. */
    private double following(List<Block> blocks, int from) {
        double height = 0;
        for (Block block : blocks.subList(from, blocks.size())) {
            if (block instanceof Block.Text text && text.tone() == Block.Tone.QUIET) {
                height += height(text);
            } else if (block instanceof Block.Figures figures) {
                return height + figures.height() * width();
            } else {
                return height
                        + (block instanceof Block.Table table ? laid(table).together() : KEPT);
            }
        }
        return height;
    }

    private double height(Block.Text text) {
        return type.wrap(type.clean(text.text()), false, QUIET_SIZE, width()).size() * QUIET_LINE + 4;
    }

    private void block(Block block) throws IOException {
        if (block instanceof Block.Heading heading) {
            y -= isFresh() ? 0 : 5;
            lines(heading.text(), true, HEADING_SIZE, 14, width(), INK, 0);
        } else if (block instanceof Block.Text text) {
            boolean quiet = text.tone() == Block.Tone.QUIET;
            Color colour = quiet ? QUIET : text.tone() == Block.Tone.WARNING ? WARNING : INK;
            lines(
                    text.text(),
                    text.tone() == Block.Tone.WARNING,
                    quiet ? QUIET_SIZE : SIZE,
                    quiet ? QUIET_LINE : LINE,
                    width(),
                    colour,
                    0);
            y -= 4;
        } else if (block instanceof Block.Points points) {
            for (String sentence : points.sentences()) {
                need(LINE);
                type.draw(page, "•", MARGIN + 1, y - 0.75 * LINE, false, SIZE, QUIET);
                lines(sentence, false, SIZE, LINE, width(), INK, 11);
                y -= 1.5;
            }
            y -= 3;
        } else if (block instanceof Block.Figures figures) {
            figures(figures);
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Facts facts) {
            facts(facts.facts());
        } else if (block instanceof Block.Fields fields) {
            fields(fields.labels());
        }
    }

    /** Each word in a column of its own, what belongs to it beside it; a fact is not torn. */
    private void facts(List<Block.Fact> facts) throws IOException {
        for (Block.Fact fact : facts) {
            boolean loud = fact.tone() == Block.Tone.WARNING;
            boolean quiet = fact.tone() == Block.Tone.QUIET;
            Color colour = loud ? WARNING : INK;
            double size = quiet ? TableLayout.SIZE : SIZE;
            double line = quiet ? TableLayout.LINE : LINE;
            List<String> leads = type.wrap(type.clean(fact.lead()), true, size, LEAD - CELL);
            List<String> texts = type.wrap(type.clean(fact.text()), loud, size, width() - LEAD);
            need(Math.max(leads.size(), texts.size()) * line);
            for (int i = 0; i < Math.max(leads.size(), texts.size()); i++) {
                need(line);
                y -= line;
                if (i < leads.size()) {
                    type.draw(page, leads.get(i), MARGIN, y + 0.25 * line, true, size, colour);
                }
                if (i < texts.size()) {
                    type.draw(page, texts.get(i), MARGIN + LEAD, y + 0.25 * line, loud, size, colour);
                }
            }
            y -= 2;
        }
        y -= 3;
    }

    private void figures(Block.Figures figures) throws IOException {
        double gap = 10;
        List<Integer> widths = figures.widths(width(), gap);
        int height = (int) (figures.height() * width());
        need(height);
        y -= height;
        double x = MARGIN;
        for (int i = 0; i < widths.size(); i++) {
            PDFormXObject form = pictures.form(figures.figures().get(i), widths.get(i), height);
            page.saveGraphicsState();
            page.transform(Matrix.getTranslateInstance((float) x, (float) y));
            page.drawForm(form);
            page.restoreGraphicsState();
            x += widths.get(i) + gap;
        }
        y -= 6;
    }

    private void fields(List<String> labels) throws IOException {
        int across = 3;
        double each = width() / across;
        for (int i = 0; i < labels.size(); i++) {
            if (i % across == 0) {
                need(FIELD + 4);
                y -= FIELD;
            }
            double x = MARGIN + i % across * each;
            page.setStrokingColor(RULE);
            page.setLineWidth(0.6f);
            page.addRect((float) x, (float) y, (float) (each - 4), (float) FIELD - 2);
            page.stroke();
            String label =
                    type.wrap(type.clean(labels.get(i)), false, 6.5, each - 10).get(0);
            type.draw(page, label, x + 3, y + FIELD - 10, false, 6.5, QUIET);
        }
        y -= 6;
    }

    private TableLayout laid(Block.Table table) {
        return new TableLayout(type, table, width(), size.height());
    }

    private void table(Block.Table table) throws IOException {
        TableLayout laid = laid(table);
        need(laid.together());
        heads(table, laid);
        for (int at = 0; at < laid.rows().size(); at++) {
            TableLayout.Lines lines = laid.rows().get(at);
            while (!lines.isEmpty()) {
                double height = lines.height();
                if (height > room() && !isFresh() && !(height > 12 * laid.line() && room() > 6 * laid.line())) {
                    newPage();
                    heads(table, laid);
                }
                int most = Math.max(1, (int) ((room() - 2 * CELL) / laid.line()));
                row(table, table.rows().get(at).marked(), laid, lines.first(most));
                lines = lines.rest(most);
            }
        }
        y -= 7;
    }

    private void heads(Block.Table table, TableLayout laid) throws IOException {
        TableLayout.Lines heads = laid.heads();
        double x = MARGIN;
        for (int i = 0; i < laid.columns(); i++) {
            words(table.columns().get(i), heads.cells().get(i), x, laid.width(i), laid, true, QUIET);
            x += laid.width(i);
        }
        y -= heads.height();
        rule(INK, 0.6);
    }

    private void row(Block.Table table, boolean marked, TableLayout laid, TableLayout.Lines lines) throws IOException {
        double height = lines.height();
        if (marked) {
            page.setNonStrokingColor(TINT);
            page.addRect((float) MARGIN, (float) (y - height), (float) width(), (float) height);
            page.fill();
        }
        double x = MARGIN;
        for (int i = 0; i < laid.columns(); i++) {
            Block.Column column = table.columns().get(i);
            if (column.kind() == Block.Kind.BLANK) {
                box(x + 2, laid.width(i) - 4, height);
            } else if (lines.boxes().contains(i)) {
                box(x + laid.width(i) - laid.box(i), laid.box(i) - 2, height);
            }
            words(column, lines.cells().get(i), x, laid.width(i), laid, marked, INK);
            x += laid.width(i);
        }
        y -= height;
        rule(RULE, 0.3);
    }

    /** White, for a pen. */
    private void box(double x, double width, double height) throws IOException {
        page.setNonStrokingColor(Color.WHITE);
        page.setStrokingColor(RULE);
        page.setLineWidth(0.5f);
        page.addRect((float) x, (float) (y - height + 1), (float) width, (float) height - 2);
        page.fillAndStroke();
    }

    /** The words of one cell. */
    private void words(
            Block.Column column,
            List<String> lines,
            double x,
            double width,
            TableLayout laid,
            boolean bold,
            Color colour)
            throws IOException {
        double at = y - CELL / 2;
        for (String line : lines) {
            at -= laid.line();
            double indent =
                    column.kind() == Block.Kind.NUMBER ? width - CELL - type.width(line, bold, laid.size()) : CELL;
            type.draw(page, line, x + indent, at + 0.25 * laid.line(), bold, laid.size(), colour);
        }
    }

    private void foot(Paper paper) throws IOException {
        String left =
                type.wrap(type.clean(paper.title()), false, 7.5, width() - 150).get(0);
        for (int i = 0; i < pages.size(); i++) {
            String right = "page " + (i + 1) + " of " + pages.size();
            try (PDPageContentStream under = new PDPageContentStream(
                    document, pages.get(i), PDPageContentStream.AppendMode.APPEND, true, true)) {
                double at = MARGIN - 14;
                type.draw(under, left, MARGIN, at, false, 7.5, QUIET);
                double width = type.width(right, false, 7.5);
                type.draw(under, right, size.width() - MARGIN - width, at, false, 7.5, QUIET);
            }
        }
    }
}
