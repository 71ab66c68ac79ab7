package evenhand.report;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Sets one table on the sheets, its heads again on each. */
final class PdfTable {
    private static final double CELL = TableLayout.CELL;
    private static final Color TINT = new Color(0xeaf1fc);

    private final PdfSheets sheets;
    private final PdfType type;
    private final Block.Table table;
    private final TableLayout laid;
    private final PDStructureElement element;

    PdfTable(PdfSheets sheets, PdfType type, Block.Table table, TableLayout laid, PDStructureElement parent) {
        this.sheets = sheets;
        this.type = type;
        this.table = table;
        this.laid = laid;
        element = PdfTags.in(parent, StandardStructureTypes.TABLE);
    }

    void set() throws IOException {
        sheets.need(laid.together());
        PDStructureElement headRow = PdfTags.in(element, StandardStructureTypes.TR);
        List<PDStructureElement> heads = new ArrayList<>();
        for (int i = 0; i < laid.columns(); i++) {
            heads.add(PdfTags.head(headRow));
        }
        heads(heads);
        for (int at = 0; at < laid.rows().size(); at++) {
            TableLayout.Lines lines = laid.rows().get(at);
            PDStructureElement row = PdfTags.in(element, StandardStructureTypes.TR);
            List<PDStructureElement> cells = new ArrayList<>();
            for (int i = 0; i < laid.columns(); i++) {
                cells.add(PdfTags.in(row, StandardStructureTypes.TD));
            }
            while (!lines.isEmpty()) {
                double height = lines.height();
                if (height > sheets.room()
                        && !sheets.isFresh()
                        && !(height > 12 * laid.line() && sheets.room() > 6 * laid.line())) {
                    sheets.newPage();
                    heads(List.of());
                }
                int most = Math.max(1, (int) ((sheets.room() - 2 * CELL) / laid.line()));
                row(cells, table.rows().get(at).marked(), lines.first(most));
                lines = lines.rest(most);
            }
        }
        sheets.y -= 7;
    }

    /** @param elements of the heads; none where they stand there already, on an earlier sheet */
    private void heads(List<PDStructureElement> elements) throws IOException {
        if (elements.isEmpty()) {
            PdfTags.artefact(sheets.stream(), () -> cells(laid.heads(), List.of(), true, PdfSheets.QUIET));
        } else {
            cells(laid.heads(), elements, true, PdfSheets.QUIET);
        }
        sheets.y -= laid.heads().height();
        sheets.rule(PdfSheets.INK, 0.6);
    }

    private void row(List<PDStructureElement> elements, boolean marked, TableLayout.Lines lines) throws IOException {
        double height = lines.height();
        if (marked) {
            sheets.tint(TINT, height);
        }
        double x = PdfSheets.MARGIN;
        for (int i = 0; i < laid.columns(); i++) {
            if (table.columns().get(i).kind() == Block.Kind.BLANK) {
                box(x + 2, laid.width(i) - 4, height);
            } else if (lines.boxes().contains(i)) {
                box(x + laid.width(i) - laid.box(i), laid.box(i) - 2, height);
            }
            x += laid.width(i);
        }
        cells(lines, elements, marked, PdfSheets.INK);
        sheets.y -= height;
        sheets.rule(PdfSheets.RULE, 0.3);
    }

    private void box(double x, double width, double height) throws IOException {
        sheets.box(x, sheets.y - height + 1, width, height - 2, 0.5);
    }

    private void cells(TableLayout.Lines lines, List<PDStructureElement> elements, boolean bold, Color colour)
            throws IOException {
        double x = PdfSheets.MARGIN;
        for (int i = 0; i < laid.columns(); i++) {
            double at = sheets.y - CELL / 2;
            for (String line : lines.cells().get(i)) {
                at -= laid.line();
                double start = x + indent(i, line, bold);
                double base = at + 0.25 * laid.line();
                if (elements.isEmpty()) {
                    type.draw(sheets.stream(), line, start, base, bold, laid.size(), colour);
                } else {
                    sheets.say(elements.get(i), line, start, base, bold, laid.size(), colour);
                }
            }
            x += laid.width(i);
        }
    }

    private double indent(int column, String line, boolean bold) {
        return table.columns().get(column).kind() == Block.Kind.NUMBER
                ? laid.width(column) - CELL - type.width(line, bold, laid.size())
                : CELL;
    }
}
