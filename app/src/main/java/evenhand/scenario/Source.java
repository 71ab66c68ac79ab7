package evenhand.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

/** The text of a file, and where its lines begin. */
final class Source {
    /** A hundred times what the longest measured road test needs. */
    static final long LARGEST = 20L << 20;

    private static final Place WHOLE = new Place("", 0, 0, 0, 0);

    private final String text;
    private final int[] lines;

    Source(String text) {
        this.text = text;
        this.lines = lineStarts(text);
    }

    String text() {
        return text;
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[16];
        int count = 1;
        for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
            if (count == starts.length) {
                starts = Arrays.copyOf(starts, 2 * count);
            }
            starts[count++] = at + 1;
        }
        return Arrays.copyOf(starts, count);
    }

    /** The place of a piece of text. */
    Place place(String where, int start, int end) {
        int found = Arrays.binarySearch(lines, start);
        int line = found >= 0 ? found : -found - 2;
        int first = line == 0 && text.startsWith("\uFEFF") ? 1 : lines[line]; // the byte-order mark has no width
        return new Place(where, line + 1, Math.max(start - first, 0) + 1, start, end);
    }

    /**
     * Reads a file; what is wrong with it goes to the problems.
     *
     * @param kind what it should be, as in "scenario"
     */
    static Optional<Source> read(Path file, String kind, Problems problems) {
        try {
            if (Files.isDirectory(file)) {
                problems.at(WHOLE, "is a folder; name a " + kind + " file in it");
                return Optional.empty();
            }
            if (isNamedPipe(file)) {
                problems.at(WHOLE, "is a pipe, which may keep one waiting for ever; name a file, or /dev/stdin");
                return Optional.empty();
            }
            try (InputStream in = Files.newInputStream(file)) {
                return read(in, kind, problems);
            }
        } catch (NoSuchFileException missing) {
            problems.at(WHOLE, "is not there; look at the name and the folder");
            return Optional.empty();
        } catch (IOException | SecurityException unreadable) {
            problems.at(WHOLE, "cannot be read; look at the permissions of the file");
            return Optional.empty();
        }
    }

    /** The same from a stream, up to its end. */
    static Optional<Source> read(InputStream in, String kind, Problems problems) throws IOException {
        byte[] bytes = in.readNBytes((int) LARGEST + 1); // not by its size: a device has none, and no end
        if (bytes.length > LARGEST) {
            problems.at(WHOLE, "is larger than " + (LARGEST >> 20) + " MB, which no " + kind + " is; look at the name");
            return Optional.empty();
        }
        return decode(bytes, problems);
    }

    /** The same of what comes in from elsewhere than a file. */
    static Optional<Source> readIn(InputStream in, String kind, Problems problems) {
        try {
            return read(in, kind, problems);
        } catch (IOException unreadable) {
            problems.at(WHOLE, "cannot be read; hand over a " + kind + " or name its file");
            return Optional.empty();
        }
    }

    /** What a shell hands over as a file stands among the devices, and somebody writes to it. */
    private static boolean isNamedPipe(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).isOther()
                && Stream.of("/dev", "/proc").noneMatch(file.toAbsolutePath()::startsWith);
    }

    static Optional<Source> decode(byte[] bytes, Problems problems) {
        if (bytes.length > 1 && (bytes[0] == 0 || bytes[1] == 0)) {
            // Other encodings put a zero beside each letter of the Latin alphabet, and are UTF-8 by accident.
            problems.at(new Source("").place("", 0, 0), "is not UTF-8 text; save the file as UTF-8");
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        Source source = new Source(out.flip().toString());
        if (result.isError()) {
            Place place = source.place("", source.text.length(), source.text.length());
            problems.at(place, "is not UTF-8 text from here on; save the file as UTF-8");
            return Optional.empty();
        }
        return Optional.of(source);
    }
}
