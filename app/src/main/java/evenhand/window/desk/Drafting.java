package evenhand.window.desk;

import evenhand.catalogue.Content;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Path;
import evenhand.catalogue.Shape;
import evenhand.catalogue.Slot;
import evenhand.scenario.EntryJson;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is asked for while an object is drafted that the car or the job has not yet. */
public final class Drafting {
    private Drafting() {}

    /**
     * The fields of an object that is being drafted: all of its own, and those that it needs in the objects below.
     *
     * @param given the car or job whose object it is
     * @param path of the object
     * @param draft what was typed so far, by path
     */
    public static List<FormField> drafted(Form.Home home, Entries given, String path, Draft draft) {
        List<FormField> fields = new ArrayList<>();
        draft(path, FormPlace.of(home, given, Path.of(path).steps()).shape(), draft, true, fields);
        return fields;
    }

    /** The fields that an object cannot do without, or all where it is the one that is drafted. */
    static void draft(String path, Shape<?> shape, Draft draft, boolean all, List<FormField> fields) {
        Optional<String> word = Optional.empty();
        if (shape instanceof Shape.Kinds<?> kinds) {
            String key = Path.join(path, kinds.key());
            word = draft.get(key);
            fields.add(FormField.kind(key, kinds, word));
        }
        for (Slot<?> slot : FormPlace.plain(shape, word).slots()) {
            String here = Path.join(path, slot.key());
            Optional<String> typed = draft.get(here);
            if (slot.content() instanceof Content.Group<?> group) {
                if (slot.required()) {
                    draft(here, group.shape(), draft, isOfNumbers(group.shape()), fields);
                }
            } else if (all || slot.required()) {
                Optional<Grid> grid = Grid.of(slot, typed.flatMap(json -> EntryJson.read(slot, json)));
                if (grid.isPresent() || !(slot.content() instanceof Content.Groups<?>)) {
                    fields.add(FormField.of(here, slot, typed, Optional.empty(), grid));
                }
            }
        }
    }

    /** Whether an object holds nothing but numbers, any of which may be left out: then all are asked for. */
    private static boolean isOfNumbers(Shape<?> shape) {
        return shape instanceof Shape.Plain<?> plain
                && plain.slots().stream().allMatch(slot -> slot.content() instanceof Content.Numbers);
    }
}
