package evenhand.window;

import evenhand.answers.Progress;
import evenhand.scenario.Setup;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.Look;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.WhichCar;
import evenhand.window.desk.Worker;
import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The report and the set-up sheet of the job as it stands on the desk: what of it, and into which file. */
final class ReportPane extends JPanel implements Bench.View {
    /** Kinds of files, as a person chooses among them. */
    private enum Kind {
        PDF(".pdf", "PDF, to print and hand over"),
        HTML(".html", "HTML, to read in a browser"),
        CSV(".csv", "CSV, the sheet as a table");

        private final String ending;
        private final String words;

        Kind(String ending, String words) {
            this.ending = ending;
            this.words = words;
        }
    }

    /** What a writing needs to know. */
    private record Writing(ReportWriter.Order order, Path to) {}

    private final transient Bench bench;
    private final transient Cabinet cabinet;
    private final transient Asker asker;
    private final transient Worker<Writing> worker;
    private final JPanel choices;
    private final PreviewPane preview;
    private final JComboBox<String> handedOver = new JComboBox<>();
    private final JComboBox<String> base = new JComboBox<>();
    private final JComboBox<String> which = new JComboBox<>();
    private final Words.Area beside = Words.quiet("set-ups beside them");
    private final List<JCheckBox> readers = new ArrayList<>();
    private final List<JRadioButton> kinds = new ArrayList<>();
    private final List<JRadioButton> papers = new ArrayList<>();
    private final JCheckBox dated = new JCheckBox("with today's date", true);
    private final JButton write = new JButton("write it …");
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JButton stop = new JButton("stop");
    private final Words.Area told = Words.plain("what became of the report");
    private final JButton open = new JButton("open it");
    private Optional<Path> written = Optional.empty();

    /** Whether the choices are being set to what stands on the desk. */
    private boolean filling;

    /** @param leave goes back to the desk */
    ReportPane(Bench bench, Cabinet cabinet, Asker asker, ReportWriter writer, Runnable leave) {
        super(new MigLayout(
                "insets 12 16 8 8, gap 16, fill", "[" + Looks.em(25) + "!,fill][grow,fill]", "[grow,fill]"));
        this.bench = bench;
        this.cabinet = cabinet;
        this.asker = asker;
        worker = new Worker<>("report", 0, (writing, how) -> work(writer, writing, how), this::come);
        preview = new PreviewPane(writer);
        setName("report");
        choices = new Page();
        choices.setLayout(
                new MigLayout("insets 0 0 8 8, gap 8 4, fillx, hidemode 3", "[" + Looks.em(7) + "!]8[grow,fill]"));
        Words.Area title = Words.headline("report and set-up sheet");
        title.setText("Report and set-up sheet");
        Words.Area advice = Words.quiet("what the report is");
        advice.setText("Papers of the job as it stands here, saved or not, bound in this order.");
        choices.add(title, "span 2, growx, wmin 60, wrap");
        choices.add(advice, "span 2, growx, wmin 60, gapbottom 8, wrap");
        for (String reader : writer.readers()) {
            JCheckBox box = new JCheckBox("the " + reader, readers.isEmpty());
            check(box, "report for " + reader, "paper for the " + reader);
            choices.add(readers.isEmpty() ? new JLabel("for") : new JLabel());
            choices.add(box, "wrap");
            readers.add(box);
        }
        row("handed over", handedOver, "report handed over");
        row("compared with", base, "report base");
        choices.add(beside, "skip 1, growx, wmin 60, wrap");
        row("the car", which, "report of the car");
        group(
                "file",
                kinds,
                List.of(Kind.values()).stream().map(kind -> kind.words).toList());
        group(
                "paper",
                papers,
                List.of(ReportWriter.Paper.values()).stream()
                        .map(ReportWriter.Paper::words)
                        .toList());
        kinds.get(0).setSelected(true);
        check(dated, "report dated", "with today's date");
        choices.add(dated, "skip 1, wrap");
        handedOver.addActionListener(event -> chosen());
        base.addActionListener(event -> chosen());
        which.addActionListener(event -> whichCar());
        write.setName("report write");
        write.addActionListener(event -> write());
        JButton out = new JButton("back to the desk");
        out.setName("report leave");
        out.addActionListener(event -> leave.run());
        Keys.bind(this, "ESCAPE", leave);
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8", "[][]", ""));
        buttons.setOpaque(false);
        buttons.add(write);
        buttons.add(out);
        choices.add(buttons, "span 2, gaptop 8, wrap");
        progress.getAccessibleContext().setAccessibleName("progress of the report");
        stop.setName("report stop");
        stop.addActionListener(event -> worker.cancel());
        choices.add(progress, "span 2, split 2, growx");
        choices.add(stop, "growx 0, wrap");
        choices.add(told, "span 2, growx, wmin 60, wrap");
        open.setName("report open");
        open.addActionListener(event -> written.ifPresent(this::open));
        choices.add(open, "span 2, growx 0, wrap");
        busy(false);
        open.setVisible(false);
        JScrollPane scroll = new JScrollPane(
                choices,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Looks.em(3));
        add(scroll);
        add(preview, "wmin 100, hmin 100");
    }

