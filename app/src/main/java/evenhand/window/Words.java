package evenhand.window;

import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.TransferHandler;
import javax.swing.text.DefaultCaret;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;

/** Pieces of text in the window. Fonts and colours are asked again when the theme changes. */
final class Words {
    /** Between a number and the short word behind it, most likely its unit. */
    /** Letters of a line beside the pointer. */
    private static final int LINE = 72;

    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d) (?=\\S{1,8}(?:\\s|$))");

    private Words() {}

    /** Text of many lines that can be selected and copied, and wraps at the width that there is. */
    static final class Area extends JTextArea {
        private final transient Supplier<Font> font;
        private final transient Supplier<Color> colour;

        Area(String name, Supplier<Font> font, Supplier<Color> colour) {
            this.font = font;
            this.colour = colour;
            setEditable(false);
            setCaret(still());
            setLineWrap(true);
            setWrapStyleWord(true);
            setOpaque(false);
            setBorder(null);
            getAccessibleContext().setAccessibleName(name);
            setName(name);
            updateUI();
        }

        /** A file that is dropped on a text is for the window. */
        @Override
        public void setTransferHandler(@Nullable TransferHandler handler) {
            super.setTransferHandler(handler);
            setDropTarget(null);
        }

        @Override
        @SuppressWarnings("NullAway") // called by the constructor of the class above, before the suppliers are there
        public void updateUI() {
            super.updateUI();
            if (font != null) {
                setFont(font.get());
                setForeground(colour.get());
                setOpaque(false);
                setBorder(null);
            }
        }
    }

    /** The caret of a text among others: new text scrolls nothing, only who walks through it with the keys is followed. */
    private static final class Still extends DefaultCaret {
        @Override
        protected void adjustVisibility(Rectangle caret) {
            if (getComponent().isFocusOwner()) {
                super.adjustVisibility(caret);
            }
        }
    }

    /** A caret that scrolls nothing while nobody is at it. */
    static DefaultCaret still() {
        Still still = new Still();
        still.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        return still;
    }

    /** Says something, no line of it ending between a number and its unit. */
    static void say(Area area, String words) {
        put(area, unbroken(words));
    }

    /** Puts a text in, if it is not there already: new text lays the window out anew. */
    static void put(JTextComponent into, String text) {
        if (!into.getText().equals(text)) {
            into.setText(text);
        }
    }

    /** Words in which a line ends before a number, not between it and its unit. */
    static String unbroken(String words) {
        return BEFORE_UNIT.matcher(words).replaceAll("\u00a0");
    }

    /** Words that are shown beside the pointer, in lines that can be read. */
    static String wrapped(String words) {
        StringBuilder lines = new StringBuilder();
        int used = 0;
        for (String word : words.split(" ", -1)) {
            if (used > 0 && used + word.length() > LINE) {
                lines.append('\n');
                used = 0;
            } else if (used > 0) {
                lines.append(' ');
            }
            lines.append(word);
            used += word.length() + 1;
        }
        return lines.toString();
    }

    static Area headline(String name) {
        return new Area(name, Looks::large, () -> Looks.theme().ink());
    }

    static Area plain(String name) {
        return new Area(
                name,
                () -> evenhand.look.Typeface.plain(Looks.size()),
                () -> Looks.theme().ink());
    }

    static Area quiet(String name) {
        return new Area(name, Looks::small, () -> Looks.theme().quiet());
    }

    static Area warning(String name) {
        return new Area(name, Looks::small, () -> Looks.theme().warning());
    }

    /** A head of a part of the window. */
    static JLabel head(String words) {
        return new JLabel(words) {
            @Override
            public void updateUI() {
                super.updateUI();
                setFont(Looks.strong());
                setForeground(Looks.theme().quiet());
            }
        };
    }
}
