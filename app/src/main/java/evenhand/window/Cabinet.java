package evenhand.window;

import evenhand.quantity.Unseen;
import evenhand.scenario.ScenarioFile;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Drawer;
import evenhand.window.desk.Filed;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Memory;
import evenhand.window.desk.Openings;
import evenhand.window.desk.Safekeeping;
import evenhand.window.desk.Verdicts;
import evenhand.window.desk.When;
import evenhand.window.desk.Worker;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Files of the window: opening, saving, keeping unsaved work safe, and noticing what others do to a file. */
final class Cabinet implements Bench.View {
    /** Unsaved work is kept safe when the hands were still for so long, ms. */
    private static final long CALM = 1000;

    private final Bench bench;
    private final Memory memory;
    private final Safekeeping safekeeping;
    private final Asker asker;
    private final Notice notice;
    private final Runnable finishTyping;
    private final Worker<Desk> keeper;
    private final Verdicts verdicts;
    private final Openings openings;

    /** Since when another window has the file open, as it was told. */
    private Optional<Instant> elsewhere = Optional.empty();

    private ScenarioFile.Since outside = ScenarioFile.Since.SAME;

    /** @param finishTyping takes over what is still being typed */
    Cabinet(
            Bench bench,
            Memory memory,
            Safekeeping safekeeping,
            Openings openings,
            Asker asker,
            Notice notice,
            Runnable finishTyping) {
        this.bench = bench;
        this.memory = memory;
        this.safekeeping = safekeeping;
        this.openings = openings;
        this.asker = asker;
        this.notice = notice;
        this.finishTyping = finishTyping;
        verdicts = new Verdicts(memory);
        keeper = new Worker<>("safekeeping", CALM, (desk, progress) -> keep(desk), share -> {});
    }

    Desk desk() {
        return bench.desk();
    }

    List<Path> recent() {
        return memory.recent();
    }

    /** Recent files with what is remembered of them, those that are gone too. */
    List<Memory.Recent> remembered() {
        return memory.remembered();
    }

    void forget(Path file) {
        memory.forget(file);
    }

    @Override
    public void show(Desk before, Desk now) {
        verdicts.show(before, now);
        if (!before.work().scenario().equals(now.work().scenario())
                || !before.filed().equals(now.filed())) {
            keeper.ask(now);
        }
        if (!before.look().isDressedAs(now.look())
                || !before.look().arrangement().equals(now.look().arrangement())
                || before.look().units() != now.look().units()) {
            memory.remember(now.look());
        }
        if (!before.work().shelf().equals(now.work().shelf())
                || !before.filed().path().equals(now.filed().path())) {
            now.filed()
                    .path()
                    .ifPresent(file -> memory.remember(file, now.work().shelf()));
        }
    }

    private void keep(Desk desk) {
        if (!desk.unsaved()) {
            safekeeping.drop();
            return;
        }
        safekeeping.keep(desk).ifPresent(why -> SwingUtilities.invokeLater(() -> notice.say(why)));
    }

    /** Offers unsaved work that a crash left. */
    void offerLeft() {
        for (Safekeeping.Left left : safekeeping.left().stream().limit(1).toList()) {
            notice.also(
                    named(left) + ", changed " + When.words(left.when())
                            + ", was not saved when Evenhand last ended. It was kept.",
                    new Notice.Choice("take it up", () -> {
                        if (show(Drawer.open(left.text(), left.file()))) {
                            keep(bench.desk());
                            safekeeping.drop(left);
                        }
                    }),
                    new Notice.Choice("forget it", () -> safekeeping.drop(left)));
        }
    }

    private static String named(Safekeeping.Left left) {
        String title = Unseen.shown(left.title());
        String file = left.file().map(path -> "“" + shown(path) + "”").orElse("");
        return title.isBlank()
                ? file.isEmpty() ? "A car without a title" : file
                : title + (file.isEmpty() ? "" : " (" + file + ")");
    }

    void openDemo(String name) {
        if (mayLeave()) {
            show(Demos.open(name));
            if (name.equals(Demos.NAMES.get(0)) && remembered().isEmpty()) {
                notice.say(StartPane.TO_DRAG);
            }
        }
    }

    /** Opens a text as new work. */
    void openNew(String text) {
        if (mayLeave()) {
            show(Drawer.open(text, Optional.empty()));
        }
    }

