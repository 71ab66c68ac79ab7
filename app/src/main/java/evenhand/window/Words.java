package evenhand.window;

import java.awt.Color;
import java.awt.Font;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Pieces of text in the window. Fonts and colours are asked again when the theme changes. */
final class Words {
    private Words() {}

    /** Text of many lines that can be selected and copied, and wraps at the width that there is. */
    static final class Area extends JTextArea {
        private final transient Supplier<Font> font;
        private final transient Supplier<Color> colour;

        Area(String name, Supplier<Font> font, Supplier<Color> colour) {
            this.font = font;
            this.colour = colour;
            setEditable(false);
            if (getCaret() instanceof DefaultCaret caret) {
                caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE); // new text scrolls nothing
            }
            setLineWrap(true);
            setWrapStyleWord(true);
            setOpaque(false);
            setBorder(null);
            getAccessibleContext().setAccessibleName(name);
            setName(name);
            updateUI();
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
