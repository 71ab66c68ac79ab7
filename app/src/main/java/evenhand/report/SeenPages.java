package evenhand.report;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The pages of a paper as they come out of the printer, as pictures. For one thread at a time. */
public final class SeenPages {
    private final PDDocument document;
    private final PDFRenderer renderer;
    private final List<String> remarks;

    private SeenPages(PDDocument document, List<String> remarks) {
        this.document = document;
        this.remarks = remarks;
        renderer = new PDFRenderer(document);
    }

    static SeenPages of(Printed pdf) {
        try {
            return new SeenPages(Loader.loadPDF(pdf.bytes()), pdf.remarks());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public int count() {
        return document.getNumberOfPages();
    }

    /** Height of a page over its width. */
    public double heightByWidth() {
        PDRectangle sheet = document.getPage(0).getMediaBox();
        return sheet.getHeight() / sheet.getWidth();
    }

    /** What could not be set as it was written. */
    public List<String> remarks() {
        return remarks;
    }

    /** A page, so many pixels wide. */
    public synchronized BufferedImage picture(int page, int width) {
        try {
            float scale = width / document.getPage(page).getMediaBox().getWidth();
            return renderer.renderImage(page, scale, ImageType.RGB);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
