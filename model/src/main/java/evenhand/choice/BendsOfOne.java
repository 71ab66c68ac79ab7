package evenhand.choice;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.turn.PacesAnswer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What a search by one change learns of every bend by itself: the answers that it has asked for are read bend by bend, and what
 * they leave open of a bend is asked of that bend alone.
 */
final class BendsOfOne {
    /** Hills of a bend are climbed to this part of the range: their tops are flat. */
    private static final double HILL = 1e-4;

    /** Halvings that close in on where the other end comes to go first. */
    private static final int FLIP_HALVINGS = 18;

    private final Variation variation;
    private final Span span;
    private final Aim aim;
    private final Map<Double, Optional<Answers>> asked;
    private final Course course;
    /** Asked for about what was found. */
    private final Map<Double, Optional<Answers>> beside = new HashMap<>();

    /**
     * @param asked what was asked for, by value
     * @param course of the figure that decides
     */
    BendsOfOne(Variation variation, Aim aim, Map<Double, Optional<Answers>> asked, Course course) {
        this.variation = variation;
        this.span = variation.spans().get(0);
        this.aim = aim;
        this.asked = asked;
        this.course = course;
    }

    private Optional<Answers> ask(double value) {
        Optional<Answers> known = asked.get(value);
        return known != null ? known : beside.computeIfAbsent(value, variation::at);
    }

    /** The figure in one bend. */
    private OptionalDouble figure(int bend, double value) {
        return ask(value).map(answers -> aim.judged().si(answers, bend)).orElseGet(OptionalDouble::empty);
    }

    private int count() {
        return knowsNoTurn() ? 1 : variation.places().size();
    }

    private boolean knowsNoTurn() {
        return aim.judged().criterion().needsNoTurn();
    }

    /** Whether one way round is the mirror image of the other at every value that was asked for. */
    private boolean isAlike() {
        return asked.values().stream().flatMap(Optional::stream).allMatch(Answers::isAlike);
    }

    /**
     * Either side of every place where the other end comes to go first in some bend: there what is of the limit has its
     * kinks and jumps.
     */
    List<Double> flips() {
        List<Double> known = asked.keySet().stream().sorted().toList();
        List<Variation.Place> places = variation.places();
        List<Double> flips = new ArrayList<>();
        for (int bend = 0; bend < places.size(); bend++) {
            Variation alone = variation.in(places.get(bend));
            boolean mirrored = isAlike()
                    && places.get(bend).direction() != variation.trial().direction();
            for (int i = 1; i < known.size() && !mirrored; i++) {
                boolean before = frontFirst(ask(known.get(i - 1)), bend);
                if (before != frontFirst(ask(known.get(i)), bend)) {
                    Edge edge = Edge.between(
                            known.get(i - 1),
                            known.get(i),
                            FLIP_HALVINGS,
                            value -> frontFirst(alone.at(value), 0) == before);
                    flips.addAll(List.of(edge.inside(), edge.outside()));
                }
            }
        }
        return flips;
    }

    private static boolean frontFirst(Optional<Answers> answers, int bend) {
        return answers.filter(all -> bend < all.bends().size()
                        && all.bends().get(bend).turn() instanceof PacesAnswer.Paces turn
                        && turn.limit().frontFirst())
                .isPresent();
    }

    /** Slope of the figure that decides here, from both sides where both have it; nothing for a yes or no. */
    double slope(double value) {
        return aim.isYesOrNo() ? 0 : slope(value, at -> ask(at).map(aim::figure).orElseGet(OptionalDouble::empty));
    }

    private interface Figure {
        OptionalDouble at(double value);
    }

    private double slope(double value, Figure figure) {
        double reach = Kink.STEP * span.width();
        double left = Math.max(span.from(), value - reach);
        double right = Math.min(span.to(), value + reach);
        OptionalDouble before = figure.at(left);
        OptionalDouble after = figure.at(right);
        double here = figure.at(value).orElseThrow();
        double low = before.isPresent() ? left : value;
        double high = after.isPresent() ? right : value;
        return high > low ? (after.orElse(here) - before.orElse(here)) / (high - low) : 0;
    }