    void openChosen() {
        if (mayLeave()) {
            asker.toOpen(near()).ifPresent(this::read);
        }
    }

    /** Opens a file; whether it is open now. */
    boolean open(Path file) {
        return mayLeave() && read(file);
    }

    /** Reads a file, without asking what becomes of the one before. */
    boolean read(Path file) {
        return read(file, "This is still shown, as it was: ");
    }

    /** Reads the file that the window begins with; where it cannot be opened, a demo car is shown. */
    boolean readFirst(Path file) {
        return read(file, "Choose another, or go on with the demo car ");
    }

    private boolean read(Path file, String instead) {
        Drawer.Opened found = Drawer.open(file);
        if (found instanceof Drawer.Opened.Broken broken) {
            notice.say("“" + shown(file) + "” cannot be opened, nothing in it was changed:\n"
                    + String.join("\n", broken.problems()) + "\n" + instead + "“"
                    + bench.desk().work().scenario().title() + "”.");
            return false;
        }
        boolean opened = show(found);
        if (opened) {
            remember(file);
        }
        return opened;
    }

    private boolean show(Drawer.Opened opened) {
        if (opened instanceof Drawer.Opened.Broken broken) {
            notice.say("This file cannot be opened:\n" + String.join("\n", broken.problems()));
            return false;
        }
        Drawer.Opened.Sound sound = (Drawer.Opened.Sound) opened;
        notice.hush();
        outside = ScenarioFile.Since.SAME;
        bench.open(
                sound.filed()
                        .path()
                        .map(file -> sound.work().with(memory.shelf(file)))
                        .orElse(sound.work()),
                sound.filed());
        if (bench.desk().look().page() == Look.Page.START) {
            bench.act(new LookAct.TurnTo(Look.Page.ANSWER));
        }
        hold();
        return true;
    }

    private void remember(Path file) {
        memory.opened(file, bench.desk().work().scenario().title(), Instant.now());
    }

    private Optional<Path> near() {
        return bench.desk().filed().path().or(() -> memory.recent().stream().findFirst());
    }

    /** Saves; whether it is saved now. */
    boolean save() {
        finishTyping.run();
        Optional<Path> file = bench.desk().filed().path();
        return file.isPresent() ? saveIn(file.get()) : saveAs();
    }

    boolean saveAs() {
        finishTyping.run();
        Optional<Path> file = asker.toSave(bench.desk().filed().path().orElseGet(() -> proposed(".json")));
        return file.isPresent() && saveIn(file.get());
    }

    /** A file for something made of the job: named after it, where the person is at work. */
    Path proposed(String ending) {
        Optional<Path> own = bench.desk().filed().path();
        String name = own.map(file -> file.getFileName().toString())
                .orElseGet(() -> fileName(bench.desk().work().scenario().title()));
        return near().map(Path::toAbsolutePath)
                .map(Path::getParent)
                .orElseGet(() -> Path.of("").toAbsolutePath())
                .resolve(name.replaceAll("\\.json$", "") + ending);
    }

    private static String shown(Path file) {
        return Unseen.shown(String.valueOf(file.getFileName()));
    }

    /** Takes over what is still being typed. */
    void finishTyping() {
        finishTyping.run();
    }

    static String fileName(String title) {
        String words =
                title.toLowerCase(java.util.Locale.ROOT).split("[:.]", -1)[0].replaceAll("[^a-z0-9]+", "-");
        String trimmed = words.replaceAll("^-+|-+$", "");
        return (trimmed.isEmpty() ? "car" : trimmed) + ".json";
    }

    /** Saves in a file; where another program has written it since it was read, as the person decides. */
    boolean saveIn(Path file) {
        Filed filed = bench.desk().filed();
        boolean same = filed.path().map(own -> Drawer.isSame(own, file)).orElse(false);
        if (!same || Drawer.outside(filed) != ScenarioFile.Since.CHANGED) {
            return write(file);
        }
        return switch (asker.changedOutside(shown(file))) {
            case MINE -> keepMine(file);
            case THEIRS -> takeTheirs(file);
            case ELSEWHERE -> saveElsewhere(file);
            case BACK -> false;
        };
    }

