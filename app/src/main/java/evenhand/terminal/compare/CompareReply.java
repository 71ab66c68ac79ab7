package evenhand.terminal.compare;

import evenhand.answers.Criterion;
import evenhand.answers.Trial;
import evenhand.car.LoadCase;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SharedParts;
import evenhand.turn.PacesAnswer;
import evenhand.words.Units;
import evenhand.words.compare.ComparisonWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What {@code compare} answers: set-ups compared with one of them.
 *
 * @param circles in the trial's order
 * @param full whether people get all figures
 */
record CompareReply(Scenario scenario, Setup base, Trial trial, List<EachWay.Circle<Answered>> circles, boolean full)
        implements Reply {
    /**
     * One set-up against the base, one way round.
     *
     * @param baseTurns how the base turns
     * @param turns how the set-up turns
     */
    record Answered(Comparison comparison, PacesAnswer.Paces baseTurns, PacesAnswer.Paces turns) {
        /** Its differences, each with the changes that it comes from. */
        List<SharedOut> differences() {
            return comparison.differences().stream()
                    .map(difference -> new SharedOut(difference, comparison.changes()))
                    .toList();
        }
    }

    /** A difference and the changes between both cars. */
    private record SharedOut(Comparison.Difference difference, List<Change> changes) {
        Criterion criterion() {
            return difference.judged().criterion();
        }

        Optional<List<Share>> shares() {
            return difference.shares().map(shapley -> {
                List<Share> shares = new ArrayList<>();
                for (int i = 0; i < shapley.shares().size(); i++) {
                    shares.add(new Share(
                            criterion(), changes.get(i), shapley.shares().get(i)));
                }
                return shares;
            });
        }
    }

    /** What a change did of a difference, SI. */
    private record Share(Criterion criterion, Change change, double share) {}

    private static final Contents<Share> SHARE = Contents.of(Share.class)
            .text("change", share -> share.change().path())
            .text("from", share -> share.change().from())
            .text("to", share -> share.change().to())
            .judged("share", Share::criterion, Share::share);

    private static final Contents<SharedOut> DIFFERENCE = Contents.of(SharedOut.class)
            .with(shared -> shared.difference().judged(), SharedParts.JUDGED)
            .judged("base", SharedOut::criterion, shared -> shared.difference().base())
            .judged("value", SharedOut::criterion, shared -> shared.difference().value())
            .judged(
                    "difference",
                    SharedOut::criterion,
                    shared -> shared.difference().difference())
            .listIfKnown("shares", SharedOut::shares, SHARE);

    private static final Contents<Answered> DIFFERENCES =
            Contents.of(Answered.class).list("differences", Answered::differences, DIFFERENCE);

    private static final Contents<EachWay<Answered>> SETUP =
            EachWay.contents(DIFFERENCES, answered -> ComparisonWords.of(answered.comparison(), Units.METRIC));

    private static final Contents<CompareReply> REPLY = Contents.of(CompareReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .text("base", reply -> reply.base().name())
            .list("setups", CompareReply::setups, SETUP)
            .listIfAny(
                    "atRadius",
                    reply -> reply.circles().subList(1, reply.circles().size()),
                    EachWay.atRadius(SETUP));

    /** In CSV a row per share. */
    private static final Contents<EachWay<Answered>> ROWS = Contents.<EachWay<Answered>>ofAny()
            .text("setup", one -> one.setup().name())
            .withIfAny(EachWay::found, DIFFERENCES);

    CompareReply {
        circles = List.copyOf(circles);
    }

    /** On the first circle. */
    @Override
    public List<EachWay<Answered>> setups() {
        return circles.get(0).setups();
    }

    @Override
    public List<String> silent(Units units) {
        return EachWay.silent(circles, this, units);
    }

    @Override
    public boolean complete() {
        return EachWay.isComplete(circles);
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    @Override
    public String command() {
        return "compare";
    }

    @Override
    public byte[] json() {
        return JsonForm.write(command(), REPLY, this);
    }

    @Override
    public String csv(Units units) {
        return CsvForm.write(ROWS, EachWay.answered(setups()), units);
    }

    @Override
    public String text(Console console, Units units) {
        return full ? new CompareTables(console, units).write(this) : new ComparePage(console, units).write(this);
    }
}