    private void check(JCheckBox box, String name, String accessible) {
        box.setName(name);
        box.setOpaque(false);
        box.getAccessibleContext().setAccessibleName(accessible);
        box.addActionListener(event -> chosen());
    }

    private void row(String words, JComponent input, String name) {
        JLabel label = new JLabel(words);
        label.setLabelFor(input);
        input.setName(name);
        input.getAccessibleContext().setAccessibleName(words);
        choices.add(label);
        choices.add(input, "wmin 60, wrap");
    }

    private void group(String words, List<JRadioButton> buttons, List<String> among) {
        ButtonGroup group = new ButtonGroup();
        for (String choice : among) {
            JRadioButton button = new JRadioButton(choice);
            button.setName("report " + choice);
            button.setOpaque(false);
            button.getAccessibleContext().setAccessibleName(words + ": " + choice);
            button.addActionListener(event -> chosen());
            group.add(button);
            buttons.add(button);
            if (buttons.size() == 1) {
                choices.add(new JLabel(words), "gaptop 4");
                choices.add(button, "gaptop 4, wrap");
            } else {
                choices.add(button, "skip 1, wrap");
            }
        }
    }

    @Override
    public void show(Desk before, Desk now) {
        filling = true;
        boolean otherUnits = before.look().units() != now.look().units();
        if (before.is(now) || otherUnits) {
            papers.get(ReportWriter.Paper.of(now.look().units()).ordinal()).setSelected(true);
        }
        List<String> names =
                now.work().scenario().setups().stream().map(Setup::name).toList();
        boolean other = !before.work().active().equals(now.work().active())
                || !before.work().base().equals(now.work().base());
        if (before.is(now) || other || !names.equals(names(handedOver))) {
            names(base, names, now.work().base());
            names(handedOver, names, now.work().handedOver());
        }
        List<String> cars =
                WhichCar.offered(now.work()).stream().map(WhichCar::words).toList();
        if (!cars.equals(names(which)) || !now.work().which().words().equals(String.valueOf(which.getSelectedItem()))) {
            names(which, cars, now.work().which().words());
        }
        which.setEnabled(cars.size() > 1);
        filling = false;
        chosen();
    }

    /** Another choice was made: the preview follows while it is in sight. */
    private void chosen() {
        if (filling) {
            return;
        }
        besides();
        boolean table = Kind.values()[selected(kinds)] == Kind.CSV;
        readers.forEach(box -> box.setEnabled(!table));
        boolean none = !table && forWhom().isEmpty();
        write.setEnabled(!none && !progress.isVisible());
        if (bench.desk().look().page() == Look.Page.REPORT) {
            preview.show(
                    none || table ? Optional.empty() : Optional.of(order()),
                    table ? "A table has no pages: it holds the settings line by line." : "Choose whom it is for.");
        }
    }

    private void whichCar() {
        WhichCar.of(String.valueOf(which.getSelectedItem()))
                .filter(one -> !filling && one != bench.desk().work().which())
                .ifPresent(one -> bench.act(new TrialAct.ChooseCar(one)));
    }

    private List<String> forWhom() {
        return readers.stream()
                .filter(JCheckBox::isSelected)
                .map(box -> box.getText().substring("the ".length()))
                .toList();
    }

