package evenhand.window.question;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.LinkCriteria;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.quantity.InvalidValue;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import java.util.List;
import java.util.Set;

/** Which values of one adjustment or of several meet an aim and keep what is to be kept, and what they can reach at all. */
final class WhatMakesItNeutral implements Question {
    /** What else is told before and after, where it was not asked for. */
    private static final List<Criterion> BESIDES = List.of(
            Criterion.UNDERSTEER,
            Criterion.ROLL_GRADIENT,
            Criterion.INSIDE_REAR_LOAD,
            Criterion.LIMIT,
            Criterion.NEAR_UNDERSTEER,
            Criterion.LIMIT_BALANCE,
            Criterion.FRONT_FREQUENCY,
            Criterion.REAR_FREQUENCY);

    private static final SearchAnswer ANSWER = new SearchAnswer(new SearchAnswer.Besides() {
        @Override
        public Answers ask(Trial trial, Car car, Set<Judged> asked) {
            return trial.askAlso(car, LinkCriteria.JUDGED);
        }

        @Override
        public List<Judged> told(SearchFields.Wanted wanted, Car car, Answers before) {
            return wanted.trial().judged(before).stream()
                    .filter(one -> BESIDES.contains(one.criterion()))
                    .toList();
        }
    });

    @Override
    public String key() {
        return "find";
    }

    @Override
    public Group group() {
        return Group.BALANCE;
    }

    @Override
    public String words() {
        return "What would make it neutral?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return new SearchFields(asking).all();
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.joined(active, Knobs.springsAndBars(active), Knobs.rollCentres(active));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        SearchFields.Wanted wanted;
        try {
            wanted = new SearchFields(asked.asking()).read();
        } catch (InvalidValue wrong) {
            return Reply.only(String.valueOf(wrong.getMessage()));
        }
        return ANSWER.to(asked, wanted, progress);
    }
}
