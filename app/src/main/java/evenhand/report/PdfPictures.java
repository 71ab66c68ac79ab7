package evenhand.report;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import evenhand.chart.ChartPainter;
import evenhand.drawing.DrawingPainter;
import evenhand.look.Picture;
import evenhand.look.Theme;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/** Charts and drawings as vectors in a PDF, their words as text. */
final class PdfPictures {
    /** Points; a picture's px is one. */
    private static final double TYPE = 8;

    private final PDDocument document;
    private final Words words;

    PdfPictures(PDDocument document, PdfType type) {
        this.document = document;
        words = new Words(type);
    }

    /** A figure as a picture. */
    static Picture picture(Block.Figure figure, Theme theme, int width, int height) {
        return figure instanceof Block.Plot plot
                ? ChartPainter.picture(plot.chart(), theme, width, height)
                : DrawingPainter.picture(((Block.View) figure).drawing(), theme, width, height);
    }

    PDFormXObject form(Block.Figure figure, int width, int height) throws IOException {
        Picture picture = picture(figure, Theme.paper(TYPE), width, height);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
        g.setFontTextDrawer(words);
        picture.painting().accept(g);
        g.dispose();
        return g.getXFormObject();
    }

    private static final class Words extends PdfBoxGraphics2DFontTextDrawer {
        private final PdfType type;

        Words(PdfType type) {
            this.type = type;
        }

        @Override
        public boolean canDrawText(AttributedCharacterIterator iterator, IFontTextDrawerEnv env)
                throws IOException, FontFormatException {
            return !isPlain(text(iterator)) || super.canDrawText(iterator, env);
        }

        /** The pen stands where the text begins; y grows downwards. */
        @Override
        public void drawText(AttributedCharacterIterator iterator, IFontTextDrawerEnv env)
                throws IOException, FontFormatException {
            String text = text(iterator);
            if (isPlain(text)) {
                super.drawText(iterator, env);
                return;
            }
            env.applyPaint(env.getPaint(), env.getFont().getMaxCharBounds(env.getFontRenderContext()));
            Font font = env.getFont();
            type.drawn()
                    .draw(
                            env.getContentStream(),
                            type.clean(text),
                            font.isBold(),
                            font.getSize2D(),
                            Matrix.getScaleInstance(1, -1));
        }

        /** Whether the family has all of it. */
        private boolean isPlain(String text) {
            return type.covers(text, false) && type.covers(text, true);
        }

        private static String text(AttributedCharacterIterator iterator) {
            StringBuilder text = new StringBuilder();
            for (char c = iterator.first(); c != CharacterIterator.DONE; c = iterator.next()) {
                text.append(c);
            }
            iterator.first();
            return text.toString();
        }

        @Override
        protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
            return type.pdf(font.isBold());
        }
    }
}
