package evenhand.look;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javax.swing.text.StyleContext;

/**
 * The one family that everything is set in, in two weights; it comes with the program. Its digits are all of one width. It has
 * no arrows, ticks or triangles: such marks are drawn. Names in other scripts fall back on the machine's fonts.
 */
public final class Typeface {
    /** The family's name, as known to Swing once {@link #plain} or {@link #strong} was asked. */
    public static final String FAMILY = "Roboto";

    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";
    private static final Font PLAIN;
    private static final Font STRONG;

    static {
        register("Roboto-Regular.ttf");
        register("Roboto-Bold.ttf");
        // asked by way of the text system, letters that the family lacks come from the machine's own fonts
        PLAIN = StyleContext.getDefaultStyleContext().getFont(FAMILY, Font.PLAIN, 12);
        STRONG = StyleContext.getDefaultStyleContext().getFont(FAMILY, Font.BOLD, 12);
    }

    private Typeface() {}

    /** The usual weight. */
    public static Font plain(double size) {
        return PLAIN.deriveFont((float) size);
    }

    /** The weight of heads. */
    public static Font strong(double size) {
        return STRONG.deriveFont((float) size);
    }

    /** A file of the family, to be embedded in a paper: "Roboto-Regular.ttf" or "Roboto-Bold.ttf". */
    public static InputStream file(String name) {
        InputStream in = Typeface.class.getResourceAsStream(FOLDER + name);
        if (in == null) {
            throw new IllegalStateException("the program's font " + name + " is missing from its libraries");
        }
        return in;
    }

    private static void register(String file) {
        try (InputStream in = file(file)) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, in);
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the program's font " + file + " cannot be read", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
