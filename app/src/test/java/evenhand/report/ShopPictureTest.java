package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShopPictureTest {
    @TempDir
    Path folder;

    private Path home() {
        return folder.resolve("car.json");
    }

    /** A small file that unfolds to gigabytes ended the report as a defect. */
    @ParameterizedTest
    @ValueSource(ints = {30_000, 8_000, 2_000_000_000})
    void aPictureThatUnfoldsTooFarIsRefusedByItsHead(int side) throws IOException {
        try (DataOutputStream png = new DataOutputStream(Files.newOutputStream(folder.resolve("bomb.png")))) {
            png.writeLong(0x89504E470D0A1A0AL);
            byte[] head = {0, 0, 0, 0, 0, 0, 0, 0, 8, 2, 0, 0, 0}; // eight bits each of red, green and blue
            for (int i = 0; i < 4; i++) {
                head[i] = head[i + 4] = (byte) (side >> (24 - 8 * i));
            }
            chunk(png, "IHDR", head);
            chunk(png, "IDAT", new byte[0]);
        }
        assertThatThrownBy(() -> ShopPicture.read(home(), "bomb.png"))
                .isInstanceOf(CannotReport.class)
                .hasMessage("\"bomb.png\" has " + side + " by " + side
                        + " points, and no more than 50 million are read, 20000 on a side; save it smaller, 800 points"
                        + " on a side are enough");
    }

    private static void chunk(DataOutputStream png, String kind, byte[] bytes) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(kind.getBytes(StandardCharsets.US_ASCII));
        sum.update(bytes);
        png.writeInt(bytes.length);
        png.write(kind.getBytes(StandardCharsets.US_ASCII));
        png.write(bytes);
        png.writeInt((int) sum.getValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg"})
    void aLargePictureIsReadWithoutRoomForAllOfItsPoints(String kind) throws Exception {
        BufferedImage large = new BufferedImage(6_400, 4_800, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = large.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(3_200, 0, 3_200, 4_800);
        g.dispose();
        ImageIO.write(large, kind, folder.resolve("large").toFile());
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        BufferedImage read = ShopPicture.read(home(), "large").image();
        long bytes = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(read.getWidth()).isEqualTo(800);
        assertThat(read.getHeight()).isEqualTo(600);
        assertThat(read.getRGB(380, 300)).isEqualTo(0xFF000000);
        assertThat(read.getRGB(420, 300)).isEqualTo(0xFFFFFFFF);
        assertThat(bytes).isLessThan(25_000_000); // it has 31 million points
    }

    @Test
    void aSmallPictureIsNotBlownUp() throws Exception {
        ImageIO.write(
                new BufferedImage(30, 20, BufferedImage.TYPE_INT_ARGB),
                "png",
                folder.resolve("s.png").toFile());
        BufferedImage read = ShopPicture.read(home(), "s.png").image();
        assertThat(read.getWidth()).isEqualTo(30);
        assertThat(read.getHeight()).isEqualTo(20);
    }

    @Test
    void anotherKindOfPictureIsNamed() throws Exception {
        ImageIO.write(
                new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB),
                "bmp",
                folder.resolve("s.png").toFile());
        assertThatThrownBy(() -> ShopPicture.read(home(), "s.png"))
                .hasMessage("\"s.png\" is a picture of the kind bmp; save it as PNG or JPEG");
    }
}
