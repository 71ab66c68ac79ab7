package evenhand.window.question;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.forms.Table;
import evenhand.window.desk.Reply;
import evenhand.words.travel.MeasureWords;
import java.util.ArrayList;
import java.util.List;

/** What is answered about links that have no points: what to measure, and where to type it. */
final class NotMeasured {
    private NotMeasured() {}

    /** @param ends axles without points, the one that is asked about first */
    static Reply reply(Car car, List<End> ends) {
        List<Reply.Paragraph> paragraphs = new ArrayList<>();
        for (End end : ends) {
            String which = ends.size() > 1 ? ", " + end.key() : "";
            paragraphs.add(new Reply.Paragraph("What to measure" + which, MeasureWords.points(car.axle(end))));
            paragraphs.add(new Reply.Paragraph("Where to type it" + which, MeasureWords.place(end)));
        }
        return new Reply(
                ends.stream().map(end -> MeasureWords.lead(car.axle(end), end)).toList(),
                paragraphs,
                List.of(),
                Table.NONE,
                List.of());
    }
}
