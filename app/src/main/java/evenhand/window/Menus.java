package evenhand.window;

import evenhand.quantity.Unseen;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.words.Units;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** The menus: every act of the window by its words and keys. */
final class Menus {
    private static final int CTRL = InputEvent.CTRL_DOWN_MASK;
    private static final int SHIFT = InputEvent.SHIFT_DOWN_MASK;

    private Menus() {}

    static JMenuBar bar(MainPane pane, List<Question> questions, Runnable print, Runnable quit) {
        JMenuBar bar = new JMenuBar();
        bar.add(file(pane, print, quit));
        bar.add(edit(pane));
        bar.add(setups(pane));
        bar.add(ask(pane, questions));
        bar.add(view(pane));
        return bar;
    }

    private static JMenu file(MainPane pane, Runnable print, Runnable quit) {
        Cabinet cabinet = pane.cabinet();
        JMenu menu = new JMenu("File");
        menu.setMnemonic(KeyEvent.VK_F);
        item(menu, "Where to begin …", KeyEvent.VK_B, CTRL, () -> pane.turnTo(Look.Page.START));
        JMenu demos = new JMenu("New from a demo car");
        for (String name : Demos.NAMES) {
            item(demos, Demos.title(name), 0, 0, () -> cabinet.openDemo(name));
        }
        menu.add(demos);
        item(menu, "Measure a car up …", KeyEvent.VK_N, CTRL, () -> pane.turnTo(Look.Page.MEASURING_UP));
        item(menu, "Open …", KeyEvent.VK_O, CTRL, cabinet::openChosen);
        JMenu recent = new JMenu("Open recent");
        recent.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent e) {
                recent.removeAll();
                for (Path file : cabinet.recent()) {
                    item(recent, Unseen.shown(file.toString()), 0, 0, () -> cabinet.open(file));
                }
                if (recent.getItemCount() == 0) {
                    JMenuItem none = new JMenuItem("none yet");
                    none.setEnabled(false);
                    recent.add(none);
                }
            }

            @Override
            public void menuDeselected(MenuEvent e) {
                // It is filled anew each time.
            }

            @Override
            public void menuCanceled(MenuEvent e) {
                // It is filled anew each time.
            }
        });
        menu.add(recent);
        menu.addSeparator();
        item(menu, "Save", KeyEvent.VK_S, CTRL, cabinet::save);
        item(menu, "Save as …", KeyEvent.VK_S, CTRL | SHIFT, cabinet::saveAs);
        menu.addSeparator();
        item(menu, "At the circle …", KeyEvent.VK_T, CTRL, () -> pane.turnTo(Look.Page.CIRCLE));
        item(menu, "Report and set-up sheet …", KeyEvent.VK_R, CTRL, () -> pane.turnTo(Look.Page.REPORT));
        item(menu, "For the customer", KeyEvent.VK_F11, 0, () -> pane.turnTo(Look.Page.CUSTOMER));
        item(menu, "Print …", KeyEvent.VK_P, CTRL, print);
        menu.addSeparator();
        item(menu, "Quit", KeyEvent.VK_Q, CTRL, quit);
        return menu;
    }

    private static JMenu edit(MainPane pane) {
        JMenu menu = new JMenu("Edit");
        menu.setMnemonic(KeyEvent.VK_E);
        item(menu, "Undo", KeyEvent.VK_Z, CTRL, pane.bench()::undo);
        item(menu, "Redo", KeyEvent.VK_Z, CTRL | SHIFT, pane.bench()::redo);
        item(
                menu,
                "Go back to …",
                KeyEvent.VK_H,
                CTRL,
                () -> HistoryList.show(pane.bench(), pane, Looks.em(20), Looks.em(3)));
        menu.addSeparator();
        item(menu, "Find a field …", KeyEvent.VK_F, CTRL, () -> {
            pane.bench().act(new LookAct.Ask(Question.FORM));
            pane.form().focusSearch();
        });
        return menu;
    }

    private static JMenu setups(MainPane pane) {
        JMenu menu = new JMenu("Set-ups");
        menu.setMnemonic(KeyEvent.VK_S);
        new SetupItems(pane.side(), () -> pane.bench().desk().work().active(), true).into(menu.getPopupMenu());
        return menu;
    }

    private static JMenu ask(MainPane pane, List<Question> questions) {
        JMenu menu = new JMenu("Ask");
        menu.setMnemonic(KeyEvent.VK_A);
        for (Question.Group group : Question.Group.values()) {
            JMenu own = new JMenu(group.words());
            for (Question question : questions) {
                if (question.group() == group) {
                    int place = questions.indexOf(question);
                    item(
                            own,
                            question.words(),
                            place < 9 ? KeyEvent.VK_1 + place : 0,
                            CTRL,
                            () -> pane.bench().act(new LookAct.Ask(question.key())));
                }
            }
            menu.add(own);
        }
        menu.addSeparator();
        item(menu, "Help, about and cautions", KeyEvent.VK_F1, 0, () -> About.show(pane));
        return menu;
    }

    private static JMenu view(MainPane pane) {
        JMenu menu = new JMenu("View");
        menu.setMnemonic(KeyEvent.VK_V);
        Bench bench = pane.bench();
        item(menu, "Larger text", KeyEvent.VK_PLUS, CTRL, pane::largerText);
        item(menu, "Smaller text", KeyEvent.VK_MINUS, CTRL, () -> bench.act(new LookAct.Zoom(-1)));
        item(menu, "Usual size of text", KeyEvent.VK_0, CTRL, () -> bench.act(new LookAct.ZoomBack()));
        menu.addSeparator();
        item(menu, "Millimetres and newtons", 0, 0, () -> bench.act(new LookAct.ShowUnits(Units.METRIC)));
        item(menu, "Inches and pounds", 0, 0, () -> bench.act(new LookAct.ShowUnits(Units.IMPERIAL)));
        menu.addSeparator();
        item(menu, "Light", 0, 0, () -> bench.act(new LookAct.ShowDark(false)));
        item(menu, "Dark", 0, 0, () -> bench.act(new LookAct.ShowDark(true)));
        // the plus of most keyboards is on the key of the equals sign, or on a pad
        for (int key : new int[] {KeyEvent.VK_EQUALS, KeyEvent.VK_ADD, KeyEvent.VK_SUBTRACT, KeyEvent.VK_NUMPAD0}) {
            pane.registerKeyboardAction(
                    event -> {
                        switch (key) {
                            case KeyEvent.VK_NUMPAD0 -> bench.act(new LookAct.ZoomBack());
                            case KeyEvent.VK_SUBTRACT -> bench.act(new LookAct.Zoom(-1));
                            default -> pane.largerText();
                        }
                    },
                    KeyStroke.getKeyStroke(key, CTRL),
                    JComponent.WHEN_IN_FOCUSED_WINDOW);
        }
        return menu;
    }

    private static void item(JMenu menu, String words, int key, int modifiers, Runnable action) {
        JMenuItem item = new JMenuItem(words);
        if (key != 0) {
            item.setAccelerator(KeyStroke.getKeyStroke(key, modifiers));
        }
        item.addActionListener(event -> action.run());
        menu.add(item);
    }
}
