package evenhand.window.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The demo cars, which come with the program. */
public final class Demos {
    /** Names of their files; the first is the one that a first start opens. */
    public static final List<String> NAMES = List.of(
            "harbour-saloon",
            "orchard-estate",
            "postman-leaf",
            "bakery-front-drive",
            "tinkers-lane-roadster",
            "slipper-coupe",
            "quarry-special",
            "sluice-tourer");

    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** Ends a sentence of a story. */
    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?]) ");

    /**
     * What a demo car is called, and its story.
     *
     * @param whole all that its file tells
     */
    public record Story(String title, String whole) {
        /** Its first sentence. */
        public String first() {
            return SENTENCE.split(whole, 2)[0];
        }
    }

    private Demos() {}

    /** The story of a demo car, without reading the car itself. */
    public static Story story(String name) {
        try {
            JsonNode file = JSON.readTree(text(name));
            return new Story(
                    file.path("title").asText(title(name)), file.path("story").asText(""));
        } catch (JsonProcessingException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** As a person reads it: "Harbour saloon". */
    public static String title(String name) {
        String words = name.replace('-', ' ');
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    /** A demo car as a job of one's own: it has no file until it is saved, and nothing is lost while it is as it came. */
    public static Drawer.Opened.Sound open(String name) {
        String text = text(name);
        Drawer.Opened opened = Drawer.open(text, Optional.empty());
        if (opened instanceof Drawer.Opened.Sound sound) {
            return new Drawer.Opened.Sound(sound.work(), new Filed(Optional.empty(), Optional.of(text)));
        }
        throw new IllegalStateException("the demo car " + name + " has problems");
    }

    private static String text(String name) {
        try (InputStream in = Demos.class.getResourceAsStream("/evenhand/demo/" + name + ".json")) {
            if (in == null) {
                throw new IllegalStateException("the demo car " + name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
