package evenhand.terminal.page;

import evenhand.quantity.Unseen;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/**
 * Where a command writes to, in UTF-8.
 *
 * @param out standard output: the answer and nothing else
 * @param err standard error: problems, one line each
 * @param colour whether standard output is a terminal that may have colours
 * @param columns width of the terminal
 * @param watched whether standard error is a terminal, where progress may be shown
 * @param in standard input, which is read where a file is named so
 */
public record Console(
        OutputStream out, OutputStream err, boolean colour, int columns, boolean watched, InputStream in) {
    private static final int USUAL_COLUMNS = 100;
    private static final int FEWEST_COLUMNS = 60;
    private static final int MOST_COLUMNS = 160;

    /** Nobody reads the answer any more, as with {@code | head}. */
    public static final class ReaderGone extends UncheckedIOException {
        private static final long serialVersionUID = 1L;

        ReaderGone(IOException cause) {
            super(cause);
        }
    }

    /** One that nothing comes in from. */
    public Console(OutputStream out, OutputStream err, boolean colour, int columns, boolean watched) {
        this(out, err, colour, columns, watched, InputStream.nullInputStream());
    }

    /** The same with another standard input. */
    public Console reading(InputStream other) {
        return new Console(out, err, colour, columns, watched, other);
    }

    /** What answers the same question elsewhere: looks alike, and nobody watches. */
    public Console aside(OutputStream otherOut, OutputStream otherErr) {
        return new Console(otherOut, otherErr, colour, columns, false, in);
    }

    /** The console of the process; {@code environment} may say NO_COLOR, TERM and COLUMNS. */
    public static Console of(OutputStream out, OutputStream err, boolean terminal, Map<String, String> environment) {
        return of(out, err, terminal, false, environment);
    }

    /** The same, with somebody watching standard error or not. */
    public static Console of(
            OutputStream out, OutputStream err, boolean terminal, boolean watched, Map<String, String> environment) {
        boolean colour = terminal
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
        return new Console(out, err, colour, columns(environment.getOrDefault("COLUMNS", "")), watched);
    }

    private static int columns(String text) {
        try {
            return Math.min(MOST_COLUMNS, Math.max(FEWEST_COLUMNS, Integer.parseInt(text)));
        } catch (NumberFormatException e) {
            return USUAL_COLUMNS;
        }
    }

    public void answer(byte[] bytes) {
        try {
            out.write(bytes);
            out.flush();
        } catch (IOException e) {
            String why = e.getMessage();
            if (why != null && why.toLowerCase(Locale.ROOT).contains("pipe")) {
                throw new ReaderGone(e);
            }
            throw new UncheckedIOException(e);
        }
    }

    public void answer(String text) {
        answer(text.getBytes(StandardCharsets.UTF_8));
    }

    /** One line to standard error. It may quote what was typed, or a name of a file, with anything in it. */
    public void complain(String line) {
        try {
            err.write((Unseen.shown(oneLine(line)) + "\n").getBytes(StandardCharsets.UTF_8));
            err.flush();
        } catch (IOException e) {
            // There is no place left to say so; the exit status still does.
        }
    }

    /** Shows a text in place of the one before, on the terminal that standard error is. */
    public void progress(String text) {
        try {
            err.write(("\r\u001b[K" + text).getBytes(StandardCharsets.UTF_8));
            err.flush();
        } catch (IOException e) {
            // Nobody watches any more.
        }
    }

    public static String oneLine(String text) {
        return text.replace("\r", "").replace('\n', ' ').strip();
    }
}
