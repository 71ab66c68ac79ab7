package evenhand.window.desk;

import java.util.List;
import java.util.Optional;

/**
 * Where a form writes to, and what is typed there as acts.
 *
 * @param setup the set-up that is changed alone; the car of all where empty
 */
public record Target(Form.Home home, Optional<String> setup) {
    /** Another value, as typed; one of a few words or any text is quoted. */
    public Act value(FormField field, String text, List<String> insteadOf) {
        if (text.isBlank()) {
            return out(field.path());
        }
        if (home == Form.Home.CAR && field.isQuantity()) {
            return new EditAct.SetValue(setup, field.path(), text, insteadOf);
        }
        return json(field.path(), field.json(text), List.of());
    }

    /** Another name for what has one of its own, in the car and in every set-up. */
    public Act name(String path, String name) {
        return new EditAct.Rename(path, name.strip());
    }

    /** Another value, as JSON. */
    public Act json(String path, String json, List<String> insteadOf) {
        return switch (home) {
            case CAR -> new EditAct.SetJson(setup, path, json, insteadOf);
            case JOB -> new EditAct.SetInFile(path, Optional.of(json));
            case SETUP -> new SetupAct.SetSheet(setup.orElseThrow(), json);
        };
    }

    /** Takes a value out, so that what stands in for it counts again. */
    public Act out(String path) {
        return home == Form.Home.JOB
                ? new EditAct.SetInFile(path, Optional.empty())
                : new EditAct.TakeBack(setup, path);
    }

    /** Takes an object or an item of a list off the car; a set-up says so. */
    public Act remove(String path) {
        boolean item = path.endsWith("]");
        return home == Form.Home.CAR && setup.isPresent() && !item
                ? new EditAct.SetJson(setup, path, "null", List.of())
                : out(path);
    }

    /** Other rows of a table. Where one cell or one row differs, only that is written. */
    public Act rows(FormField field, Grid grid, List<List<String>> wanted) {
        List<List<String>> given = grid.rows();
        String path = field.path();
        if (grid.kind() == Grid.Kind.OBJECTS) {
            if (wanted.size() == given.size() + 1
                    && wanted.subList(0, given.size()).equals(given)) {
                return json(path + "[" + given.size() + "]", grid.item(wanted.get(given.size())), List.of());
            }
            int row = differing(given, wanted);
            if (wanted.size() + 1 == given.size()) {
                return remove(path + "[" + row + "]");
            }
            if (wanted.size() == given.size() && row < wanted.size()) {
                int column = differing(given.get(row), wanted.get(row));
                String cell =
                        path + "[" + row + "]." + grid.columns().get(column).key();
                String text = wanted.get(row).get(column);
                return text.isBlank() ? out(cell) : json(cell, grid.value(column, text), List.of());
            }
        }
        return wanted.isEmpty() && home != Form.Home.SETUP && !field.isNeeded()
                ? out(path)
                : json(path, grid.json(wanted), List.of());
    }

    private static int differing(List<?> one, List<?> other) {
        int i = 0;
        while (i < one.size() && i < other.size() && one.get(i).equals(other.get(i))) {
            i++;
        }
        return i;
    }
}
