import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Paints the icon in a size: {@code java Icon.java evenhand.svg 48 evenhand.png}, or {@code .ico}. It knows the few shapes that are in it. */
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
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        if (!ImageIO.write(picture, "png", png)) {
            throw new IOException("no PNG can be written here");
        }
        try (OutputStream out = new FileOutputStream(args[2])) {
            if (args[2].endsWith(".ico")) {
                out.write(head(size, png.size()));
            }
            png.writeTo(out);
        }
    }

    /** What stands before the only picture of a Windows icon: one picture, its size (0 is 256), 32 bits, its length, where it begins. */
    private static byte[] head(int size, int length) {
        return ByteBuffer.allocate(22)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putShort((short) 0)
                .putShort((short) 1)
                .putShort((short) 1)
                .put((byte) size)
                .put((byte) size)
                .putShort((short) 0)
                .putShort((short) 1)
                .putShort((short) 32)
                .putInt(length)
                .putInt(22)
                .array();
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
