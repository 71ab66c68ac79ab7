package evenhand.window;

import evenhand.answers.Progress;
import evenhand.scenario.Setup;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.ReportWriter;
import evenhand.window.desk.Worker;
import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The report and the set-up sheet of the job as it stands on the desk: what of it, and into which file. */
final class ReportPane extends JPanel implements Bench.View {
    /** Kinds of files, as a person chooses among them. */
    private enum Kind {
        PDF(".pdf", "PDF, to print and to hand over"),
        HTML(".html", "HTML, to read in a browser"),
        CSV(".csv", "CSV, the set-up sheet alone as a table");

        private final String ending;
        private final String words;

        Kind(String ending, String words) {
            this.ending = ending;
            this.words = words;
        }
    }

    private final transient Bench bench;
    private final transient Cabinet cabinet;
    private final transient Asker asker;
    private final transient Worker<ReportWriter.Order> worker;
    private final JComboBox<String> handedOver = new JComboBox<>();
    private final JComboBox<String> base = new JComboBox<>();
    private final Words.Area beside = Words.quiet("set-ups beside them");
    private final List<JRadioButton> kinds = new ArrayList<>();
    private final List<JRadioButton> papers = new ArrayList<>();
    private final JCheckBox dated = new JCheckBox("with today's date", true);
    private final JButton write = new JButton("write it …");
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JButton stop = new JButton("stop");
    private final Words.Area told = Words.plain("what became of the report");
    private final JButton open = new JButton("open it");
    private Optional<Path> written = Optional.empty();

    /** @param leave goes back to the desk */
    ReportPane(Bench bench, Cabinet cabinet, Asker asker, ReportWriter writer, Runnable leave) {
        super(new MigLayout(
                "insets 16, gap 16 8, fillx, hidemode 3", "[" + Looks.em(9) + "!]8[" + Looks.em(28) + ",fill][grow]"));
        this.bench = bench;
        this.cabinet = cabinet;
        this.asker = asker;
        worker = new Worker<>("report", 0, (order, how) -> work(writer, order, how), this::come);
        setName("report");
        Words.Area title = Words.headline("report and set-up sheet");
        title.setText("Report and set-up sheet");
        Words.Area advice = Words.plain("what the report is");
        advice.setText(
                "For the customer: what was wanted, what was done and what the car does now, in plain words. For the"
                        + " file: the sheet with every setting. Both are of the job as it stands here, saved or not.");
        add(title, "span 3, growx, wmin 60, wrap");
        add(advice, "span 3, growx, wmin 60, wmax " + Looks.em(50) + ", gapbottom 8, wrap");
        row("handed over", handedOver, "report handed over");
        row("compared with", base, "report base");
        add(beside, "skip 1, span 2, growx, wmin 60, wrap");
        choices(
                "file",
                kinds,
                List.of(Kind.values()).stream().map(kind -> kind.words).toList());
        choices(
                "paper",
                papers,
                List.of(ReportWriter.Paper.values()).stream()
                        .map(ReportWriter.Paper::words)
                        .toList());
        kinds.get(0).setSelected(true);
        dated.setName("report dated");
        dated.setOpaque(false);
        add(dated, "skip 1, wrap");
        handedOver.addActionListener(event -> besides());
        base.addActionListener(event -> besides());
        write.setName("report write");
        write.addActionListener(event -> write());
        JButton out = new JButton("back to the desk");
        out.setName("report leave");
        out.addActionListener(event -> leave.run());
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8", "[][]", ""));
        buttons.setOpaque(false);
        buttons.add(write);
        buttons.add(out);
        add(buttons, "skip 1, span 2, gaptop 8, wrap");
        progress.getAccessibleContext().setAccessibleName("progress of the report");
        stop.setName("report stop");
        stop.addActionListener(event -> worker.cancel());
        add(progress, "skip 1, split 2, growx");
        add(stop, "wrap");
        add(told, "skip 1, span 2, growx, wmin 60, wrap");
        open.setName("report open");
        open.addActionListener(event -> written.ifPresent(this::open));
        add(open, "skip 1, growx 0, wrap");
        busy(false);
        open.setVisible(false);
    }

    private void row(String words, JComponent input, String name) {
        JLabel label = new JLabel(words);
        label.setLabelFor(input);
        input.setName(name);
        input.getAccessibleContext().setAccessibleName(words);
        add(label);
        add(input, "wmin 60, wrap");
    }

    private void choices(String words, List<JRadioButton> buttons, List<String> choices) {
        ButtonGroup group = new ButtonGroup();
        for (String choice : choices) {
            JRadioButton button = new JRadioButton(choice);
            button.setName("report " + choice);
            button.setOpaque(false);
            button.getAccessibleContext().setAccessibleName(words + ": " + choice);
            group.add(button);
            buttons.add(button);
            if (buttons.size() == 1) {
                add(new JLabel(words), "gaptop 4");
                add(button, "span 2, gaptop 4, wrap");
            } else {
                add(button, "skip 1, span 2, wrap");
            }
        }
    }

    @Override
    public void show(Desk before, Desk now) {
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
            names(handedOver, names, last(now));
        }
        besides();
    }

    /** The active set-up; where that is the base, the last of the others that are shown. */
    private static String last(Desk desk) {
        String active = desk.work().active();
        return desk.work().shown().stream()
                .map(Setup::name)
                .filter(name -> active.equals(desk.work().base()) && !name.equals(active))
                .reduce((one, other) -> other)
                .orElse(active);
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
            worker.ask(ReportWriter.Order.of(
                    bench.desk(),
                    chosen(handedOver),
                    chosen(base),
                    ReportWriter.Paper.values()[selected(papers)],
                    dated.isSelected()
                            ? Optional.of(LocalDate.now(java.time.ZoneId.systemDefault()))
                            : Optional.empty(),
                    path));
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

    private void work(ReportWriter writer, ReportWriter.Order order, Progress how) {
        ReportWriter.Outcome outcome;
        try {
            outcome = writer.write(order, how);
        } catch (RuntimeException defect) {
            outcome = new ReportWriter.Outcome.Failed(
                    "The report has met a defect of the program, please report it: " + defect);
        }
        ReportWriter.Outcome came = outcome;
        SwingUtilities.invokeLater(() -> done(order.to(), came));
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
        worker.close();
    }
}
