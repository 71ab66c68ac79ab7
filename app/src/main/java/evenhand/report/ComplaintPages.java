package evenhand.report;

import evenhand.advice.Remedy;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Ways;
import evenhand.catalogue.Slot;
import evenhand.choice.Effect;
import evenhand.report.Block.Column;
import evenhand.report.Block.Points;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.turn.Direction;
import evenhand.words.BothWays;
import evenhand.words.InPrint;
import evenhand.words.JudgedWords;
import evenhand.words.Units;
import evenhand.words.effects.EffectWords;
import evenhand.words.effects.RemedyWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a driver complains of: whether the sums show it, and the single changes that help, with what else they move. */
final class ComplaintPages {
    /** More changes than these nobody tries one after the other. */
    private static final int MOST = 8;

    private final Complained complained;
    private final Candidate chosen;
    private final Optional<Candidate> base;
    private final Units units;
    private final Ways ways;
    private final RemedyWords said;

    private ComplaintPages(Findings findings, Complained complained) {
        this.complained = complained;
        chosen = findings.chosen();
        base = findings.compares() ? Optional.of(findings.base()) : Optional.empty();
        units = findings.question().units();
        ways = findings.question().judging().ways();
        said = new RemedyWords(complained.complaint(), ways, complained.alike(), units);
    }

    static Section of(Findings findings, Complained complained) {
        return new ComplaintPages(findings, complained).section();
    }

    private Section section() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Text.plain("A driver says that it " + complained.words() + ". Asked of \"" + chosen.name()
                + "\", which is handed over: do the sums show it, and which single change would help?"));
        if (!complained.answered()) {
            blocks.add(new Text(
                    "It has no answer: the car does not get as far, or the file has no damper curves to judge its ride"
                            + " by.",
                    Tone.WARNING));
            return new Section(title(), true, blocks);
        }
        blocks.add(figure());
        if (complained.complaint().shown()) {
            blocks.add(Text.plain("The sums show it."));
        }
        blocks.add(
                new Points(InPrint.sentences(said.help(chosen.setup().car(), complained.now(), complained.advice()))));
        List<Remedy> remedies = complained.advice().remedies();
        if (!remedies.isEmpty()) {
            blocks.add(new Block.Heading("Single changes that help, best first"));
            blocks.add(changes(remedies.subList(0, Math.min(MOST, remedies.size()))));
            blocks.add(Text.quiet(
                    RemedyWords.RULE + (remedies.stream().anyMatch(Remedy::tooSmall) ? " " + RemedyWords.FELT : "")));
        }
        return new Section(title(), true, blocks);
    }

    private String title() {
        return "The complaint: \"" + complained.words() + "\"";
    }

    /** The figure that it is judged by, before and now, each way round. */
    private Table figure() {
        List<Column> columns = new ArrayList<>(List.of(Column.words("judged by", 3)));
        base.ifPresent(one -> columns.add(Column.number("before", 1.4)));
        columns.add(Column.number(base.isPresent() ? "now" : "it is", 1.4));
        List<Row> rows = new ArrayList<>();
        for (int way = 0; way < told(); way++) {
            List<String> cells = new ArrayList<>();
            cells.add(JudgedWords.figure(judged()) + (told() > 1 ? ", " + BothWays.turning(direction(way)) : ""));
            if (base.isPresent()) {
                cells.add(value(complained.before().orElseThrow(), way));
            }
            cells.add(value(complained.now(), way));
            rows.add(new Row(cells, false));
        }
        return new Table(columns, rows);
    }

    private String value(Answers answers, int way) {
        OptionalDouble value = judged().si(answers, way);
        return value.isPresent() ? InPrint.symbol(units.show(value.getAsDouble(), criterion())) : "none";
    }

    /** A row for each change: what it does each way round, and what else moves with it. */
    private Table changes(List<Remedy> remedies) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("change", 2.6)));
        for (int way = 0; way < told(); way++) {
            columns.add(Column.number(told() > 1 ? BothWays.turning(direction(way)) : "moves it by", 1.3));
        }
        columns.add(Column.words("with it moves", 4.2));
        columns.add(Column.words("mind", 2.4));
        List<Row> rows = new ArrayList<>();
        for (Remedy remedy : remedies) {
            List<String> cells = new ArrayList<>();
            cells.add(RemedyWords.name(remedy.step()) + " " + InPrint.sentence(said.size(remedy)));
            for (int way = 0; way < told(); way++) {
                cells.add(moves(remedy, way));
            }
            cells.add(InPrint.sentence(besides(remedy)));
            cells.add(String.join("; ", mind(remedy)));
            rows.add(new Row(cells, false));
        }
        return new Table(columns, rows);
    }

    private String moves(Remedy remedy, int way) {
        return remedy.effects()
                .get(way)
                .move(judged())
                .map(move -> EffectWords.difference(move, units)
                        + remedy.upTo()
                                .flatMap(largest -> largest.effects().get(way).move(judged()))
                                .map(most -> " to " + EffectWords.difference(most, units))
                                .orElse(""))
                .map(InPrint::symbol)
                .orElse("none");
    }

    /** What else moves, each way round where the ways differ. */
    private String besides(Remedy remedy) {
        List<String> each = new ArrayList<>();
        for (int way = 0; way < told(); way++) {
            Effect effect = remedy.effects().get(way);
            List<String> others = EffectWords.sideEffects(effect, judged(), units);
            each.add(others.isEmpty() ? "nothing noticeable" : String.join(", ", others));
        }
        if (each.stream().distinct().count() == 1) {
            return each.get(0);
        }
        List<String> told = new ArrayList<>();
        for (int way = 0; way < each.size(); way++) {
            told.add(direction(way).key() + ": " + each.get(way));
        }
        return String.join("; ", told);
    }

    private List<String> mind(Remedy remedy) {
        List<String> mind = new ArrayList<>(said.mind(remedy));
        mind.add(
                remedy.step().work() == Slot.Work.REBUILDING
                        ? "takes rebuilding"
                        : switch (remedy.step().wayBack()) {
                            case TURNED_BACK -> "is set";
                            case OLD_PART -> "another part";
                            case NONE -> "cannot be undone";
                        });
        return mind;
    }

    /** How many ways are told: one where both are alike, or it is of the ride, which knows no turn. */
    private int told() {
        return complained.alike() || criterion().ofRide()
                ? 1
                : ways.directions().size();
    }

    private Direction direction(int way) {
        return ways.directions().get(way);
    }

    private Judged judged() {
        return complained.complaint().judged();
    }

    private Criterion criterion() {
        return judged().criterion();
    }
}
