package evenhand.look;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;

/**
 * Something that can be painted at a size, to be kept or pasted elsewhere.
 *
 * @param width px
 * @param height px
 * @param painting paints it into (0, 0, width, height)
 */
public record Picture(int width, int height, Consumer<Graphics2D> painting) {
    /** An image, so many of its pixels for one. */
    public BufferedImage image(double scale) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(width * scale), (int) Math.ceil(height * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        painting.accept(g);
        g.dispose();
        return image;
    }

    /** The bytes of a PNG file. */
    public byte[] png(double scale) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(image(scale), "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An SVG document, its words as text. The same picture gives the same document. */
    public String svg() {
        Document document = GenericDOMImplementation.getDOMImplementation()
                .createDocument("http://www.w3.org/2000/svg", "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("Evenhand");
        SVGGraphics2D g = new SVGGraphics2D(context, false);
        g.setSVGCanvasSize(new Dimension(width, height));
        painting.accept(g);
        try (StringWriter out = new StringWriter()) {
            g.stream(out, false);
            return out.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
