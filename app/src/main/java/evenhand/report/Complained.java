package evenhand.report;

import evenhand.advice.Advice;
import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.scenario.Setup;
import evenhand.words.effects.Complaint;
import java.util.Optional;

/**
 * What a driver complains of, and what is found against it.
 *
 * @param words his own
 * @param now what the set-up that is handed over answers
 * @param advice single changes of it
 * @param before what the set-up before answers, where there is one
 * @param alike whether both ways round are one turn and its mirror image
 */
record Complained(
        String words, Complaint complaint, Answers now, Advice advice, Optional<Answers> before, boolean alike) {
    /** Nothing where nobody complains. */
    static Optional<Complained> of(Question question, Setup chosen, Optional<Setup> base) {
        return question.complaint().flatMap(words -> of(words, question.judging(), chosen, base));
    }

    private static Optional<Complained> of(String words, Trial trial, Setup chosen, Optional<Setup> base) {
        Answers now = trial.ask(chosen.car());
        return Complaint.of(words, chosen.car(), now, trial)
                .map(complaint -> new Complained(
                        words.strip(),
                        complaint,
                        now,
                        complaint.shown()
                                ? Advice.against(chosen.entries(), trial, now, complaint.wish())
                                : Advice.NONE,
                        base.map(setup -> trial.ask(setup.car())),
                        trial.asksAlike(chosen.car())));
    }

    /** Whether the car has the figure at all. */
    boolean answered() {
        return complaint.wish().worstValue(now).isPresent();
    }
}
