package evenhand.window;

import evenhand.answers.Progress;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.Worker;
import java.awt.BorderLayout;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;

/** The report as it would be written now. It follows what is changed, a little later, and holds nobody up. */
final class PreviewPane extends JPanel {
    /** The pages are made when the hands were still for so long, ms. */
    private static final long CALM = 400;

    private final transient ReportWriter writer;
    private final transient Worker<ReportWriter.Order> worker;
    private final Words.Area state = Words.quiet("state of the preview");
    private final PagesView pages = new PagesView();
    private transient Optional<ReportWriter.Order> wanted = Optional.empty();

    PreviewPane(ReportWriter writer) {
        super(new BorderLayout(0, 6));
        this.writer = writer;
        worker = new Worker<>("preview", CALM, this::make, share -> {});
        setOpaque(false);
        JScrollPane scroll = new JScrollPane(
                pages,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setName("report preview");
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(3));
        add(state, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
    }

    /** Shows the pages of an order; nothing where it has none to look at. */
    void show(Optional<ReportWriter.Order> order, String otherwise) {
        if (order.isEmpty()) {
            wanted = order;
            worker.cancel();
            Words.say(state, otherwise);
            pages.showLate();
        } else if (!order.equals(wanted)) {
            wanted = order;
            Words.say(state, "The pages are being made …");
            pages.showLate();
            worker.ask(order.get());
        }
    }

    private void make(ReportWriter.Order order, Progress progress) {
        ReportWriter.Preview came;
        try {
            came = writer.preview(order, progress);
        } catch (CancellationException stopped) {
            throw stopped; // something newer is waited for
        } catch (RuntimeException defect) {
            came = new ReportWriter.Preview.Failed(
                    "The preview has met a defect of the program, please report it: " + defect);
        }
        ReportWriter.Preview preview = came;
        SwingUtilities.invokeLater(() -> come(order, preview));
    }

    private void come(ReportWriter.Order order, ReportWriter.Preview preview) {
        if (wanted.filter(order::equals).isEmpty()) {
            return;
        }
        if (preview instanceof ReportWriter.Preview.Ready ready) {
            pages.show(ready.pages());
            int count = ready.pages().count();
            Words.say(
                    state,
                    count == 1 ? "One page, as it will be written." : count + " pages, as they will be written.");
        } else if (preview instanceof ReportWriter.Preview.Failed failed) {
            Words.say(state, failed.why());
        }
    }

    PagesView pages() {
        return pages;
    }

    void close() {
        worker.close();
        pages.close();
    }
}
