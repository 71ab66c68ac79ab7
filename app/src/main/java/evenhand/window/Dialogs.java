package evenhand.window;

import evenhand.quantity.Unseen;
import java.awt.Component;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks in dialogs: only where something would be lost, or a name is needed. */
final class Dialogs implements Asker {
    private final Component owner;

    Dialogs(Component owner) {
        this.owner = owner;
    }

    @Override
    public Unsaved unsaved(String title) {
        String[] choices = {"Save", "Discard the changes", "Go back"};
        int chosen = JOptionPane.showOptionDialog(
                owner,
                "“" + title + "” has changes that are not saved.",
                "Unsaved changes",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                choices,
                choices[0]);
        return chosen == 0 ? Unsaved.SAVE : chosen == 1 ? Unsaved.DISCARD : Unsaved.STAY;
    }

    @Override
    public Changed changedOutside(String file) {
        String[] choices = {"Keep mine", "Take theirs", "Save as …", "Go back"};
        int chosen = JOptionPane.showOptionDialog(
                owner,
                "“" + file + "” was changed by another program since it was opened here.\n"
                        + "Whichever is to stay in it, the other is kept in a file beside it.",
                "Changed by another program",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                choices,
                choices[3]);
        return chosen == 0
                ? Changed.MINE
                : chosen == 1 ? Changed.THEIRS : chosen == 2 ? Changed.ELSEWHERE : Changed.BACK;
    }

    @Override
    public Optional<Path> toOpen(Optional<Path> near) {
        JFileChooser chooser = chooser(".json");
        near.map(Path::toAbsolutePath).map(Path::getParent).map(Path::toFile).ifPresent(chooser::setCurrentDirectory);
        return chooser.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    @Override
    public Optional<Path> toSave(Path proposed) {
        JFileChooser chooser = chooser(ending(proposed));
        chooser.setSelectedFile(proposed.toFile());
        if (chooser.showSaveDialog(owner) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        File chosen = chooser.getSelectedFile();
        Path file = chosen.getName().contains(".") ? chosen.toPath() : Path.of(chosen.getPath() + ending(proposed));
        if (!Files.exists(file)) {
            return Optional.of(file);
        }
        String[] choices = {"Replace it", "Go back"};
        int replace = JOptionPane.showOptionDialog(
                owner,
                "“" + Unseen.shown(String.valueOf(file.getFileName())) + "” is there already.",
                "Replace the file?",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                choices,
                choices[1]);
        return replace == 0 ? Optional.of(file) : Optional.empty();
    }

    private static String ending(Path proposed) {
        String name = proposed.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot);
    }

    private static JFileChooser chooser(String ending) {
        JFileChooser chooser = new JFileChooser();
        if (!ending.isEmpty()) {
            String words =
                    ending.equals(".json") ? "scenarios" : ending.substring(1).toUpperCase(java.util.Locale.ROOT);
            chooser.addChoosableFileFilter(
                    new FileNameExtensionFilter(words + " (*" + ending + ")", ending.substring(1)));
        }
        return chooser;
    }

    @Override
    public Optional<String> line(String question, String start) {
        Object typed =
                JOptionPane.showInputDialog(owner, question, "Evenhand", JOptionPane.PLAIN_MESSAGE, null, null, start);
        return Optional.ofNullable(typed).map(Object::toString);
    }
}
