package evenhand.window;

import evenhand.quantity.Unseen;
import evenhand.window.desk.LogDrop;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** Files that are dropped on the window: a scenario is opened, a log joins the road test. */
final class Dropped extends TransferHandler {
    private final transient MainPane pane;

    Dropped(MainPane pane) {
        this.pane = pane;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            if (!files.isEmpty() && files.get(0) instanceof File file) {
                boolean alone = files.size() == 1;
                SwingUtilities.invokeLater(() -> take(file, alone));
                return true;
            }
        } catch (UnsupportedFlavorException | IOException cannot) {
            pane.notice().say("What was dropped cannot be read; open it by File, Open.");
        }
        return false;
    }

    /** @param alone whether nothing else was dropped with it */
    void take(File file, boolean alone) {
        String name = Unseen.shown(file.getName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (file.isFile() && ending.equals("csv")) {
            LogDrop.Outcome outcome = new LogDrop(file.toPath()).on(pane.bench());
            pane.notice()
                    .say(
                            outcome instanceof LogDrop.Outcome.Refused refused
                                    ? refused.why()
                                    : "“" + name + "” has joined the road test “"
                                            + ((LogDrop.Outcome.Joined) outcome).test() + "”; undo takes it out.");
        } else if (!file.isFile() || !ending.equals("json")) {
            pane.notice()
                    .say(
                            "“" + name
                                    + "” is no car: what can be dropped is a car's file (.json), and a log (.csv) for its road test.");
        } else if (pane.cabinet().open(file.toPath()) && !alone) {
            pane.notice().say("One job at a time: “" + name + "” is open; drop the others one by one.");
        }
    }
}
