package evenhand.window;

import evenhand.catalogue.Entries;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Draft;
import evenhand.window.desk.Drafting;
import evenhand.window.desk.Form;
import evenhand.window.desk.FormField;
import evenhand.window.desk.FormPlace;
import evenhand.window.desk.Grid;
import evenhand.window.desk.PointRow;
import evenhand.window.desk.Target;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** What is typed into the form: where it goes, and what is kept of parts that are not whole yet. */
final class FormHand {
    private final Bench bench;
    private final Consumer<Optional<String>> say;
    private final Consumer<String> gone;
    private final Runnable again;
    private final Map<String, Draft> drafts = new LinkedHashMap<>();

    /** Links of which everything is shown that could differ on the right. */
    private final Set<String> rightAsked = new HashSet<>();

    private boolean wholeCar = true;

    /**
     * @param say tells what is wrong with a part that is not whole
     * @param gone is told of what is no longer there: a path and all that begins with it
     * @param again shows the form anew
     */
    FormHand(Bench bench, Consumer<Optional<String>> say, Consumer<String> gone, Runnable again) {
        this.bench = bench;
        this.say = say;
        this.gone = gone;
        this.again = again;
    }

    boolean isOnWholeCar() {
        return wholeCar;
    }

    /** @param whole whether the car of all set-ups is edited; else the active one alone */
    void turnTo(boolean whole) {
        wholeCar = whole;
        drafts.clear();
    }

    /** What was typed into another job's form is no part of this one. */
    void forget() {
        drafts.clear();
    }

    Form form(Desk now) {
        return wholeCar ? Form.of(now.work().scenario()) : Form.of(now.work().activeSetup());
    }

    private Entries car(Desk desk) {
        return wholeCar
                ? desk.work().scenario().car()
                : desk.work().activeSetup().entries();
    }

    private Entries given(Desk desk, Form.Section section) {
        return section.home() == Form.Home.JOB ? desk.work().scenario().given() : car(desk);
    }

    private Target target(Form.Section section) {
        return new Target(
                section.home(),
                wholeCar ? Optional.empty() : Optional.of(bench.desk().work().active()));
    }

    boolean isDrafted(Form.Section section) {
        return drafts.containsKey(section.added());
    }

    /** The fields of a section: those of its draft while it is drafted; none of one that the car has not. */
    List<FormField> fields(Desk desk, Form.Section section) {
        Draft draft = drafts.get(section.added());
        if (draft != null) {
            return Drafting.drafted(section.home(), given(desk, section), section.added(), draft);
        }
        boolean below = drafts.keySet().stream().anyMatch(path -> section.path().startsWith(path + "."));
        return section.absent() || below ? List.of() : withRight(section);
    }

    private List<FormField> withRight(Form.Section section) {
        List<FormField> all = new ArrayList<>(section.fields());
        if (rightAsked.contains(section.added())) {
            all.addAll(section.right());
        }
        return all;
    }

    boolean showsRight(Form.Section section) {
        return rightAsked.contains(section.added());
    }

    void showRight(Form.Section section, boolean shown) {
        if (shown) {
            rightAsked.add(section.added());
        } else {
            rightAsked.remove(section.added());
        }
        again.run();
    }

    List<PointRow> points(Desk now, Form.Section section, List<FormField> fields) {
        return PointRow.among(
                section.added(), fields, path -> FormPlace.meaning(section.home(), given(now, section), path));
    }

    /** Begins a draft of what the car has not. */
    void add(Form.Section section) {
        say.accept(Optional.empty());
        drafts.put(section.added(), Draft.EMPTY);
        again.run();
    }

    /** Leaves a draft: as it was. */
    void leave(Form.Section section) {
        say.accept(Optional.empty());
        drafts.remove(section.added());
        again.run();
    }

    /** Takes off what is there. */
    void remove(Form.Section section) {
        say.accept(Optional.empty());
        goneBelow(section.path());
        say.accept(bench.act(target(section).remove(section.path())));
        again.run();
    }

    /** What was typed into an object that is taken away goes with it; the items behind one of a list move up. */
    private void goneBelow(String path) {
        gone.accept(path.endsWith("]") ? path.substring(0, path.lastIndexOf('[')) : path);
    }

    FormRow.Taker taker(Form.Section section) {
        return new FormRow.Taker() {
            @Override
            public Optional<String> take(FormField field, String text) {
                say.accept(Optional.empty());
                Draft draft = drafts.get(section.added());
                if (draft != null) {
                    return draft(section, draft.with(field.path(), field.drafted(text)));
                }
                if (field.isOwnName(section)) {
                    goneBelow(section.path());
                    return bench.act(target(section).name(section.path(), text));
                }
                if (field.slot().isEmpty()) {
                    return draft(section, kindChanged(section, field, text));
                }
                return bench.act(target(section).value(field, text, insteadOf(section, field.path())));
            }

            @Override
            public Optional<String> take(FormField field, Grid grid, List<List<String>> wanted) {
                say.accept(Optional.empty());
                Draft draft = drafts.get(section.added());
                return draft == null
                        ? bench.act(target(section).rows(field, grid, wanted))
                        : draft(section, draft.with(field.path(), wanted.isEmpty() ? "" : grid.json(wanted)));
            }
        };
    }

    private List<String> insteadOf(Form.Section section, String path) {
        return section.home() == Form.Home.CAR ? FormPlace.insteadOf(car(bench.desk()), path) : List.of();
    }

    /** The object of another kind, with what both kinds have. */
    private Draft kindChanged(Form.Section section, FormField kind, String word) {
        Entries given = given(bench.desk(), section);
        Form now = Form.of(car(bench.desk()));
        Draft draft = Draft.EMPTY.with(kind.path(), word);
        for (FormField wanted : Drafting.drafted(section.home(), given, section.path(), draft)) {
            Optional<FormField> old = now.field(wanted.path());
            if (wanted.slot().isPresent()
                    && old.isPresent()
                    && old.get().given().isPresent()) {
                FormField had = old.get();
                String text = had.grid()
                        .map(grid -> grid.json(grid.rows()))
                        .orElseGet(() -> had.given().orElse(""));
                draft = draft.with(wanted.path(), text);
            }
        }
        return draft;
    }

    /** Takes the draft over if it makes a car, and keeps it as a draft if not yet. */
    private Optional<String> draft(Form.Section section, Draft draft) {
        String path = section.added();
        Optional<String> why = bench.act(target(section).json(path, draft.object(path), insteadOf(section, path)));
        if (why.isEmpty()) {
            drafts.remove(path);
        } else {
            drafts.put(path, draft);
        }
        say.accept(why.map(words -> "Still to be given: " + words));
        SwingUtilities.invokeLater(again);
        return Optional.empty();
    }
}
