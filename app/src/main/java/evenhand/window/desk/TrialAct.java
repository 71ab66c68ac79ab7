package evenhand.window.desk;

import evenhand.turn.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Another choice of what is asked of which set-ups. */
public sealed interface TrialAct extends Act {
    /** The work with that choice. */
    Work choose(Work work);

    @Override
    default Outcome on(Desk desk) {
        return new Outcome.Done(desk.with(choose(desk.work())));
    }

    /** Shows a set-up, or no longer. */
    record Show(String name, boolean shown) implements TrialAct {
        @Override
        public Work choose(Work work) {
            List<String> names = new ArrayList<>(work.chosen());
            names.remove(name);
            if (shown) {
                names.add(name);
            }
            // one that is no longer wanted in the answers is no longer kept in sight
            return (shown ? work : work.with(work.shelf().pinning(name, false))).withChosen(names);
        }

        @Override
        public String words() {
            return (shown ? "showing \"" : "hiding \"") + name + "\"";
        }
    }

    /** Puts a set-up aside, so that the list leaves it out, or takes it back. */
    record Hide(String name, boolean hidden) implements TrialAct {
        @Override
        public Outcome on(Desk desk) {
            Work work = desk.work();
            return hidden && (name.equals(work.active()) || name.equals(work.base()))
                    ? new Outcome.Refused("\"" + name + "\" is "
                            + (name.equals(work.active()) ? "being adjusted" : "the base of the comparison")
                            + "; turn to another first")
                    : TrialAct.super.on(desk);
        }

        @Override
        public Work choose(Work work) {
            return work.with(work.shelf().hiding(name, hidden));
        }

        @Override
        public String words() {
            return (hidden ? "putting \"" + name + "\" aside" : "taking \"" + name + "\" back");
        }
    }

    /** Keeps a set-up at the top of the list and among those that are shown, or no longer. */
    record Pin(String name, boolean pinned) implements TrialAct {
        @Override
        public Work choose(Work work) {
            return work.with(work.shelf().pinning(name, pinned));
        }

        @Override
        public String words() {
            return (pinned ? "pinning \"" : "unpinning \"") + name + "\"";
        }
    }

    /** Makes a set-up the one that is adjusted. */
    record Activate(String name) implements TrialAct {
        @Override
        public Work choose(Work work) {
            return work.withActive(name);
        }

        @Override
        public String words() {
            return "turning to \"" + name + "\"";
        }
    }

    /** Makes a set-up the one that others are compared with. */
    record CompareWith(String name) implements TrialAct {
        @Override
        public Work choose(Work work) {
            return work.withBase(name);
        }

        @Override
        public String words() {
            return "comparing with \"" + name + "\"";
        }
    }

    /** m/s². */
    record ChoosePace(double pace, boolean sameGesture) implements TrialAct {
        @Override
        public Work choose(Work work) {
            return work.withPace(pace);
        }

        @Override
        public String words() {
            return "the pace";
        }
    }

    /** m. */
    record ChooseRadius(double radius) implements TrialAct {
        @Override
        public Work choose(Work work) {
            return work.withRadius(radius);
        }

        @Override
        public String words() {
            return "the circle";
        }
    }

    record ChooseDirection(Direction direction) implements TrialAct {
        @Override
        public Work choose(Work work) {
            return work.withDirection(direction);
        }

        @Override
        public String words() {
            return "the direction of the turn";
        }
    }

    /** Puts a load case aboard, or takes it out. */
    record ChooseLoad(Optional<String> load) implements TrialAct {
        @Override
        public Work choose(Work work) {
            return work.withLoad(load);
        }

        @Override
        public String words() {
            return "the load";
        }
    }

    /** Asks the car as it was measured, or as its road tests have corrected it. */
    record ChooseCar(WhichCar which) implements TrialAct {
        @Override
        public Work choose(Work work) {
            return work.withCar(which);
        }

        @Override
        public String words() {
            return "asking the car " + which.words();
        }
    }
}
