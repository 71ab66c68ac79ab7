package evenhand.scenario;

import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Entries as the file writes them, and read back from that. */
public final class EntryJson {
    private EntryJson() {}

    /** What was given under a key, with the units that the person used. */
    public static String write(Slot<?> slot, Entry entry) {
        Content<?> content = slot.content();
        if (entry instanceof Entry.Measured measured) {
            return ScenarioWriter.scalar(measured.quantity().text());
        } else if (entry instanceof Entry.Drawn drawn) {
            return list(drawn.points().stream()
                    .map(point -> list(List.of(
                            ScenarioWriter.quoted(point.at().text()),
                            ScenarioWriter.quoted(point.force().text()))))
                    .toList());
        } else if (entry instanceof Entry.Numbers numbers) {
            return list(numbers.numbers().stream()
                    .map(number -> ScenarioWriter.scalar(number.text()))
                    .toList());
        } else if (entry instanceof Entry.Names names) {
            return list(names.names().stream().map(ScenarioWriter::quoted).toList());
        } else if (entry instanceof Entry.Shares shares) {
            return list(shares.shares().stream()
                    .map(share -> list(List.of(
                            ScenarioWriter.quoted(share.name()),
                            ScenarioWriter.scalar(share.times().text()))))
                    .toList());
        } else if (content instanceof Content.Flag) {
            return entry.text();
        } else if (entry instanceof Entry.Listed listed && content instanceof Content.Groups<?> groups) {
            return list(listed.items().stream()
                    .map(item -> object(groups.shape(), item))
                    .toList());
        } else if (entry instanceof Entries entries && content instanceof Content.Group<?> group) {
            return object(group.shape(), entries);
        } else if (entry instanceof Entry.Texts texts) {
            List<String> members = new ArrayList<>();
            texts.texts().forEach((key, text) -> members.add(member(key, ScenarioWriter.quoted(text))));
            return "{" + String.join(", ", members) + "}";
        }
        return ScenarioWriter.quoted(entry.text());
    }

    private static String object(Shape<?> shape, Entries entries) {
        List<String> members = new ArrayList<>();
        if (shape instanceof Shape.Kinds<?> kinds) {
            entries.kind().ifPresent(word -> members.add(member(kinds.key(), ScenarioWriter.quoted(word))));
        }
        Shape.Plain<?> plain = shape.plain(entries);
        for (Map.Entry<String, Entry> one : entries.given().entrySet()) {
            plain.slot(one.getKey()).ifPresent(slot -> members.add(member(one.getKey(), write(slot, one.getValue()))));
        }
        return "{" + String.join(", ", members) + "}";
    }

    private static String member(String key, String value) {
        return ScenarioWriter.quoted(key) + ": " + value;
    }

    private static String list(List<String> items) {
        return "[" + String.join(", ", items) + "]";
    }

    /** What stands under a key where the file has this text there; empty where it cannot be read. */
    public static Optional<Entry> read(Slot<?> slot, String json) {
        Problems problems = new Problems("");
        Shape<Slot<?>> alone = new Shape.Plain<>("alone", List.of(slot), values -> slot);
        return JsonReader.read(new Source("{" + member(slot.key(), json) + "}"), problems)
                .flatMap(root -> new EntryReader(problems).read(alone, root))
                .filter(entries -> problems.isEmpty())
                .flatMap(entries -> entries.get(slot.key()));
    }
}
