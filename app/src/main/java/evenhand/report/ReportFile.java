package evenhand.report;

import evenhand.scenario.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;

/** The file that a report goes to: whole or not at all. */
public record ReportFile(Path path, Kind kind) {
    /** What it holds, by the end of its name. */
    public enum Kind {
        PDF,
        HTML,
        /** The set-up sheet alone. */
        CSV
    }

    /** Judges its name, and that it may be written. */
    public static ReportFile of(Path path, boolean force) throws CannotReport {
        String name = path.toString().toLowerCase(java.util.Locale.ROOT);
        Kind kind;
        if (name.endsWith(".pdf")) {
            kind = Kind.PDF;
        } else if (name.endsWith(".html") || name.endsWith(".htm")) {
            kind = Kind.HTML;
        } else if (name.endsWith(".csv")) {
            kind = Kind.CSV;
        } else {
            throw new CannotReport(path + ": which kind of file? Let its name end in .pdf, .html or .csv");
        }
        if (Files.isDirectory(path)) {
            throw new CannotReport(path + ": is a folder; write the name of a file in it");
        }
        if (Files.exists(path) && !force) {
            throw new CannotReport(path + ": is there already; --force writes over it");
        }
        if (WholeFile.isProtected(path)) {
            throw new CannotReport(path + ": is write-protected; write another name, or let it be written first");
        }
        Path folder = folder(path);
        if (!Files.isDirectory(folder)) {
            throw new CannotReport(path + ": there is no folder " + folder);
        }
        return new ReportFile(path, kind);
    }

    private static Path folder(Path path) {
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? path.toAbsolutePath() : parent;
    }

    /** Writes it whole, so that a reader never sees half of it. */
    public void write(byte[] bytes) throws CannotReport {
        try {
            WholeFile.write(path, bytes);
        } catch (IOException | SecurityException | ReadOnlyFileSystemException cannot) {
            throw new CannotReport(path + ": cannot be written (" + WholeFile.why(cannot)
                    + "); choose a folder that you may write to");
        }
    }
}
