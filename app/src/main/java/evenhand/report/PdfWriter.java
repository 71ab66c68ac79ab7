package evenhand.report;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/** Sets a paper as PDF, with bookmarks and tags. The same paper gives the same bytes. */
public final class PdfWriter {
    static final double MARGIN = PdfSheets.MARGIN;
    private static final double SIZE = 10;
    private static final double LINE = 13.2;
    private static final double QUIET_SIZE = 8.5;
    private static final double QUIET_LINE = 10.6;
    private static final double SECTION_SIZE = 13;
    private static final double HEADING_SIZE = 10;
    private static final double FIELD = 28;

    /** Width of the column of words beside which facts stand. */
    private static final double LEAD = 82;

    /** What must follow a heading on its page. */
    private static final double KEPT = 40;

    /** A section lower than this part of a sheet is not torn. */
    private static final double WHOLE = 0.3;

    private static final Color INK = PdfSheets.INK;
    private static final Color QUIET = PdfSheets.QUIET;
    private static final Color WARNING = new Color(0xb3261e);

    private final PDDocument document;
    private final PaperSize size;
    private final PdfType type;
    private final PdfPictures pictures;
    private final PdfTags tags;
    private final PdfOutline outline;
    private PdfSheets sheets;
    /** What is being set belongs to it. */
    private PDStructureElement part;

    private PdfWriter(PDDocument document, PaperSize size, boolean several) throws IOException {
        this.document = document;
        this.size = size;
        type = new PdfType(document);
        pictures = new PdfPictures(document, type);
        tags = new PdfTags(document);
        outline = new PdfOutline(document, several);
        part = tags.top();
        sheets = new PdfSheets(document, size, type, tags);
    }

    public static Printed write(Paper paper, PaperSize size) {
        return write(List.of(paper), size);
    }

