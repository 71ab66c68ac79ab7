package evenhand.report;

import java.util.ArrayList;
import java.util.List;

/** What goes with the car when it is handed over: the owner's first page, what he must know, the sheet and the book. */
final class HandoverPages {
    private HandoverPages() {}

    static List<Section> of(Findings findings) {
        List<Section> sections = new ArrayList<>(OwnerPages.first(findings));
        sections.add(OwnerPages.cautions());
        List<Section> sheet = WorkshopPages.of(findings);
        sections.add(new Section(sheet.get(0).title(), true, sheet.get(0).blocks()));
        Question question = findings.question();
        sections.add(BookPages.of(question.scenario(), question.date(), question.units()));
        return sections;
    }
}
