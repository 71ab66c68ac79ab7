package evenhand.report;

import evenhand.answers.Judged;
import evenhand.choice.Comparison;
import evenhand.doubt.Doubt;
import evenhand.doubt.Progress;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.scenario.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All answers that a report is written from.
 *
 * @param base the set-up before
 * @param chosen the one that is handed over; the base itself where it is the only one
 * @param candidates all, the base first
 * @param doubt of base and chosen, or of the chosen alone; none where that one has no answer
 */
public record Findings(
        Question question,
        Candidate base,
        Candidate chosen,
        List<Candidate> candidates,
        List<Against> against,
        Optional<Doubt.Answer> doubt) {
    /** A set-up compared with the base. */
    public record Against(Candidate candidate, Comparison comparison) {}

    public Findings {
        candidates = List.copyOf(candidates);
        against = List.copyOf(against);
    }

    /** Asks all. */
    public static Findings of(Question question, Progress progress) {
        List<Setup> asked = Stream.concat(Stream.of(question.base()), question.setups().stream())
                .distinct()
                .toList();
        List<Candidate> candidates = asked.stream()
                .map(setup -> Candidate.of(setup, question.scenario().setups().indexOf(setup), question.trial()))
                .toList();
        Candidate base = candidates.get(0);
        Setup last = question.setups().get(question.setups().size() - 1);
        Candidate chosen = candidates.stream()
                .filter(one -> one.setup().equals(last))
                .findFirst()
                .orElseThrow();
        List<Against> against = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (candidate.index() != base.index()
                    && base.turns().isPresent()
                    && candidate.turns().isPresent()) {
                against.add(new Against(
                        candidate,
                        Comparison.of(base.setup().entries(), candidate.setup().entries(), question.trial())));
            }
        }
        List<Candidate> doubted = Stream.of(base, chosen)
                .distinct()
                .filter(one -> one.turns().isPresent())
                .toList();
        Optional<Doubt.Answer> doubt = chosen.turns().isEmpty()
                ? Optional.empty()
                : Optional.of(Doubt.of(
                        doubted.stream().map(one -> one.setup().entries()).toList(),
                        new Doubt.Question(
                                question.trial(),
                                question.samples(),
                                1,
                                Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                                Optional.empty(),
                                progress)));
        return new Findings(question, base, chosen, candidates, against, doubt);
    }

    /** Whether there is a set-up before the one that is handed over. */
    public boolean compares() {
        return base.index() != chosen.index();
    }

    /** Whether this set-up is the one that is handed over. */
    boolean hasChosen(Candidate candidate) {
        return candidate.index() == chosen.index();
    }

    /** The chosen set-up against the base. */
    public Optional<Comparison> comparison() {
        return against.stream()
                .filter(one -> hasChosen(one.candidate()))
                .map(Against::comparison)
                .findFirst();
    }

    /** Base and chosen, or the one. */
    List<Candidate> beforeAndAfter() {
        return compares() ? List.of(base, chosen) : List.of(chosen);
    }

    /** Whether every set-up has an answer. */
    public boolean complete() {
        return candidates.stream().allMatch(one -> one.turns().isPresent());
    }

    /** What doubt leaves of a figure of the chosen set-up. */
    Optional<Spread> spread(Judged judged) {
        return doubt.stream()
                .flatMap(answer -> answer.cars().get(answer.cars().size() - 1).spreads().stream())
                .filter(spread -> spread.judged().equals(judged))
                .findFirst();
    }
}