    /** Several papers bound into one file, each with pages of its own. */
    public static Printed write(List<Paper> papers, PaperSize size) {
        try (PDDocument document = new PDDocument()) {
            PdfWriter writer = new PdfWriter(document, size, papers.size() > 1);
            writer.all(papers.get(0));
            for (Paper paper : papers.subList(1, papers.size())) {
                writer.sheets = new PdfSheets(document, size, writer.type, writer.tags);
                writer.all(paper);
            }
            writer.type.close();
            writer.tags.close();
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
        PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
        shown.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(shown);
    }

    private double width() {
        return sheets.width();
    }

    private void all(Paper paper) throws IOException {
        PDStructureElement whole = PdfTags.in(tags.top(), StandardStructureTypes.PART);
        part = whole;
        outline.paper(paper.subtitle(), sheets.page(), sheets.y);
        head(paper);
        for (Section section : paper.sections()) {
            if (section.opensPage() && !sheets.isFresh()) {
                sheets.newPage();
            }
            part = PdfTags.in(whole, StandardStructureTypes.SECT);
            section(section);
        }
        sheets.close(paper.title());
    }

    private void head(Paper paper) throws IOException {
        double textWidth = width();
        double top = sheets.y;
        if (paper.picture().isPresent()) {
            PDImageXObject image = LosslessFactory.createFromImage(
                    document, paper.picture().get().image());
            double scale = Math.min(150.0 / image.getWidth(), 56.0 / image.getHeight());
            double w = scale * image.getWidth();
            double h = scale * image.getHeight();
            PdfTags.artefact(
                    sheets.stream(),
                    () -> sheets.stream()
                            .drawImage(image, (float) (sheets.right() - w), (float) (top - h), (float) w, (float) h));
            textWidth -= w + 16;
        }
        if (paper.shop().isPresent()) {
            lines(StandardStructureTypes.P, paper.shop().get(), true, 9.5, 13, textWidth, QUIET);
            sheets.y -= 3;
        }
        lines(StandardStructureTypes.H1, paper.title(), true, 18, 22, textWidth, INK);
        lines(StandardStructureTypes.P, paper.subtitle(), false, 10.5, 14, textWidth, QUIET);
        if (paper.date().isPresent()) {
            lines(StandardStructureTypes.P, paper.date().get().toString(), false, 9.5, 13, textWidth, QUIET);
        }
        if (paper.picture().isPresent()) {
            sheets.y = Math.min(sheets.y, top - 60);
        }
        sheets.y -= 4;
        sheets.rule(INK, 0.8);
        sheets.y -= 2;
    }

    private void lines(String kind, String text, boolean bold, double size, double leading, double width, Color colour)
            throws IOException {
        lines(PdfTags.in(part, kind), text, bold, size, leading, width, colour, 0);
    }

    /** Lines of one text below one another, over as many pages as they need; none of them alone on a page. */
    private void lines(
            PDStructureElement element,
            String text,
            boolean bold,
            double size,
            double leading,
            double width,
            Color colour,
            double indent)
            throws IOException {
        List<String> lines = type.wrap(type.clean(text), bold, size, width - indent);
        for (int i = 0; i < lines.size(); i++) {
            boolean first = i == 0;
            boolean lastButOne = i == lines.size() - 2;
            sheets.need((lines.size() <= 3 && first ? lines.size() : first || lastButOne ? 2 : 1) * leading);
            sheets.y -= leading;
            sheets.say(element, lines.get(i), MARGIN + indent, sheets.y + 0.25 * leading, bold, size, colour);
        }
    }

    private void section(Section section) throws IOException {
        double all = height(section.blocks());
        sheets.need(SECTION_SIZE + 16 + (all < WHOLE * sheets.height() ? all : following(section.blocks(), 0)));
        if (!sheets.isFresh()) {
            sheets.y -= 9;
        }
        outline.section(section.title(), sheets.page(), sheets.y);
        lines(StandardStructureTypes.H2, section.title(), true, SECTION_SIZE, 17, width(), INK);
        sheets.y -= 2;
        for (int i = 0; i < section.blocks().size(); i++) {
            if (section.blocks().get(i) instanceof Block.Heading) {
                sheets.need(HEADING_SIZE + 14 + following(section.blocks(), i + 1));
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

    /** Height of some blocks. */
    private double height(List<Block> blocks) {
        double height = 0;
        for (Block block : blocks) {
            if (block instanceof Block.Heading) {
                height += 19;
            } else if (block instanceof Block.Text text) {
                height += height(text);
            } else if (block instanceof Block.Points points) {
                for (String sentence : points.sentences()) {
                    height += count(sentence, false, SIZE, width() - 11) * LINE + 1.5;
                }
                height += 3;
            } else if (block instanceof Block.Figures figures) {
                height += figures.height() * width() + 6;
            } else if (block instanceof Block.Table table) {
                height += laid(table).all() + 7;
            } else if (block instanceof Block.Facts facts) {
                for (Block.Fact fact : facts.facts()) {
                    height += count(fact.text(), false, SIZE, width() - LEAD) * LINE + 2;
                }
                height += 3;
            } else if (block instanceof Block.Fields fields) {
                height += Math.ceil(fields.labels().size() / 3.0) * FIELD + 6;
            }
        }
        return height;
    }

    private int count(String text, boolean bold, double size, double width) {
        return type.wrap(type.clean(text), bold, size, width).size();
    }

    private double height(Block.Text text) {
        boolean quiet = text.tone() == Block.Tone.QUIET;
        return count(text.text(), text.tone() == Block.Tone.WARNING, quiet ? QUIET_SIZE : SIZE, width())
                        * (quiet ? QUIET_LINE : LINE)
                + 4;
    }

    private void block(Block block) throws IOException {
        if (block instanceof Block.Heading heading) {
            sheets.y -= sheets.isFresh() ? 0 : 5;
            outline.heading(heading.text(), sheets.page(), sheets.y);
            lines(StandardStructureTypes.H3, heading.text(), true, HEADING_SIZE, 14, width(), INK);
        } else if (block instanceof Block.Text text) {
            text(text);
        } else if (block instanceof Block.Points points) {
            points(points.sentences());
        } else if (block instanceof Block.Figures figures) {
            figures(figures);
        } else if (block instanceof Block.Table table) {
            new PdfTable(sheets, type, table, laid(table), part).set();
        } else if (block instanceof Block.Facts facts) {
            facts(facts.facts());
        } else if (block instanceof Block.Fields fields) {
            fields(fields.labels());
        }
    }

    private void text(Block.Text text) throws IOException {
        boolean quiet = text.tone() == Block.Tone.QUIET;
        boolean loud = text.tone() == Block.Tone.WARNING;
        lines(
                StandardStructureTypes.P,
                text.text(),
                loud,
                quiet ? QUIET_SIZE : SIZE,
                quiet ? QUIET_LINE : LINE,
                width(),
                quiet ? QUIET : loud ? WARNING : INK);
        sheets.y -= 4;
    }

    private void points(List<String> sentences) throws IOException {
        PDStructureElement list = PdfTags.in(part, StandardStructureTypes.L);
        for (String sentence : sentences) {
            PDStructureElement item = PdfTags.in(list, StandardStructureTypes.LI);
            int lines = count(sentence, false, SIZE, width() - 11);
            sheets.need((lines <= 3 ? lines : 2) * LINE);
            sheets.say(
                    PdfTags.in(item, StandardStructureTypes.LBL),
                    "•",
                    MARGIN + 1,
                    sheets.y - 0.75 * LINE,
                    false,
                    SIZE,
                    QUIET);
            lines(PdfTags.in(item, StandardStructureTypes.L_BODY), sentence, false, SIZE, LINE, width(), INK, 11);
            sheets.y -= 1.5;
        }
        sheets.y -= 3;
    }

    /** Each word in a column of its own, what belongs to it beside it; a fact is not torn. */
    private void facts(List<Block.Fact> facts) throws IOException {
        PDStructureElement list = PdfTags.in(part, StandardStructureTypes.L);
        for (Block.Fact fact : facts) {
            PDStructureElement item = PdfTags.in(list, StandardStructureTypes.LI);
            PDStructureElement lead = PdfTags.in(item, StandardStructureTypes.LBL);
            PDStructureElement body = PdfTags.in(item, StandardStructureTypes.L_BODY);
            boolean loud = fact.tone() == Block.Tone.WARNING;
            boolean quiet = fact.tone() == Block.Tone.QUIET;
            Color colour = loud ? WARNING : INK;
            double size = quiet ? TableLayout.SIZE : SIZE;
            double line = quiet ? TableLayout.LINE : LINE;
            List<String> leads = type.wrap(type.clean(fact.lead()), true, size, LEAD - TableLayout.CELL);
            List<String> texts = type.wrap(type.clean(fact.text()), loud, size, width() - LEAD);
            sheets.need(Math.max(leads.size(), texts.size()) * line);
            for (int i = 0; i < Math.max(leads.size(), texts.size()); i++) {
                sheets.need(line);
                sheets.y -= line;
                double base = sheets.y + 0.25 * line;
                if (i < leads.size()) {
                    sheets.say(lead, leads.get(i), MARGIN, base, true, size, colour);
                }
                if (i < texts.size()) {
                    sheets.say(body, texts.get(i), MARGIN + LEAD, base, loud, size, colour);
                }
            }
            sheets.y -= 2;
        }
        sheets.y -= 3;
    }

    private void figures(Block.Figures figures) throws IOException {
        double gap = 10;
        List<Integer> widths = figures.widths(width(), gap);
        int height = (int) (figures.height() * width());
        sheets.need(height);
        sheets.y -= height;
        double x = MARGIN;
        for (int i = 0; i < widths.size(); i++) {
            Block.Figure figure = figures.figures().get(i);
            PDFormXObject form = pictures.form(figure, widths.get(i), height);
            PDStructureElement element = PdfTags.in(part, StandardStructureTypes.Figure);
            element.setAlternateDescription(figure.title());
            double left = x;
            sheets.draw(element, () -> {
                sheets.stream().saveGraphicsState();
                sheets.stream().transform(Matrix.getTranslateInstance((float) left, (float) sheets.y));
                sheets.stream().drawForm(form);
                sheets.stream().restoreGraphicsState();
            });
            x += widths.get(i) + gap;
        }
        sheets.y -= 6;
    }

    private void fields(List<String> labels) throws IOException {
        int across = 3;
        double each = width() / across;
        for (int i = 0; i < labels.size(); i++) {
            if (i % across == 0) {
                sheets.need(FIELD + 4);
                sheets.y -= FIELD;
            }
            double x = MARGIN + i % across * each;
            sheets.box(x, sheets.y, each - 4, FIELD - 2, 0.6);
            String label =
                    type.wrap(type.clean(labels.get(i)), false, 6.5, each - 10).get(0);
            sheets.say(
                    PdfTags.in(part, StandardStructureTypes.P), label, x + 3, sheets.y + FIELD - 10, false, 6.5, QUIET);
        }
        sheets.y -= 6;
    }

    private TableLayout laid(Block.Table table) {
        return new TableLayout(type, table, width(), size.height());
    }
}
