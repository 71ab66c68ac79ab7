package evenhand.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.COSObjectable;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * The structure of a PDF: what is a heading, a paragraph, a table, and in which order it is read. ISO 32000-1, 14.6 to 14.8. Each
 * piece of a page's content belongs to an element or is an artefact, which is not read out.
 */
final class PdfTags {
    private final PDDocument document;
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement top = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
    private final Map<PDPage, COSArray> parents = new LinkedHashMap<>();

    PdfTags(PDDocument document) {
        this.document = document;
        root.appendKid(top);
    }

    /** What all others are in. */
    PDStructureElement top() {
        return top;
    }

    /** A new one, the last of its parent. */
    static PDStructureElement in(PDStructureElement parent, String type) {
        PDStructureElement element = new PDStructureElement(type, parent);
        parent.appendKid(element);
        return element;
    }

    /** The head of a column. */
    static PDStructureElement head(PDStructureElement row) {
        PDStructureElement head = in(row, StandardStructureTypes.TH);
        PDTableAttributeObject of = new PDTableAttributeObject();
        of.setScope(PDTableAttributeObject.SCOPE_COLUMN);
        head.addAttribute(of);
        return head;
    }

    /** Something to be drawn. */
    interface Drawing {
        void draw() throws IOException;
    }

    /** Draws something that belongs to an element. */
    void draw(PDPageContentStream stream, PDPage page, PDStructureElement element, Drawing drawing) throws IOException {
        COSArray ofPage = parents.computeIfAbsent(page, none -> new COSArray());
        int place = ofPage.size();
        ofPage.add(element);
        if (element.getPage() == null) {
            element.setPage(page);
        }
        if (page.equals(element.getPage())) {
            element.appendKid(place);
        } else {
            element.appendKid(elsewhere(page, place));
        }
        stream.beginMarkedContent(COSName.getPDFName(element.getStructureType()), place);
        drawing.draw();
        stream.endMarkedContent();
    }

    private static PDMarkedContentReference elsewhere(PDPage page, int place) {
        PDMarkedContentReference reference = new PDMarkedContentReference();
        reference.setPage(page);
        reference.setMCID(place);
        return reference;
    }

    /** Draws what is no part of what is said: rules, tints, what stands at the foot of every page. */
    static void artefact(PDPageContentStream stream, Drawing drawing) throws IOException {
        stream.beginMarkedContent(COSName.ARTIFACT);
        drawing.draw();
        stream.endMarkedContent();
    }

    /** Writes the tree down; once, when all is drawn. */
    void close() {
        Map<Integer, COSObjectable> byPage = new LinkedHashMap<>();
        List<PDPage> pages = new ArrayList<>(parents.keySet());
        for (int i = 0; i < pages.size(); i++) {
            pages.get(i).setStructParents(i);
            COSArray ofPage = parents.get(pages.get(i));
            byPage.put(i, () -> ofPage);
        }
        PDNumberTreeNode tree = new PDNumberTreeNode(COSArray.class);
        tree.setNumbers(byPage);
        root.setParentTree(tree);
        root.setParentTreeNextKey(pages.size());
        document.getDocumentCatalog().setStructureTreeRoot(root);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
    }
}