    private ReportWriter.Order order() {
        return ReportWriter.Order.of(
                bench.desk(),
                chosen(handedOver),
                chosen(base),
                forWhom(),
                ReportWriter.Paper.values()[selected(papers)],
                dated.isSelected() ? Optional.of(LocalDate.now(java.time.ZoneId.systemDefault())) : Optional.empty());
    }

    PreviewPane preview() {
        return preview;
    }

    private static List<String> names(JComboBox<String> combo) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < combo.getItemCount(); i++) {
            names.add(combo.getItemAt(i));
        }
        return names;
    }

    private static void names(JComboBox<String> combo, List<String> names, String chosen) {
        combo.setModel(new DefaultComboBoxModel<>(names.toArray(new String[0])));
        combo.setSelectedItem(chosen);
    }

    private static String chosen(JComboBox<String> combo) {
        return String.valueOf(combo.getSelectedItem());
    }

    private void besides() {
        List<String> others = bench.desk().work().shown().stream()
                .map(Setup::name)
                .filter(name -> !name.equals(chosen(handedOver)) && !name.equals(chosen(base)))
                .toList();
        beside.setText(
                others.isEmpty()
                        ? ""
                        : "Beside them, as ticked in the list: \"" + String.join("\", \"", others) + "\".");
        beside.setVisible(!others.isEmpty());
    }

    private void write() {
        String ending = Kind.values()[selected(kinds)].ending;
        Optional<Path> file = asker.toSave(cabinet.proposed(ending));
        file.ifPresent(path -> {
            cabinet.finishTyping();
            say("Writing " + path + " …", false);
            written = Optional.of(path);
            busy(true);
            worker.ask(new Writing(order(), path));
        });
    }

    private static int selected(List<JRadioButton> buttons) {
        for (int i = 0; i < buttons.size(); i++) {
            if (buttons.get(i).isSelected()) {
                return i;
            }
        }
        return 0;
    }

    private void work(ReportWriter writer, Writing writing, Progress how) {
        ReportWriter.Outcome outcome;
        try {
            outcome = writer.write(writing.order(), writing.to(), how);
        } catch (RuntimeException defect) {
            outcome = new ReportWriter.Outcome.Failed(
                    "The report has met a defect of the program, please report it: " + defect);
        }
        ReportWriter.Outcome came = outcome;
        SwingUtilities.invokeLater(() -> done(writing.to(), came));
    }

    private void come(double share) {
        SwingUtilities.invokeLater(() -> progress.setValue((int) (100 * share)));
    }

    private void done(Path file, ReportWriter.Outcome outcome) {
        busy(false);
        if (outcome instanceof ReportWriter.Outcome.Written papers) {
            List<String> lines = new ArrayList<>(List.of("Written to " + file.toAbsolutePath() + "."));
            papers.remarks().forEach(remark -> lines.add("Note: " + remark + "."));
            say(String.join("\n", lines), false);
            open.setVisible(canOpen());
        } else if (outcome instanceof ReportWriter.Outcome.Failed failed) {
            say(failed.why(), true);
        }
    }

    private void say(String words, boolean trouble) {
        told.setForeground(trouble ? Looks.theme().warning() : Looks.theme().ink());
        told.setText(words);
        open.setVisible(false);
    }

    private void busy(boolean now) {
        progress.setValue(0);
        progress.setVisible(now);
        stop.setVisible(now);
        write.setEnabled(!now);
    }

    private static boolean canOpen() {
        return Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN);
    }

    /** Opens the file in the desktop's viewer, which may take its time. */
    private void open(Path file) {
        Thread opening = new Thread(
                () -> {
                    try {
                        Desktop.getDesktop().open(file.toFile());
                    } catch (IOException | IllegalArgumentException | UnsupportedOperationException cannot) {
                        SwingUtilities.invokeLater(() -> say(
                                "No program of this desktop opens it; it stands in " + file.toAbsolutePath() + ".",
                                true));
                    }
                },
                "viewer");
        opening.setDaemon(true);
        opening.start();
    }

    /** Ends what is being written. */
    void close() {
        preview.close();
        worker.close();
    }
}
