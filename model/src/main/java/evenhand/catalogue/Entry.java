package evenhand.catalogue;

import static java.util.stream.Collectors.joining;

import evenhand.quantity.Quantity;
import java.util.List;
import java.util.Map;

/** What a person gave under one key. */
public sealed interface Entry
        permits Entries,
                Entry.Measured,
                Entry.Word,
                Entry.Texts,
                Entry.Drawn,
                Entry.Numbers,
                Entry.Names,
                Entry.Shares,
                Entry.Listed,
                Entry.Unreadable {
    /** As it is written, or in short. */
    String text();

    record Measured(Quantity quantity) implements Entry {
        @Override
        public String text() {
            return quantity.text();
        }
    }

    /** A word of a choice, or any text. */
    record Word(String text) implements Entry {}

    record Texts(Map<String, String> texts) implements Entry {
        @Override
        public String text() {
            return texts.toString();
        }
    }

    /** The points of a curve. */
    record Drawn(List<Point> points) implements Entry {
        public record Point(Quantity at, Quantity force) {}

        public Drawn {
            points = List.copyOf(points);
        }

        @Override
        public String text() {
            return points.stream()
                    .map(p -> p.force().text() + " at " + p.at().text())
                    .collect(joining(", "));
        }
    }

    /** Numbers one after another. */
    record Numbers(List<Quantity> numbers) implements Entry {
        public Numbers {
            numbers = List.copyOf(numbers);
        }

        @Override
        public String text() {
            return numbers.stream().map(Quantity::text).collect(joining(", "));
        }
    }

    /** Texts one after another. */
    record Names(List<String> names) implements Entry {
        public Names {
            names = List.copyOf(names);
        }

        @Override
        public String text() {
            return String.join(", ", names);
        }
    }

    /** Names, and how often each counts. */
    record Shares(List<Share> shares) implements Entry {
        public record Share(String name, Quantity times) {}

        public Shares {
            shares = List.copyOf(shares);
        }

        @Override
        public String text() {
            return shares.stream()
                    .map(share -> share.times().text() + " of " + share.name())
                    .collect(joining(", "));
        }
    }

    record Listed(List<Entries> items) implements Entry {
        public Listed {
            items = List.copyOf(items);
        }

        @Override
        public String text() {
            return items.size() + " of them";
        }
    }

    /** Something that was reported already; what needs it is not built. */
    record Unreadable() implements Entry {
        @Override
        public String text() {
            return "unreadable";
        }
    }
}
