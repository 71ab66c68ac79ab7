package evenhand.window.desk;

import evenhand.chart.Chart;
import evenhand.drawing.Detail;
import evenhand.drawing.Drawing;
import evenhand.forms.Table;
import evenhand.scenario.Scenario;
import evenhand.words.InPrint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The answer to a question, ready for show: a sentence, a picture, the numbers, and what to do next.
 *
 * @param headlines the sentences that are read first, large
 * @param more the sentences below, each paragraph under its set-up or none
 * @param charts in order, the most telling first
 * @param drawings besides that of the car, in order
 * @param next what may be done now
 * @param tested what has corrected the car that was asked; nothing where it is as it stands in the file
 */
public record Reply(
        List<String> headlines,
        List<Paragraph> more,
        List<Chart> charts,
        List<Drawn> drawings,
        Table figures,
        List<Next> next,
        Optional<Scenario.Tested> tested) {
    /** An answer with drawings of its own. */
    public Reply(
            List<String> headlines,
            List<Paragraph> more,
            List<Chart> charts,
            List<Drawn> drawings,
            Table figures,
            List<Next> next) {
        this(headlines, more, charts, drawings, figures, next, Optional.empty());
    }

    /** An answer without drawings of its own. */
    public Reply(List<String> headlines, List<Paragraph> more, List<Chart> charts, Table figures, List<Next> next) {
        this(headlines, more, charts, List.of(), figures, next);
    }

    /** A drawing with how it says lengths. */
    public record Drawn(Drawing drawing, Detail detail) {}

    /** Sentences under the name of a set-up. */
    public record Paragraph(String heading, List<String> sentences) {
        public Paragraph {
            sentences = InPrint.sentences(sentences);
        }
    }

    /** What may be done next, with the act that does it where there is one. */
    public record Next(String words, Optional<Act> act) {
        public Next {
            words = InPrint.sentence(words);
        }
    }

    public Reply {
        headlines = InPrint.sentences(headlines);
        more = List.copyOf(more);
        charts = List.copyOf(charts);
        drawings = List.copyOf(drawings);
        figures = figures.inPrint();
        next = List.copyOf(next);
    }

    /** The same with paragraphs below. */
    Reply with(List<Paragraph> below) {
        List<Paragraph> all = new ArrayList<>(more);
        all.addAll(below);
        return new Reply(headlines, all, charts, drawings, figures, next, tested);
    }

    /** The same, of the car that road tests have corrected. */
    Reply of(Optional<Scenario.Tested> corrected) {
        return new Reply(headlines, more, charts, drawings, figures, next, corrected);
    }

    /** An answer of a single sentence. */
    public static Reply only(String sentence) {
        return new Reply(List.of(sentence), List.of(), List.of(), Table.NONE, List.of());
    }
}
