import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Paints the icon in a size: {@code java Icon.java evenhand.svg 48 evenhand.png}. It knows the few shapes that are in it. */
final class Icon {
    private static final double WIDTH = 128;

    private Icon() {}

    public static void main(String[] args) throws Exception {
        System.setProperty("java.awt.headless", "true");
        int size = Integer.parseInt(args[1]);
        BufferedImage picture = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(size / WIDTH, size / WIDTH);
        Node first = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new File(args[0]))
                .getDocumentElement()
                .getFirstChild();
        for (Node node = first; node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                paint(element, pen);
            }
        }
        if (!ImageIO.write(picture, "png", new File(args[2]))) {
            throw new IOException("no PNG can be written here");
        }
    }

    private static void paint(Element element, Graphics2D pen) {
        if (element.getTagName().equals("line")) {
            pen.setColor(Color.decode(element.getAttribute("stroke")));
            pen.setStroke(new BasicStroke(
                    (float) number(element, "stroke-width"), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            pen.draw(new Line2D.Double(
                    number(element, "x1"), number(element, "y1"), number(element, "x2"), number(element, "y2")));
            return;
        }
        pen.setColor(Color.decode(element.getAttribute("fill")));
        pen.fill(shape(element));
    }

    private static Shape shape(Element element) {
        if (element.getTagName().equals("circle")) {
            double r = number(element, "r");
            return new Ellipse2D.Double(number(element, "cx") - r, number(element, "cy") - r, 2 * r, 2 * r);
        }
        if (element.getTagName().equals("rect")) {
            double round = 2 * number(element, "rx");
            return new RoundRectangle2D.Double(
                    number(element, "x"),
                    number(element, "y"),
                    number(element, "width"),
                    number(element, "height"),
                    round,
                    round);
        }
        throw new IllegalArgumentException("cannot paint a " + element.getTagName());
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }
}
