package evenhand.window;

import evenhand.window.desk.Arrangement;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.Work;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/** What can be done with a set-up, for a menu: the same in the bar and beside the pointer. */
final class SetupItems implements PopupMenuListener {
    private static final int CTRL = InputEvent.CTRL_DOWN_MASK;
    private static final int SHIFT = InputEvent.SHIFT_DOWN_MASK;

    private final SideBar side;
    private final Supplier<String> which;
    private final List<JComponent> items = new ArrayList<>();
    private final JCheckBoxMenuItem base = new JCheckBoxMenuItem("Compare the others with it");
    private final JCheckBoxMenuItem pin = new JCheckBoxMenuItem("Pin at the top of the list");
    private final JCheckBoxMenuItem hide = new JCheckBoxMenuItem("Hide from the list");
    private final JCheckBoxMenuItem all = new JCheckBoxMenuItem("Show hidden set-ups");

    /**
     * @param which set-up is meant
     * @param keys whether the keys stand beside the words
     */
    SetupItems(SideBar side, Supplier<String> which, boolean keys) {
        this.side = side;
        this.which = which;
        item(new JMenuItem("Add, based on this one"), keys, KeyEvent.VK_N, () -> side.add(which.get()));
        item(new JMenuItem("Copy"), false, 0, () -> side.copy(which.get()));
        item(new JMenuItem("Rename …"), false, 0, () -> side.rename(which.get()));
        item(new JMenuItem("Delete"), false, 0, () -> side.delete(which.get()));
        items.add(new JPopupMenu.Separator());
        item(base, keys, KeyEvent.VK_B, () -> side.act(new TrialAct.CompareWith(which.get())));
        item(pin, keys, KeyEvent.VK_P, () -> side.act(new TrialAct.Pin(which.get(), pin.isSelected())));
        item(hide, keys, KeyEvent.VK_H, () -> side.act(new TrialAct.Hide(which.get(), hide.isSelected())));
        items.add(new JPopupMenu.Separator());
        item(all, false, 0, () -> side.act(new LookAct.Fold(Arrangement.HIDDEN, !all.isSelected())));
        if (keys) {
            ((JMenuItem) items.get(1)).setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_D, CTRL));
        }
    }

    private void item(JMenuItem item, boolean keys, int key, Runnable action) {
        item.addActionListener(event -> action.run());
        if (keys) {
            item.setAccelerator(KeyStroke.getKeyStroke(key, CTRL | SHIFT));
        }
        items.add(item);
    }

    /** Puts them into a menu that asks how they stand whenever it comes up. */
    void into(JPopupMenu menu) {
        items.forEach(menu::add);
        menu.addPopupMenuListener(this);
    }

    @Override
    public void popupMenuWillBecomeVisible(PopupMenuEvent e) {
        Work work = side.desk().work();
        String name = which.get();
        boolean active = name.equals(work.active());
        boolean isBase = name.equals(work.base());
        base.setSelected(isBase);
        base.setEnabled(!isBase);
        pin.setSelected(work.shelf().pinned().contains(name));
        hide.setSelected(work.shelf().hidden().contains(name));
        hide.setEnabled(!active && !isBase);
        all.setSelected(side.desk().look().arrangement().isOpened(Arrangement.HIDDEN));
        all.setEnabled(!work.shelf().hidden().isEmpty());
    }

    @Override
    public void popupMenuWillBecomeInvisible(PopupMenuEvent e) {
        // It is asked anew each time.
    }

    @Override
    public void popupMenuCanceled(PopupMenuEvent e) {
        // It is asked anew each time.
    }
}
