package evenhand.window.question;

import evenhand.window.desk.Question;
import java.util.List;

/** The questions in the order of the list: those of a group stand together. */
public final class Questions {
    public static final List<Question> ALL = List.of(
            new WhichEndFirst(),
            new HowHighThePivot(),
            new WhatDidItDo(),
            new SpringsOrBars(),
            new WhatMakesItNeutral(),
            new WhatIfTheDriverLifts(),
            new HowLow(),
            new WillItRide(),
            new WhichDamper(),
            new WillItSkip(),
            new WhatTheLinksDo(),
            new WhichBracket(),
            new WhereTheLoadGoes(),
            new WhichEndLocks(),
            new WhichWheelSpins(),
            new WhatBracketsCarry(),
            new WhatTheRoadSaid(),
            new WhatTheShopDoes(),
            new WhatToMeasure(),
            new TheCarItself());

    private Questions() {}
}
