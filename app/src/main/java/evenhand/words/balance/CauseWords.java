package evenhand.words.balance;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.quantity.Dimension;
import evenhand.turn.PaceAnswer;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the understeer gradient at a pace is made of, largest part first, in one sentence. */
final class CauseWords {
    /** A part of the budget smaller than this share of all its parts is not spoken of. */
    private static final double WORTH_SAYING = 0.15;

    /** More causes than these make no plain sentence. */
    private static final int MOST_CAUSES = 3;

    /** A cause with its part of the understeer gradient, deg/g. */
    private record Cause(String words, double part) {}

    private CauseWords() {}

    /**
     * Adds the sentence of one pace, if there is one to say.
     *
     * @param gradient understeer gradient there, rad per m/s²
     * @param gradientOnly whether the gradient alone is no verdict, so that it is not called under- or oversteer
     */
    static void say(PaceAnswer.InBalance answer, double gradient, boolean gradientOnly, List<String> sentences) {
        String pace = Units.pace(answer.lateralAcceleration());
        PaceAnswer.Budget budget = answer.budget();
        double k = Dimension.UNDERSTEER_GRADIENT.metric().fromSi(gradient);
        List<Cause> with = new ArrayList<>();
        List<Cause> against = new ArrayList<>();
        double all = 0;
        for (Figure<PaceAnswer.Budget> figure : TurnFigures.BUDGET) {
            all += Math.abs(figure.value(budget).orElse(0));
        }
        for (Figure<PaceAnswer.Budget> figure : TurnFigures.BUDGET) {
            double part = figure.value(budget).orElse(0);
            if (Math.abs(part) >= WORTH_SAYING * all && part != 0) {
                (part > 0 == k > 0 ? with : against).add(new Cause(figure.words(), part));
            }
        }
        Comparator<Cause> largestFirst = Comparator.comparingDouble(cause -> -Math.abs(cause.part()));
        with.sort(largestFirst);
        against.sort(largestFirst);
        if (Math.abs(k) >= BalanceWords.NEAR_NEUTRAL && !with.isEmpty()) {
            StringBuilder text = new StringBuilder("At ").append(pace);
            String what = gradientOnly ? "gradient" : k > 0 ? "understeer" : "oversteer";
            text.append(" the ").append(what).append(" comes from ");
            list(with, text);
            if (!against.isEmpty()) {
                text.append("; against it ").append(against.size() == 1 ? "works " : "work ");
                list(against, text);
            }
            sentences.add(text.append('.').toString());
        } else if (Math.abs(k) < BalanceWords.NEAR_NEUTRAL && !with.isEmpty() && !against.isEmpty()) {
            StringBuilder text = new StringBuilder("At ").append(pace).append(' ');
            with.addAll(against);
            list(with, text);
            sentences.add(text.append(" all but cancel.").toString());
        }
    }

    private static void list(List<Cause> causes, StringBuilder text) {
        int said = Math.min(causes.size(), MOST_CAUSES);
        for (int i = 0; i < said; i++) {
            text.append(i == 0 ? "" : i < said - 1 ? ", " : " and ");
            text.append(causes.get(i).words()).append(" (");
            text.append(Numbers.signed(causes.get(i).part(), 2)).append(" deg/g)");
        }
    }
}
