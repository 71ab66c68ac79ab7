package evenhand.window;

import java.awt.Graphics2D;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.Optional;
import javax.swing.JComponent;

/** Prints the answer that is shown, as wide as the paper. */
final class Printing {
    private Printing() {}

    /** Asks for a printer and prints; says why not where it cannot. */
    static Optional<String> print(JComponent shown) {
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName("Evenhand");
        job.setPrintable((graphics, format, page) -> {
            double scale = format.getImageableWidth() / Math.max(1, shown.getWidth());
            double height = format.getImageableHeight() / scale;
            if (page * height >= shown.getHeight()) {
                return Printable.NO_SUCH_PAGE;
            }
            Graphics2D g = (Graphics2D) graphics;
            g.translate(format.getImageableX(), format.getImageableY());
            g.scale(scale, scale);
            g.clipRect(0, 0, shown.getWidth(), (int) height);
            g.translate(0, -page * height);
            shown.printAll(g);
            return Printable.PAGE_EXISTS;
        });
        try {
            if (job.printDialog()) {
                job.print();
            }
            return Optional.empty();
        } catch (PrinterException cannot) {
            return Optional.of("Cannot print: " + cannot.getMessage() + ".");
        }
    }
}