    /** Whether the figure bends or jumps right there in one of the bends. */
    boolean isKink(double value) {
        double ripple = Course.ripple(aim.judged().criterion());
        for (int bend = 0; bend < count(); bend++) {
            int one = bend;
            if (Kink.isAt(value, span.from(), span.to(), ripple, at -> figure(one, at))) {
                return true;
            }
        }
        return false;
    }

    /** All that is to be known of what was found. */
    Finding.AllRound allRound(double value, Answers there, OptionalDouble step, List<Aim> keeps) {
        boolean turnsNothing = variation.turnsNothing();
        boolean alike = variation.trial().ways().isBoth() && (turnsNothing ? there.isAlike() : isAlike());
        return new Finding.AllRound(
                there,
                alike,
                each(alike || aim.judged().criterion().knowsNoTurn(), OptionalDouble.of(value)),
                turnsNothing || there.frontFirst() ? Optional.empty() : lastFrontFirst(value, step, keeps));
    }

    /** What the figure can be in each bend by itself, where nothing was found. */
    List<Finding.InBend> known() {
        return each(aim.judged().criterion().knowsNoTurn(), OptionalDouble.empty());
    }

    /** @param alike whether one way round says all of the other */
    private List<Finding.InBend> each(boolean alike, OptionalDouble value) {
        List<Variation.Place> bends = variation.places();
        boolean onlyOne = knowsNoTurn()
                || bends.size() == 1
                || (alike && variation.trial().radii().size() == 1);
        List<Finding.InBend> all = new ArrayList<>();
        for (int bend = 0; bend < bends.size(); bend++) {
            Variation.Place place = bends.get(bend);
            boolean same = alike && place.direction() != variation.trial().direction();
            all.add(
                    same
                            ? all.get(bend - 1).turned(place.direction())
                            : inBend(bend, place, onlyOne ? course : course(bend, place), value));
        }
        return all;
    }

    private Finding.InBend inBend(int bend, Variation.Place place, Course itsOwn, OptionalDouble value) {
        boolean slopes = value.isPresent() && !aim.isYesOrNo();
        return new Finding.InBend(
                place.radius(),
                place.direction(),
                itsOwn.isEmpty() ? Optional.empty() : Optional.of(itsOwn.reach()),
                slopes ? OptionalDouble.of(slope(value.getAsDouble(), at -> figure(bend, at))) : OptionalDouble.empty(),
                itsOwn.curve());
    }

    /** The course of the figure in one bend. */
    private Course course(int bend, Variation.Place place) {
        Variation alone = variation.in(place);
        boolean turnedOver = aim.judged().criterion().mirrors()
                && place.direction() != variation.trial().direction();
        Course own = new Course(span, aim.judged().criterion(), value -> {
            OptionalDouble figure = alone.at(value).map(aim.judged()::si).orElseGet(OptionalDouble::empty);
            return turnedOver && figure.isPresent() ? OptionalDouble.of(-figure.getAsDouble()) : figure;
        });
        asked.forEach((value, answers) -> own.put(
                value, answers.map(there -> aim.judged().si(there, bend)).orElseGet(OptionalDouble::empty)));
        own.ends().forEach(own::ask);
        if (!aim.isYesOrNo()) {
            own.climbHills(HILL, own::ask);
        }
        return own;
    }

    private Optional<Finding.FrontFirst> lastFrontFirst(double found, OptionalDouble step, List<Aim> keeps) {
        TreeMap<Double, Boolean> known = new TreeMap<>();
        asked.forEach((value, answers) -> known.put(
                value,
                answers.filter(there -> LastFrontFirst.does(there, keeps)).isPresent()));
        LastFrontFirst last = new LastFrontFirst(
                known,
                found,
                span.start(),
                value -> ask(value)
                        .filter(there -> LastFrontFirst.does(there, keeps))
                        .isPresent());
        OptionalDouble value = step.isPresent() ? last.step(span, step.getAsDouble()) : last.value();
        return value.stream()
                .mapToObj(at -> new Finding.FrontFirst(List.of(at), ask(at).orElseThrow()))
                .findFirst();
    }
}
