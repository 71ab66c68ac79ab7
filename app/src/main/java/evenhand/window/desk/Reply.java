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
import java.util.regex.Pattern;

/**
 * The answer to a question, ready for show: a sentence, a picture, the numbers, and what to do next.
 *
 * @param headlines the sentences that are read first, large
 * @param more the sentences below, each paragraph under its set-up or none
 * @param charts in order, the most telling first
 * @param drawings besides that of the car, in order
 * @param next what may be done now
 * @param verdict a line for each set-up, where there is one to give
 * @param cautions what of the file is probably wrong, to be said before anything is believed
 * @param caveat what was not measured, in a line
 * @param tested what has corrected the car that was asked; nothing where it is as it stands in the file
 */
public record Reply(
        List<String> headlines,
        List<Paragraph> more,
        List<Chart> charts,
        List<Drawn> drawings,
        Table figures,
        List<Next> next,
        Optional<Verdict> verdict,
        List<String> cautions,
        Optional<String> caveat,
        Optional<Scenario.Tested> tested) {
    /** An answer with drawings of its own. */
    public Reply(
            List<String> headlines,
            List<Paragraph> more,
            List<Chart> charts,
            List<Drawn> drawings,
            Table figures,
            List<Next> next) {
        this(
                headlines,
                more,
                charts,
                drawings,
                figures,
                next,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
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

    /**
     * What may be done next, with the act that does it where there is one.
     *
     * @param brief the same in a few words, for a button: "front bar +20 N·m/deg"
     */
    public record Next(String brief, String words, Optional<Act> act) {
        /** Where a sentence may be cut. */
        private static final Pattern PAUSE = Pattern.compile("[;:.](\\s|$)| \\(");

        public Next {
            brief = InPrint.sentence(brief);
            words = InPrint.sentence(words);
        }

        /** Its few words are those that its sentence opens with. */
        public Next(String words, Optional<Act> act) {
            this(PAUSE.split(words, 2)[0], words, act);
        }
    }

    public Reply {
        headlines = InPrint.sentences(headlines);
        more = List.copyOf(more);
        charts = List.copyOf(charts);
        drawings = List.copyOf(drawings);
        figures = figures.inPrint();
        next = List.copyOf(next);
        cautions = InPrint.sentences(cautions);
        caveat = caveat.map(InPrint::sentence);
    }

    /** The same with what of the file is probably wrong, and what was not measured: in a line, and below in full. */
    Reply with(List<String> wrong, Optional<String> inALine, Optional<Paragraph> inFull) {
        List<Paragraph> all = new ArrayList<>(more);
        inFull.ifPresent(all::add);
        return new Reply(headlines, all, charts, drawings, figures, next, verdict, wrong, inALine, tested);
    }

    /** The same with a verdict on each set-up, where there is one to give. */
    public Reply with(Optional<Verdict> own) {
        return new Reply(headlines, more, charts, drawings, figures, next, own, cautions, caveat, tested);
    }

    /** The same, of the car that road tests have corrected. */
    Reply of(Optional<Scenario.Tested> corrected) {
        return new Reply(headlines, more, charts, drawings, figures, next, verdict, cautions, caveat, corrected);
    }

    /** An answer of a single sentence. */
    public static Reply only(String sentence) {
        return new Reply(List.of(sentence), List.of(), List.of(), Table.NONE, List.of());
    }
}
