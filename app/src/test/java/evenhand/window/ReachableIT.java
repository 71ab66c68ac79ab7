package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.chart.ChartView;
import evenhand.drawing.DrawingView;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.question.Questions;
import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JRadioButton;
import javax.swing.JScrollBar;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;

/** Whoever has no mouse, or does not see the window: each control is reached by Tab and says what it is. */
class ReachableIT extends AtTheWindow {
    @Test
    void everyControlOfEveryQuestionHasANameAndIsReachedByTab() {
        for (String demo : List.of("harbour-saloon", "tinkers-lane-roadster", "orchard-estate")) {
            Hands.see(() -> {
                hands.pane().cabinet().openDemo(demo);
                return true;
            });
            for (Question question : Questions.ALL) {
                hands.act(new LookAct.Ask(question.key()));
                hands.answered();
                walk(demo + ", " + question.words());
            }
        }
    }

    /** What only a car on measured links has: tables of points, tracks, drawings with handles, a search among brackets. */
    @Test
    void soHasEveryControlOfMeasuredLinks() {
        Hands.see(() -> {
            hands.pane().cabinet().openDemo("sluice-tourer");
            return true;
        });
        for (String question : List.of("links", "brackets", Question.FORM)) {
            hands.act(new LookAct.Ask(question));
            hands.answered();
            walk("sluice-tourer, " + question);
        }
    }

    @Test
    void soHasEveryControlOfTheStepsOfMeasuringUpAndOfTheReport() {
        Hands.see(() -> {
            hands.pane().turnTo(Look.Page.MEASURING_UP);
            return true;
        });
        int steps = hands.pane().measure().measured().steps().size();
        for (int i = 0; i < steps; i++) {
            walk("measuring up, step " + (i + 1));
            if (i < steps - 1) {
                hands.click(hands.find(javax.swing.JButton.class, "measure next"));
            }
        }
        Hands.see(() -> {
            hands.pane().turnTo(Look.Page.REPORT);
            return true;
        });
        walk("the report");
        Hands.see(() -> {
            hands.pane().turnTo(Look.Page.START);
            return true;
        });
        walk("where to begin");
    }

    private void walk(String where) {
        List<String> wrong = Hands.see(() -> {
            JFrame frame = hands.window().frame();
            List<Component> controls = new ArrayList<>();
            collect(frame.getContentPane(), controls);
            Set<Component> reached = reached(frame);
            List<String> faults = new ArrayList<>();
            for (Component control : controls) {
                // Of buttons of which one is chosen Tab reaches that one, and arrows the others.
                boolean byArrow = control instanceof JRadioButton radio && !radio.isSelected();
                if (!reached.contains(control) && !byArrow && !toldByItsField(control)) {
                    faults.add("not reached: " + words(control));
                }
            }
            for (Component component : reached) {
                if (name(component).isBlank()) {
                    faults.add("without a name: " + words(component));
                }
            }
            assertThat(controls).as(where).hasSizeGreaterThan(15);
            return faults;
        });
        assertThat(wrong).as(where).isEmpty();
    }

    /** The words beside a field: Tab goes on to the next field, and this one tells them itself. */
    private static boolean toldByItsField(Component control) {
        String name = String.valueOf(control.getName());
        if (!(control instanceof Words.Area)
                || !name.startsWith("meaning of ")
                || !(control.getParent() instanceof FormRow || control.getParent() instanceof PointsPane)) {
            return false;
        }
        String words = ((JTextComponent) control).getText();
        boolean ofPoint = control.getParent() instanceof PointsPane;
        for (Component beside : control.getParent().getComponents()) {
            String told = beside.getAccessibleContext() == null
                    ? null
                    : beside.getAccessibleContext().getAccessibleDescription();
            // A cell tells of what its point is the end, then what it is a coordinate of.
            if (beside != control
                    && told != null
                    && (told.equals(words) || (ofPoint && told.startsWith(words + ", ")))) {
                return true;
            }
        }
        return false;
    }

    private static Set<Component> reached(JFrame frame) {
        FocusTraversalPolicy policy = frame.getFocusTraversalPolicy();
        Set<Component> reached = new LinkedHashSet<>();
        Component next = policy.getFirstComponent(frame);
        while (next != null && reached.add(next)) {
            next = policy.getComponentAfter(frame, next);
        }
        return reached;
    }

    private static void collect(Container in, List<Component> controls) {
        for (Component component : in.getComponents()) {
            if (!component.isShowing() || component instanceof JScrollBar) {
                continue;
            }
            boolean control = component instanceof AbstractButton
                    || component instanceof JTextComponent
                    || component instanceof JComboBox<?>
                    || component instanceof JList<?>
                    || component instanceof JTable
                    || component instanceof Track
                    || component instanceof ChartView
                    || component instanceof DrawingView;
            if (control && component.isEnabled() && !(in instanceof JComboBox<?>)) {
                controls.add(component);
            } else if (component instanceof Container container) {
                collect(container, controls);
            }
        }
    }

    private static String name(Component component) {
        String name = component instanceof Accessible accessible
                ? accessible.getAccessibleContext().getAccessibleName()
                : null;
        return name == null ? "" : name;
    }

    private static String words(Component component) {
        return component.getClass().getSimpleName() + " " + component.getName() + " \"" + name(component) + "\""
                + (component instanceof JComponent own && own.getToolTipText() != null
                        ? " (" + own.getToolTipText() + ")"
                        : "");
    }
}
