package evenhand.window;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Tests that each begin at a first start of the window, and leave it. */
@OnScreen
@Timeout(300)
abstract class AtTheWindow {
    @TempDir
    Path folder;

    Hands hands;

    @BeforeEach
    void open() throws Exception {
        hands = new Hands(folder.resolve("state"), Optional.empty());
    }

    @AfterEach
    void close() {
        hands.close();
    }
}
