package evenhand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the papers out of the findings. */
public final class Papers {
    private Papers() {}

    /** Report, set-up sheet, comparison where there are several set-ups, braking and driving and what mounts carry where they are known, the working. */
    public static Paper of(Findings findings) {
        Question question = findings.question();
        List<Section> sections = new ArrayList<>(OwnerPages.of(findings));
        sections.add(SheetPages.of(findings));
        if (findings.candidates().size() > 1) {
            sections.addAll(ComparisonPages.of(findings));
        }
        findings.ahead().map(ahead -> AheadPages.of(findings, ahead)).ifPresent(sections::add);
        if (!findings.loaded().isEmpty()) {
            sections.add(LoadPages.of(findings, findings.loaded()));
        }
        sections.addAll(WorkingPages.of(findings));
        String subtitle = "Set-up \"" + findings.chosen().name() + "\""
                + (findings.compares() ? ", compared with \"" + findings.base().name() + "\"" : "");
        return new Paper(
                question.scenario().title(),
                subtitle,
                question.scenario().shop().flatMap(shop -> shop.name()),
                question.picture(),
                question.date(),
                sections);
    }

    /** The sheet alone. */
    public static SetupSheet sheet(Question question) {
        return SetupSheet.of(
                question.setups().get(question.setups().size() - 1), Optional.of(question.base()), question.units());
    }
}
