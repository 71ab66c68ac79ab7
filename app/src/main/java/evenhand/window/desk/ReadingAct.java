package evenhand.window.desk;

import evenhand.scenario.ScenarioWriter;
import evenhand.words.ChangeWords;

/** Something that is written down at the side of the circle. */
public sealed interface ReadingAct extends Act {
    /** A test without readings, of a set-up on a circle. */
    record Begin(String name, String setup, String radius) implements ReadingAct {
        @Override
        public Outcome on(Desk desk) {
            String test = "{\"name\": " + ScenarioWriter.quoted(name.strip()) + ", \"setup\": "
                    + ScenarioWriter.quoted(setup) + ", \"circle\": {\"radius\": "
                    + ScenarioWriter.quoted(radius.strip()) + "}}";
            int place = desk.work().scenario().roadTests().size();
            return Edit.whole(
                    desk, desk.work(), old -> ScenarioWriter.setInFile(old, "roadTests[" + place + "]", test));
        }

        @Override
        public String words() {
            return "beginning the road test \"" + name.strip() + "\"";
        }
    }

    /** A reading behind the last of its kind. */
    record PutDown(Sheet sheet, Noted noted) implements ReadingAct {
        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> sheet.with(old, noted));
        }

        @Override
        public String words() {
            return "putting down " + noted.kind().words();
        }
    }

    /** Takes a reading out. */
    record TakeOut(String path) implements ReadingAct {
        @Override
        public Outcome on(Desk desk) {
            return Edit.whole(desk, desk.work(), old -> ScenarioWriter.removeInFile(old, path));
        }

        @Override
        public String words() {
            return "taking out " + ChangeWords.name(path.substring(path.indexOf('.') + 1));
        }
    }
}