    private boolean keepMine(Path file) {
        Drawer.Kept kept = Drawer.keepTheirs(file);
        if (!isKept(kept) || !write(file)) {
            return false;
        }
        notice.say("“" + shown(file) + "” is saved as it is here. What the other program had written is in “"
                + name(kept) + "”.");
        return true;
    }

    private boolean takeTheirs(Path file) {
        Drawer.Kept kept = Drawer.keepMine(bench.desk(), file);
        if (!isKept(kept)) {
            return false;
        }
        boolean opened = read(file);
        String mine = "What was here is in “" + name(kept) + "”.";
        if (opened) {
            notice.say("“" + shown(file) + "” is shown as the other program has written it. " + mine);
        } else {
            notice.also(mine);
        }
        return opened;
    }

    /** In another file than the one that has changed. */
    private boolean saveElsewhere(Path changed) {
        Optional<Path> file = asker.toSave(ScenarioFile.free(changed, "mine"));
        return file.isPresent() && saveIn(file.get());
    }

    private boolean isKept(Drawer.Kept kept) {
        if (kept instanceof Drawer.Kept.Nowhere nowhere) {
            notice.say(nowhere.why(), new Notice.Choice("save as …", this::saveAs));
            return false;
        }
        return true;
    }

    private static String name(Drawer.Kept kept) {
        return kept instanceof Drawer.Kept.In in ? in.file().getFileName().toString() : "";
    }

    private boolean write(Path file) {
        Desk desk = bench.desk();
        Optional<String> why = Drawer.save(desk, file);
        if (why.isPresent()) {
            notice.say(why.get(), new Notice.Choice("save as …", this::saveAs));
            return false;
        }
        remember(file);
        outside = ScenarioFile.Since.SAME;
        if (notice.text().contains("“" + shown(file) + "”")) {
            notice.hush(); // what kept it from being saved is overcome
        }
        boolean other = !desk.filed().path().equals(Optional.of(file));
        bench.act(new LookAct.Saved(
                new Filed(Optional.of(file), Optional.of(desk.work().scenario().text()))));
        if (other) {
            hold();
        }
        return true;
    }

    /** Whether nothing would be lost by leaving the work: it is saved, or the person wants it gone. */
    boolean mayLeave() {
        finishTyping.run();
        if (!bench.desk().unsaved()) {
            return true;
        }
        return switch (asker.unsaved(bench.desk().work().scenario().title())) {
            case SAVE -> save();
            case DISCARD -> true;
            case STAY -> false;
        };
    }

    /** The window is closed in good order: nothing is left behind. */
    void close() {
        keeper.close();
        verdicts.close();
        openings.close();
        safekeeping.drop();
    }

    /** Tells other windows which file is open here, and the person where another has it too. */
    private void hold() {
        elsewhere = Optional.empty();
        openings.hold(bench.desk().filed().path(), Instant.now());
        lookElsewhere();
    }

    private void lookElsewhere() {
        Optional<Path> file = bench.desk().filed().path();
        Optional<Instant> since = file.flatMap(openings::elsewhere);
        if (!since.equals(elsewhere)) {
            elsewhere = since;
            since.ifPresent(when -> notice.also(
                    "“" + file.map(Cabinet::shown).orElse("") + "” is open in another window too, since "
                            + When.words(when).replaceFirst("^at ", "")
                            + ". Nothing is lost: whoever saves second is asked which version stays, and both are kept.",
                    new Notice.Choice("save as …", this::saveAs)));
        }
    }

    /** Looks whether another program has changed the file, or another window has opened it; says it once. */
    void lookOutside() {
        lookElsewhere();
        Filed filed = bench.desk().filed();
        ScenarioFile.Since now = Drawer.outside(filed);
        if (now == outside) {
            return;
        }
        outside = now;
        String name = filed.path().map(Cabinet::shown).orElse("");
        if (now == ScenarioFile.Since.CHANGED) {
            notice.say(
                    "“" + name + "” was changed by another program. What is shown here is as it was before; saving asks"
                            + " which of the two is to stay, and keeps both.",
                    new Notice.Choice("read it again", () -> filed.path().ifPresent(this::open)));
        } else if (now == ScenarioFile.Since.GONE) {
            notice.say(
                    "“" + name + "” is no longer there. Everything is still here; save it to write it again.",
                    new Notice.Choice("save", this::save));
        }
    }
}
