package evenhand.report;

import evenhand.scenario.Scenario;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** The picture that a workshop puts on its papers. */
public record ShopPicture(BufferedImage image) {
    /** More px on a side are more than a head of this size shows. */
    private static final int LARGEST = 800;

    /** More than a telephone takes. A JPEG may need six bytes of room for each point, however few of them are kept. */
    private static final long MOST_POINTS = 50_000_000;

    /** A row is kept whole. */
    private static final int LONGEST = 20_000;

    private static final Set<String> FORMATS = Set.of("png", "jpeg");

    /**
     * That of a file's workshop, if it names one.
     *
     * @param home the file that it is named in; a relative path starts from that file's folder
     */
    public static Optional<ShopPicture> of(Scenario scenario, Path home) throws CannotReport {
        Optional<String> name = scenario.shop().flatMap(Scenario.Shop::picture);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(read(home, name.get()));
        } catch (CannotReport e) {
            throw new CannotReport(scenario.problem("shop.picture", String.valueOf(e.getMessage()))
                    .toString());
        }
    }

    /**
     * Reads it.
     *
     * @param home the file that it is named in; a relative path starts from that file's folder
     */
    public static ShopPicture read(Path home, String name) throws CannotReport {
        String whose = "\"" + name + "\" ";
        Path path;
        try {
            path = home.resolveSibling(name);
        } catch (InvalidPathException e) {
            throw new CannotReport(whose + "cannot be the name of a file; write the path of a PNG or JPEG picture");
        }
        if (!Files.isRegularFile(path)) {
            throw new CannotReport(whose + "is not there; write the path of a PNG or JPEG picture, from the folder of"
                    + " this file, or leave it out");
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(path.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new CannotReport(whose + "is no picture; write the path of a PNG or JPEG picture");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(
                        in, true, true); // forwards, and without what it says of itself, which may be endless too
                return new ShopPicture(fitted(points(reader, whose)));
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) { // readers of pictures throw both on broken ones
            throw new CannotReport(whose + "cannot be read as a picture; save it again as PNG or JPEG");
        }
    }

    /** Its points, or every so many of them. Looks at its head first: a small file can unfold to more than there is room for. */
    private static BufferedImage points(ImageReader reader, String whose) throws IOException, CannotReport {
        String format = reader.getFormatName();
        if (!FORMATS.contains(format.toLowerCase(Locale.ROOT))) {
            throw new CannotReport(whose + "is a picture of the kind " + format + "; save it as PNG or JPEG");
        }
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_POINTS || Math.max(width, height) > LONGEST) {
            throw new CannotReport(whose + "has " + width + " by " + height + " points, and no more than "
                    + MOST_POINTS / 1_000_000 + " million are read, " + LONGEST + " on a side; save it smaller, "
                    + LARGEST + " points on a side are enough");
        }
        ImageReadParam wish = reader.getDefaultReadParam();
        int step =
                Math.max(1, Math.max(width, height) / (2 * LARGEST)); // twice as many as shown keep their edges smooth
        wish.setSourceSubsampling(step, step, 0, 0);
        return reader.read(0, wish);
    }

    private static BufferedImage fitted(BufferedImage image) {
        double scale = Math.min(1, (double) LARGEST / Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(scale * image.getWidth()));
        int height = Math.max(1, (int) Math.round(scale * image.getHeight()));
        BufferedImage fitted = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = fitted.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(image, 0, 0, width, height, null);
        g.dispose();
        return fitted;
    }

    byte[] png() {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
