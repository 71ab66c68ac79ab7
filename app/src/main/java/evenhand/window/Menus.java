package evenhand.window;

import evenhand.quantity.Unseen;
import evenhand.window.desk.Demos;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
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
        item(menu, "Add, based on this one", KeyEvent.VK_N, CTRL | SHIFT, pane.side()::add);
        item(menu, "Copy", KeyEvent.VK_D, CTRL, pane.side()::copy);
        item(
                menu,
                "Rename …",
                0,
                0,
                () -> pane.side().rename(pane.bench().desk().work().active()));
        return menu;
    }

    private static JMenu ask(MainPane pane, List<Question> questions) {
        JMenu menu = new JMenu("Ask");
        menu.setMnemonic(KeyEvent.VK_A);
        for (int i = 0; i < questions.size(); i++) {
            String key = questions.get(i).key();
            int stroke = i < 9 ? KeyEvent.VK_1 + i : 0;
            item(
                    menu,
                    questions.get(i).words(),
                    stroke,
                    CTRL,
                    () -> pane.bench().act(new LookAct.Ask(key)));
        }
        menu.addSeparator();
        item(menu, "Help, about and cautions", KeyEvent.VK_F1, 0, () -> About.show(pane));
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
