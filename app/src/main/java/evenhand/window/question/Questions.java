package evenhand.window.question;

import evenhand.window.desk.Question;
import java.util.List;

/** The questions, in the order of the list. */
public final class Questions {
    public static final List<Question> ALL = List.of(
            new WhichEndFirst(),
            new HowHighThePivot(),
            new WhatDidItDo(),
            new SpringsOrBars(),
            new WhatMakesItNeutral(),
            new WhereTheLoadGoes(),
            new WhichEndLocks(),
            new WhichWheelSpins(),
            new WhatIfTheDriverLifts(),
            new HowLow(),
            new WhatTheLinksDo(),
            new WhichBracket(),
            new WhatBracketsCarry(),
            new WillItRide(),
            new WhichDamper(),
            new WillItSkip(),
            new WhatToMeasure(),
            new WhatTheRoadSaid(),
            new WhatTheShopDoes(),
            new TheCarItself());

    private Questions() {}
}
