package evenhand.window;

import evenhand.chart.Chart;
import evenhand.chart.ChartCsv;
import evenhand.chart.ChartPainter;
import evenhand.chart.ChartWish;
import evenhand.look.Picture;
import evenhand.look.Theme;
import evenhand.scenario.WholeFile;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Optional;
import java.util.function.Consumer;

/** Keeps a chart: on the clipboard, or in a file as SVG, PNG or CSV. On white, as it may be printed. */
final class Keeping implements Consumer<ChartWish> {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 560;
    private static final double TYPE = 15;
    private static final double SHARP = 2;

    private final Asker asker;
    private final Notice notice;

    Keeping(Asker asker, Notice notice) {
        this.asker = asker;
        this.notice = notice;
    }

    @Override
    public void accept(ChartWish wish) {
        Chart chart = wish.chart();
        String name = Cabinet.fileName(chart.title()).replace(".json", "");
        switch (wish.kind()) {
            case COPY -> copy(picture(chart).image(SHARP));
            case SVG -> keep(name + ".svg", picture(chart).svg().getBytes(StandardCharsets.UTF_8));
            case PNG -> keep(name + ".png", picture(chart).png(SHARP));
            case CSV -> keep(name + ".csv", ChartCsv.write(chart).getBytes(StandardCharsets.UTF_8));
        }
    }

    private static Picture picture(Chart chart) {
        return ChartPainter.picture(chart, Theme.paper(TYPE), WIDTH, HEIGHT);
    }

    private void keep(String name, byte[] bytes) {
        Optional<Path> file = asker.toSave(Path.of(name).toAbsolutePath());
        file.ifPresent(path -> {
            try {
                WholeFile.write(path, bytes);
            } catch (IOException | SecurityException | ReadOnlyFileSystemException cannot) {
                notice.say("Cannot write " + path + " (" + WholeFile.why(cannot) + "): choose another folder or name.");
            }
        });
    }

    private void copy(Image image) {
        try {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new Copied(image), null);
        } catch (IllegalStateException busy) {
            notice.say("Another program holds the clipboard; try again.");
        }
    }

    /** An image on the clipboard. */
    private record Copied(Image image) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.imageFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.imageFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            if (!isDataFlavorSupported(flavor)) {
                throw new UnsupportedFlavorException(flavor);
            }
            return image;
        }
    }
}
