package evenhand.terminal.effects;

import evenhand.advice.Remedy;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Trial;
import evenhand.choice.Effect;
import evenhand.forms.Table;
import evenhand.quantity.Unit;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.EachWay;
import evenhand.terminal.reply.SetupNotes;
import evenhand.words.BothWays;
import evenhand.words.JudgedWords;
import evenhand.words.LoadWords;
import evenhand.words.NotGiven;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.effects.EffectWords;
import evenhand.words.effects.RemedyWords;
import java.util.ArrayList;
import java.util.List;

/** The answers of {@code effects} for people: a row per adjustment, a column per figure. */
final class EffectsTables {
    private static final int MOST_HELPING = 15;

    private static final List<Criterion> BESIDE = List.of(
            Criterion.ROLL_GRADIENT,
            Criterion.FRONT_SHARE,
            Criterion.INSIDE_REAR_LOAD,
            Criterion.INSIDE_FRONT_LOAD,
            Criterion.SEAT_COMFORT);

    private final Page page;
    private final Units units;

    EffectsTables(Console console, Units units) {
        this.page = new Page(console);
        this.units = units;
    }

    String write(EffectsReply reply) {
        Trial trial = reply.trial();
        page.title(reply.scenario().title());
        trial.load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        for (EachWay.Shown<EffectsReply.Found> shown : EachWay.shown(reply.circles(), units)) {
            page.heading(shown.setup().name() + shown.where());
            shown.warnings().forEach(warning -> page.paragraph(BothWays.WARNING, warning));
            shown.way().found().ifPresent(found -> found(found, trial));
            shown.noAnswer().ifPresent(none -> page.paragraph("  ", none));
        }
        new SetupNotes(page, units)
                .notGiven(reply.setups().stream().map(EachWay::setup).toList());
        return page.text();
    }

    private void found(EffectsReply.Found found, Trial trial) {
        if (found.against().isPresent()) {
            complaint(found.against().get(), found.effects());
            return;
        }
        page.line("One usual step of each adjustment, all else as it is; the largest effect first.");
        table(found.effects(), shown(trial, found.effects()));
        List<String> idle = found.effects().stream()
                .filter(this::idle)
                .map(effect -> effect.step().path())
                .map(path -> path
                        + NotGiven.whyIdle(path).map(why -> " (" + why + ")").orElse(""))
                .toList();
        if (!idle.isEmpty()) {
            page.blank();
            page.paragraph("", "Without effect: " + String.join(", ", idle) + ".");
        }
    }

    /** Understeer at each pace, the rest at the briskest; programs get all. */
    private static List<Judged> shown(Trial trial, List<Effect> effects) {
        double brisk =
                trial.paces().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return trial.judged().stream()
                .filter(one -> one.criterion().atLimit()
                        || one.criterion().equals(Criterion.UNDERSTEER)
                        || (BESIDE.contains(one.criterion()) && one.pace().orElse(brisk) == brisk))
                .filter(one ->
                        effects.stream().anyMatch(effect -> effect.move(one).isPresent()))
                .toList();
    }

    /** What helps in the worse way, and what it does this way. */
    private void complaint(EffectsReply.Against against, List<Effect> effects) {
        page.sentences(against.words(units));
        List<Remedy> helping = against.advice().remedies();
        if (helping.isEmpty()) {
            return;
        }
        page.blank();
        page.line("  Single steps that help, best first");
        for (int i = 0; i < Math.min(helping.size(), MOST_HELPING); i++) {
            page.paragraph("    ", against.said(units).line(helping.get(i), effects.get(i)));
        }
        page.blank();
        page.paragraph("  ", RemedyWords.RULE);
        if (helping.stream().anyMatch(Remedy::tooSmall)) {
            page.paragraph("  ", RemedyWords.FELT);
        }
    }

    private boolean idle(Effect effect) {
        return effect.moves().stream()
                .allMatch(move -> cell(move)
                        .equals(Numbers.fixed(0, move.judged().criterion().digits())));
    }

    private void table(List<Effect> effects, List<Judged> judged) {
        List<String> heads = new ArrayList<>();
        for (Judged one : judged) {
            String name = one.criterion().name();
            String pace = one.pace().isPresent() ? " " + JudgedWords.pace(one) : "";
            heads.add(name + pace + " " + units.of(one.criterion()).symbol());
        }
        Table.Builder table = new Table.Builder(heads);
        for (Effect effect : effects) {
            if (!idle(effect)) {
                List<String> cells = new ArrayList<>();
                for (Judged one : judged) {
                    cells.add(effect.move(one).map(this::cell).orElse("–"));
                }
                table.row(effect.step().path(), EffectWords.step(effect, units), cells);
            }
        }
        page.table(table.build());
    }

    private String cell(Effect.Move move) {
        Unit unit = units.of(move.judged().criterion());
        return Numbers.signed(
                unit.fromSi(move.difference()), move.judged().criterion().digits());
    }
}
