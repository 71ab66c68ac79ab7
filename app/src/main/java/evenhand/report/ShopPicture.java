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
import java.util.Optional;
import javax.imageio.ImageIO;

/** The picture that a workshop puts on its papers. */
public record ShopPicture(BufferedImage image) {
    /** More px on a side are more than a head of this size shows. */
    private static final int LARGEST = 800;

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
        BufferedImage image;
        try (var in = Files.newInputStream(path)) {
            image = ImageIO.read(in);
        } catch (IOException | RuntimeException e) { // readers of pictures throw both on broken ones
            throw new CannotReport(whose + "cannot be read as a picture; save it again as PNG or JPEG");
        }
        if (image == null) {
            throw new CannotReport(whose + "is no picture; write the path of a PNG or JPEG picture");
        }
        return new ShopPicture(fitted(image));
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
