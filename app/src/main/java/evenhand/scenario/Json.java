package evenhand.scenario;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A file's values, each with its place. Immutable. */
sealed interface Json {
    Place place();

    /** What it is, in words. */
    String words();

    /**
     * An object.
     *
     * @param keys places of the keys themselves
     * @param removed what a patch took away by null, so that it can still be pointed at
     */
    record Obj(Place place, Map<String, Json> members, Map<String, Place> keys, Map<String, Json> removed)
            implements Json {
        public Obj {
            members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
            keys = Map.copyOf(keys);
            removed = Map.copyOf(removed);
        }

        @Override
        public String words() {
            return "an object";
        }
    }

    record Arr(Place place, List<Json> items) implements Json {
        public Arr {
            items = List.copyOf(items);
        }

        @Override
        public String words() {
            return "a list";
        }
    }

    record Str(Place place, String text) implements Json {
        @Override
        public String words() {
            return "a text";
        }
    }

    /** A number, as it was written. */
    record Num(Place place, String text) implements Json {
        @Override
        public String words() {
            return "a number";
        }
    }

    record Bool(Place place, boolean value) implements Json {
        @Override
        public String words() {
            return String.valueOf(value);
        }
    }

    record Null(Place place) implements Json {
        @Override
        public String words() {
            return "null";
        }
    }
}
