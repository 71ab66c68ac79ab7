package evenhand.terminal.effects;

import evenhand.advice.Remedy;
import evenhand.answers.Criterion;
import evenhand.catalogue.Slot;
import evenhand.choice.Effect;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.OneScreen;
import evenhand.terminal.reply.EachWay;
import evenhand.words.LoadWords;
import evenhand.words.Units;
import evenhand.words.effects.EffectVerdict;
import evenhand.words.effects.RemedyWords;
import java.util.ArrayList;
import java.util.List;

/**
 * The verdict of {@code effects} on one screen: for each figure that matters the steps that move it most, or what helps against a
 * complaint.
 */
final class EffectsPage {
    private static final List<Criterion> MATTERS = List.of(
            Criterion.NEAR_UNDERSTEER,
            Criterion.UNDERSTEER,
            Criterion.LIMIT,
            Criterion.ROLL_GRADIENT,
            Criterion.INSIDE_REAR_LOAD,
            Criterion.INSIDE_FRONT_LOAD,
            Criterion.SEAT_COMFORT);

    private static final int MOST_HELPING = 10;

    private final Console console;
    private final Units units;

    EffectsPage(Console console, Units units) {
        this.console = console;
        this.units = units;
    }

    String write(EffectsReply reply) {
        int answers = reply.circles().size() * reply.setups().size();
        OneScreen page = new OneScreen(console, reply.setups().size(), "--full shows every step and every figure.");
        page.title(reply.scenario().title(), ": one usual step at a time; " + EachWay.trial(reply.trial(), units));
        EachWay.warnings(reply.circles(), page, units);
        List<Setup> asked = reply.setups().stream().map(EachWay::setup).toList();
        page.cautions(asked);
        reply.trial().load().ifPresent(load -> page.paragraph("", LoadWords.aboard(load, units)));
        int done = 0;
        for (EachWay.Circle<EffectsReply.Found> circle : reply.circles()) {
            for (EachWay<EffectsReply.Found> one : circle.setups()) {
                int left = page.room() - page.room() / (answers - done);
                String on = reply.circles().size() > 1 ? ", " + units.radius(circle.radius()) + " circle" : "";
                page.paragraph("", one.setup().name() + on + ":");
                setup(one, page, left);
                done++;
            }
        }
        page.notGiven(asked);
        return page.text();
    }

    /** @param left so many lines are to be left for the others */
    private void setup(EachWay<EffectsReply.Found> one, OneScreen page, int left) {
        List<List<Effect>> ways = new ArrayList<>();
        for (EachWay.Way<EffectsReply.Found> way : one.ways()) {
            way.found().ifPresent(found -> ways.add(found.effects()));
            way.noAnswer().ifPresent(why -> page.paragraph("  ", one.turning(way) + "no answer: " + why.text() + "."));
        }
        one.ways().stream()
                .flatMap(way -> way.found().stream())
                .flatMap(found -> found.against().stream())
                .findFirst()
                .ifPresentOrElse(against -> helping(against, page, left), () -> strongest(one, ways, page, left));
    }

    private void strongest(EachWay<EffectsReply.Found> one, List<List<Effect>> ways, OneScreen page, int left) {
        if (ways.isEmpty()) {
            return;
        }
        List<List<Effect>> workable = ways.stream()
                .map(effects -> effects.stream()
                        .filter(effect -> effect.step().work() != Slot.Work.ANOTHER_CAR)
                        .toList())
                .toList();
        for (Criterion criterion : MATTERS) {
            EffectVerdict.strongest(criterion, workable, units)
                    .filter(words -> page.room() - page.lines("  ", words) >= left)
                    .ifPresent(words -> page.paragraph("  ", words));
        }
        if (one.other().isPresent() && ways.size() > 1 && page.room() > left) {
            page.paragraph(
                    "  ",
                    "Where two numbers stand, "
                            + EffectVerdict.order(one.first().direction()) + ".");
        }
    }

    private void helping(EffectsReply.Against against, OneScreen page, int left) {
        for (String sentence : against.words(units)) {
            if (page.room() - page.lines("  ", sentence) >= left) {
                page.paragraph("  ", sentence);
            }
        }
        against.advice().remedies().stream()
                .skip(1) // the first is told above
                .limit(MOST_HELPING)
                .map(remedy -> against.said(units).line(remedy))
                .filter(line -> page.room() - page.lines("    ", line) >= left)
                .forEach(line -> page.paragraph("    ", line));
        if (against.advice().remedies().stream().anyMatch(Remedy::tooSmall)
                && page.room() - page.lines("  ", RemedyWords.FELT) >= left) {
            page.paragraph("  ", RemedyWords.FELT);
        }
        if (against.advice().remedies().size() > 1 && page.room() - page.lines("  ", RemedyWords.RULE) >= left) {
            page.paragraph("  ", RemedyWords.RULE);
        }
    }
}
