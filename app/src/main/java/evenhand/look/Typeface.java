package evenhand.look;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The one family that everything is set in, in two weights; it comes with the program. Its digits are all of one width. It has
 * no arrows, ticks or triangles: such marks are drawn.
 */
public final class Typeface {
    /** The family's name, as known to Swing once {@link #plain} or {@link #strong} was asked. */
    public static final String FAMILY = "Roboto";

    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";
    private static final Font PLAIN = load("Roboto-Regular.ttf");
    private static final Font STRONG = load("Roboto-Bold.ttf");

    private Typeface() {}

    /** The usual weight. */
    public static Font plain(double size) {
        return PLAIN.deriveFont((float) size);
    }

    /** The weight of heads. */
    public static Font strong(double size) {
        return STRONG.deriveFont((float) size);
    }

    private static Font load(String file) {
        try (InputStream in = Typeface.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("the program's font " + file + " is missing from its libraries");
            }
            Font font = Font.createFont(Font.TRUETYPE_FONT, in);
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
            return font;
        } catch (FontFormatException e) {
            throw new IllegalStateException("the program's font " + file + " cannot be read", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
