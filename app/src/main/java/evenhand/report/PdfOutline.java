package evenhand.report;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Bookmarks: a paper's sections, and the headings within each. */
final class PdfOutline {
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final boolean several;
    private PDOutlineNode paper = outline;
    private PDOutlineNode section = outline;

    /** @param several whether papers are bound together, so that each has a bookmark of its own */
    PdfOutline(PDDocument document, boolean several) {
        this.several = several;
        document.getDocumentCatalog().setDocumentOutline(outline);
    }

    void paper(String title, PDPage page, double top) {
        paper = several ? item(outline, title, page, top) : outline;
    }

    void section(String title, PDPage page, double top) {
        section = item(paper, title, page, top);
    }

    void heading(String title, PDPage page, double top) {
        item(section, title, page, top);
    }

    private static PDOutlineItem item(PDOutlineNode parent, String title, PDPage page, double top) {
        PDPageXYZDestination to = new PDPageXYZDestination();
        to.setPage(page);
        to.setTop((int) Math.ceil(top));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(title);
        item.setDestination(to);
        parent.addLast(item);
        return item;
    }
}
