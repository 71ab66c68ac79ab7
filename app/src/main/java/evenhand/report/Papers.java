package evenhand.report;

import evenhand.answers.Progress;
import evenhand.words.TestedWords;
import java.util.List;
import java.util.Optional;

/** Makes the papers out of the findings. */
public final class Papers {
    private Papers() {}

    /** The paper of a reader. */
    public static Paper of(Findings findings, Reader reader) {
        Question question = findings.question();
        String subtitle = "For the " + reader.word() + ": set-up \""
                + findings.chosen().name() + "\""
                + (findings.compares() ? ", compared with \"" + findings.base().name() + "\"" : "")
                + question.scenario()
                        .tested()
                        .map(tested -> ". " + TestedWords.inALine(tested))
                        .orElse("");
        return new Paper(
                question.scenario().title(),
                subtitle,
                question.scenario().shop().flatMap(shop -> shop.name()),
                question.picture(),
                question.date(),
                reader.sections(findings));
    }

    /** A paper for each of them, in their order. */
    public static List<Paper> of(Findings findings, List<Reader> readers) {
        return readers.stream().map(reader -> of(findings, reader)).toList();
    }

    /** What the owner is told first: round a bend, ride, travel, and what is still open. */
    public static Section verdict(Question question, Progress progress) {
        List<Section> first = OwnerPages.first(Findings.of(question, progress));
        return first.get(first.size() - 1);
    }

    /** The sheet alone. */
    public static SetupSheet sheet(Question question) {
        return SetupSheet.of(
                question.scenario().record(),
                question.setups().get(question.setups().size() - 1),
                Optional.of(question.base()),
                question.units());
    }
}
