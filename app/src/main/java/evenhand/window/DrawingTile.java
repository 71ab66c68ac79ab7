package evenhand.window;

import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.drawing.Detail;
import evenhand.drawing.Drawing;
import evenhand.drawing.DrawingView;
import evenhand.drawing.RearView;
import evenhand.drawing.SideView;
import evenhand.drawing.Stance;
import evenhand.drawing.TopView;
import evenhand.scenario.Setup;
import evenhand.window.desk.Bench;
import evenhand.window.desk.Desk;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.Units;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The active set-up to scale, leaning at the pace, with handles on what can be moved. */
final class DrawingTile extends JPanel implements Bench.View {
    /** Where the car is seen from. */
    private enum Seen {
        BEHIND("behind", "from behind"),
        FRONT("front", "from the front"),
        SIDE("side", "from the side"),
        ABOVE("above", "from above");

        private final String brief;
        private final String words;

        Seen(String brief, String words) {
            this.brief = brief;
            this.words = words;
        }
    }

    private final DrawingView view;
    private Seen seen = Seen.BEHIND;
    private final transient Pulls pulls;

    DrawingTile(Bench bench) {
        super(new BorderLayout());
        pulls = new Pulls(bench);
        setOpaque(false);
        Desk desk = bench.desk();
        view = new DrawingView(drawing(desk), Looks.theme(), detail(desk), pulls::take);
        view.setName("drawing");
        JPanel bar = new JPanel(new MigLayout("insets 0, gap 4", "", ""));
        bar.setOpaque(false);
        // No group: Tab would reach the chosen one alone.
        List<JToggleButton> buttons = new ArrayList<>();
        for (Seen one : Seen.values()) {
            JToggleButton button = new JToggleButton(one.brief, one == seen);
            button.setName(one.words);
            button.setFont(Looks.small());
            button.getAccessibleContext().setAccessibleName("the car seen " + one.words);
            button.addActionListener(event -> {
                seen = one;
                buttons.forEach(other -> other.setSelected(other == button));
                redraw(bench.desk());
            });
            buttons.add(button);
            bar.add(button);
        }
        add(bar, BorderLayout.NORTH);
        add(view, BorderLayout.CENTER);
    }

    DrawingView view() {
        return view;
    }

    @Override
    public void show(Desk before, Desk now) {
        boolean same = before.work().equals(now.work())
                && before.replies().turns().equals(now.replies().turns())
                && before.look().units() == now.look().units()
                && before.look().isDressedAs(now.look());
        if (!same || before.is(now)) {
            redraw(now);
        }
    }

    private void redraw(Desk desk) {
        view.show(drawing(desk), Looks.theme(), detail(desk));
    }

    private static Detail detail(Desk desk) {
        return Detail.usual(desk.look().units() == Units.METRIC ? Units.METRIC : Units.IMPERIAL);
    }

    private Drawing drawing(Desk desk) {
        Setup setup = desk.work().activeSetup();
        Drawing drawing = seen(standing(desk, setup), setup.values(), detail(desk));
        Setup base = desk.work().baseSetup();
        if (base.name().equals(setup.name())) {
            return drawing;
        }
        Stance other = standing(desk, base);
        return drawing.over(seen(other, List.of(), detail(desk)), other.name(), other.style());
    }

    /** How a set-up stands at the pace, by the newest answer there is. */
    private static Stance standing(Desk desk, Setup setup) {
        // How it stands is worked out at once, so that a handle stays under the hand; how it leans comes with the
        // answer.
        Stance rest = Stance.laden(
                setup.name(), setup.look(), setup.car(), desk.work().trial().load(), setup.entries());
        return turned(desk, setup.name())
                .flatMap(
                        own -> own.row(desk.replies().turns().orElseThrow().of().pace())
                                .map(row -> rest.turning(row, own.standing())))
                .orElse(rest);
    }

    private Drawing seen(Stance stance, List<Adjustable> values, Detail detail) {
        return switch (seen) {
            case BEHIND -> RearView.of(stance, End.REAR, detail, values);
            case FRONT -> RearView.of(stance, End.FRONT, detail, values);
            case SIDE -> SideView.of(stance, detail, values);
            case ABOVE -> TopView.of(stance, detail);
        };
    }

    /** A set-up by the newest answer there is. */
    private static Optional<TurnedSetup> turned(Desk desk, String name) {
        return desk.replies()
                .turns()
                .flatMap(known -> Optional.ofNullable(known.setups().get(name)));
    }

    /** Whether a hand is on one of its handles. */
    boolean isHeld() {
        return pulls.isHeld();
    }
}
