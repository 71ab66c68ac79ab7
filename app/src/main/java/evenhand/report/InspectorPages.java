package evenhand.report;

import java.util.ArrayList;
import java.util.List;

/** What whoever certifies the car gets to read. */
final class InspectorPages {
    private InspectorPages() {}

    static List<Section> of(Findings findings) {
        List<Section> sections = new ArrayList<>();
        if (findings.compares()) {
            sections.add(CarPages.changes(findings));
        }
        if (!findings.loaded().isEmpty()) {
            sections.add(LoadPages.of(findings, findings.loaded()));
        }
        sections.addAll(WorkingPages.sources(findings));
        sections.add(CarPages.cautions());
        return sections;
    }
}
