package evenhand.window.desk;

import evenhand.answers.Balance;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.handsums.HandSums;
import evenhand.load.Laden;
import evenhand.scenario.AsTested;
import evenhand.scenario.Setup;
import evenhand.turn.TurnAnswer;
import evenhand.words.NotGiven;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Replies in the background. The turns come first, on one worker, so that the drawing follows a drag; the question's own reply,
 * which may take longer, on another.
 */
public final class Answering implements AutoCloseable {
    /** What may be done next is worked out when the hands were still for so long, ms. */
    private static final long CALM = 200;

    /** So many things that were not given are named in a line. */
    private static final int NAMED = 3;

    private final List<Question> questions;
    private final Executor eventThread;
    private final Balances balances = new Balances();
    private final Corrections corrections = new Corrections();
    private final Worker<Asking> turns;
    private final Worker<Job> replies;
    private final Worker<Question.Asked> afterthoughts;
    private Consumer<Act> deliver = act -> {};

    /** What is asked, and of which car; of none where road tests cannot correct it. */
    private record Job(Question.Asked asked, AsTested car) {}

    /** @param eventThread where answers are delivered */
    public Answering(List<Question> questions, Executor eventThread) {
        this.questions = List.copyOf(questions);
        this.eventThread = eventThread;
        this.turns = new Worker<>("turns", 0, this::turn, share -> {});
        this.replies = Worker.delivering("replies", 0, this::reply, this::progress);
        this.afterthoughts = Worker.delivering("afterthoughts", CALM, this::afterthought, share -> {});
    }

    /** Where the answers go, as acts. */
    public void deliverTo(Consumer<Act> bench) {
        deliver = bench;
    }

    /** Asks; never waits. */
    public void ask(Asking asking) {
        turns.ask(asking);
    }

    /** The long answer that is being worked out is no longer wanted. */
    public void cancel() {
        replies.cancel();
    }

    @Override
    public void close() {
        turns.close();
        replies.close();
        afterthoughts.close();
    }

    private void turn(Asking asking, Progress progress) {
        try {
            turn(asking);
        } catch (RuntimeException defect) {
            post(new LookAct.ReplyCame(asking, defect(defect)));
        }
    }

    private void turn(Asking asking) {
        boolean ofTheFile = question(questions, asking.question()).asksTheFile();
        AsTested car = ofTheFile || !asking.work().which().isTested()
                ? new AsTested.Corrected(asking.work().scenario())
                : corrections.of(asking.work());
        Work work =
                car instanceof AsTested.Corrected corrected ? asking.work().of(corrected.scenario()) : asking.work();
        List<Setup> setups = new ArrayList<>(work.shown());
        if (!setups.contains(work.baseSetup())) {
            setups.add(work.baseSetup());
        }
        Map<String, TurnedSetup> turned = new LinkedHashMap<>();
        for (Setup setup : setups) {
            turned.put(setup.name(), turned(setup, work.trial()));
        }
        post(new LookAct.TurnsCame(new Replies.Turns(asking.work(), turned)));
        replies.ask(new Job(new Question.Asked(asking, work, turned, balances), car));
    }

    private TurnedSetup turned(Setup setup, Trial trial) {
        Laden laden = Laden.of(setup.car(), trial.load());
        if (laden instanceof Laden.AtRest rest) {
            return new TurnedSetup(
                    setup, rest.car(), balances.of(rest.car(), trial.paces(), trial.radius(), trial.direction()));
        }
        String why = ((Laden.NoRest) laden).text();
        return new TurnedSetup(
                setup,
                setup.car().settled(),
                new Balance(new HandSums.FallsOver(why), new TurnAnswer.NoTurn(TurnAnswer.Reason.NO_EQUILIBRIUM, why)));
    }

    private Runnable reply(Job job, Progress progress) {
        Question.Asked asked = job.asked();
        Reply reply;
        try {
            reply = job.car() instanceof AsTested.Corrected corrected
                    ? withWhatIsNotMeasured(
                                    question(questions, asked.asking().question())
                                            .answer(asked, progress),
                                    asked)
                            .of(corrected.scenario().tested())
                    : Corrections.none(job.car());
        } catch (CancellationException stopped) {
            return () -> post(new LookAct.ProgressCame(Optional.empty()));
        } catch (RuntimeException defect) {
            reply = defect(defect);
        }
        LookAct.ReplyCame came = new LookAct.ReplyCame(asked.asking(), reply);
        return () -> {
            post(came);
            if (job.car() instanceof AsTested.Corrected) {
                afterthoughts.ask(asked);
            }
        };
    }

    /** The answer with what every answer says of the set-ups that are shown: what was not given, and what was estimated. */
    private static Reply withWhatIsNotMeasured(Reply reply, Question.Asked asked) {
        List<Setup> setups = asked.shown().stream().map(TurnedSetup::setup).toList();
        List<String> line = new ArrayList<>();
        NotGiven.inShort(setups, NAMED).ifPresent(line::add);
        setups.stream().mapToInt(setup -> setup.estimated().size()).max().ifPresent(values -> {
            if (values > 0) {
                line.add("Estimated, not measured: " + values + (values == 1 ? " value." : " values."));
            }
        });
        return reply.with(
                NotGiven.cautions(setups),
                line.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", line)),
                NotGiven.inFull(setups).map(none -> new Reply.Paragraph(NotGiven.HEADING, List.of(none + "."))));
    }

    private Runnable afterthought(Question.Asked asked, Progress progress) {
        Afterthought after;
        try {
            after = question(questions, asked.asking().question()).after(asked, progress);
        } catch (CancellationException stopped) {
            throw stopped; // something newer is waited for
        } catch (RuntimeException defect) {
            after = Afterthought.of(
                    List.of(new Reply.Next(String.join("", defect(defect).headlines()), Optional.empty())));
        }
        LookAct.AfterthoughtCame came = new LookAct.AfterthoughtCame(asked.asking(), after);
        return () -> post(came);
    }

    /** A worker lives on, and the person hears of it. */
    private static Reply defect(RuntimeException defect) {
        return Reply.only("This question has met a defect of the program, please report it: " + defect);
    }

    private void progress(double share) {
        post(new LookAct.ProgressCame(Optional.of(share)));
    }

    private void post(Act act) {
        eventThread.execute(() -> deliver.accept(act));
    }

    /** The question of a key; the first where there is none. */
    public static Question question(List<Question> questions, String key) {
        return questions.stream()
                .filter(question -> question.key().equals(key))
                .findFirst()
                .orElse(questions.get(0));
    }
}
