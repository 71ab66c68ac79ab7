package evenhand.window;

import evenhand.window.desk.Answering;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Drawer;
import evenhand.window.desk.Look;
import evenhand.window.desk.Memory;
import evenhand.window.desk.Openings;
import evenhand.window.desk.Replies;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.Safekeeping;
import evenhand.window.question.Questions;
import java.nio.file.Path;
import javax.swing.SwingUtilities;

/**
 * The window without its frame: desk, bench, workers and views, put together. It needs no screen.
 *
 * @param answering its workers, to be closed at the end
 */
record Room(MainPane pane, Answering answering) {
    /**
     * A room with a demo car on the desk.
     *
     * @param folder where the window remembers and keeps safe
     * @param look units and theme
     * @param report writes the reports
     */
    static Room with(String demo, Look look, Path folder, Asker asker, ReportWriter report) {
        Looks.set(look.dark(), look.arrangement().zoom());
        Answering answering = new Answering(Questions.ALL, SwingUtilities::invokeLater);
        Drawer.Opened.Sound first = Demos.open(demo);
        Bench bench = new Bench(new Desk(first.work(), look, Replies.NONE, first.filed()), answering::ask);
        answering.deliverTo(bench::act);
        long process = ProcessHandle.current().pid();
        MainPane pane = new MainPane(
                bench,
                Questions.ALL,
                answering,
                new Memory(folder),
                new Safekeeping(folder, process),
                new Openings(folder, process),
                asker,
                report);
        return new Room(pane, answering);
    }

    /** Ends the work in the background. */
    void close() {
        pane.report().close();
        pane.customer().close();
        pane.cabinet().close();
        answering.close();
    }
}
