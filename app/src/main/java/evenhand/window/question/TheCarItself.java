package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.catalogue.Adjustable;
import evenhand.forms.Table;
import evenhand.scenario.Setup;
import evenhand.scenario.Warning;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.words.ChangeWords;
import java.util.ArrayList;
import java.util.List;

/** Every value of the car, to be read and changed. */
final class TheCarItself implements Question {
    @Override
    public String key() {
        return FORM;
    }

    @Override
    public Group group() {
        return Group.TRUST;
    }

    @Override
    public String words() {
        return "The car itself";
    }

    @Override
    public List<String> adjustments(Setup active) {
        return List.of();
    }

    @Override
    public boolean asksTheFile() {
        return true;
    }

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        Setup setup = asked.active().setup();
        List<Reply.Paragraph> more = new ArrayList<>();
        if (!setup.warnings().isEmpty()) {
            more.add(new Reply.Paragraph(
                    "Unusual",
                    setup.warnings().stream()
                            .map(warning -> ChangeWords.name(last(warning)) + " " + warning.what() + ".")
                            .toList()));
        }
        List<Adjustable> estimated = setup.estimated();
        String said = estimated.isEmpty()
                ? "Every value of this car was given or is a default: nothing is estimated."
                : estimated.size() + (estimated.size() == 1 ? " value is" : " values are")
                        + " estimated, not measured; the fields say which.";
        return new Reply(List.of(said), more, List.of(), Table.NONE, List.of());
    }

    private static String last(Warning warning) {
        return warning.where().replaceFirst("^.*changes\\.", "").replaceFirst("^car\\.", "");
    }
}
