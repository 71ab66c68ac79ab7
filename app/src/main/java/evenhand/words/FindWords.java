package evenhand.words;

import static java.util.stream.Collectors.joining;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.choice.Finding;
import evenhand.choice.Span;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a search has found, in sentences: first what can be reached, then what does, then how sharp it is. */
public final class FindWords {
    private static final int VALUE_DIGITS = 4;
    private static final int TOLERANCE_DIGITS = 3;
    private static final double MILLIMETRE = 0.001;
    private static final double SIXTEENTH_INCH = 0.0254 / 16;

    private FindWords() {}

    public static List<String> of(Finding finding, Units units) {
        List<String> sentences = new ArrayList<>();
        if (finding instanceof Finding.One one) {
            one(one, units, sentences);
        } else if (finding instanceof Finding.Several several) {
            several(several, units, sentences);
        } else if (finding instanceof Finding.NoValue none) {
            sentences.add("No answer: " + none.text() + ".");
        }
        return sentences;
    }

    /** A value of a change as a shop writes it: "262.4 mm". */
    public static String value(Adjustable adjustable, double si, Units units) {
        Unit unit = unit(adjustable, units);
        String symbol = unit.symbol();
        return Numbers.significant(unit.fromSi(si), VALUE_DIGITS) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /**
     * A value of a change as it goes into the car's file: in the person's unit, with the tolerance that the old one had.
     *
     * @param digits that count
     */
    public static String written(Entries car, Span change, double si, int digits) {
        return written(car, change, si, change.adjustable().unit(), digits);
    }

    /** A value as it is said and with its tolerance, in the unit of show where it is a rounder number there. */
    public static String written(Entries car, Span change, double si, Units shown) {
        Unit own = change.adjustable().unit();
        Unit other = unit(change.adjustable(), shown);
        boolean rounder = lengthOfNumber(si, other) < lengthOfNumber(si, own);
        return written(car, change, si, rounder ? other : own, VALUE_DIGITS);
    }

    private static String written(Entries car, Span change, double si, Unit unit, int digits) {
        String tolerance = Catalogue.get(car, change.path())
                .filter(Quantity::hasTolerance)
                .map(given -> " ± " + written(given.tolerance(), unit, TOLERANCE_DIGITS))
                .orElse("");
        return written(si, unit, digits) + tolerance;
    }

    private static int lengthOfNumber(double si, Unit unit) {
        return written(si, unit, VALUE_DIGITS).length() - unit.symbol().length();
    }

    private static String written(double si, Unit unit, int digits) {
        double number =
                new BigDecimal(unit.fromSi(si)).round(new MathContext(digits)).doubleValue();
        return Quantity.of(unit.toSi(number), unit).text();
    }

    static Unit unit(Adjustable adjustable, Units units) {
        return adjustable.dimension() == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(adjustable.dimension());
    }

    private static void one(Finding.One one, Units units, List<String> sentences) {
        Span span = one.change();
        Adjustable now = span.adjustable();
        String name = ChangeWords.name(span.path());
        Judged judged = one.aim().judged();
        sentences.add("With the " + name + " between " + value(now, span.from(), units) + " and "
                + value(now, span.to(), units) + ", the " + JudgedWords.figure(judged) + " can be had from "
                + figures(judged, one.reach(), units) + "; the car has " + value(now, now.si(), units) + " now.");
        String found = value(now, one.value(), units);
        if (one.unrounded().isPresent() && (one.met() || !one.solutions().isEmpty())) {
            sentences.add((one.met() ? "The aim, " : "The place nearest to the aim, ") + demand(one.aim(), units)
                    + ", is at " + value(now, one.unrounded().getAsDouble(), units)
                    + "; of the steps that can be built take " + found + ", which gives "
                    + figure(judged, one.achieved(), units) + ".");
        } else if (!one.met()
                && !one.jumps().isEmpty()
                && one.solutions().isEmpty()
                && one.aim().nearlyMet(one.achieved())) {
            sentences.add("The " + JudgedWords.figure(judged) + " jumps past " + demand(one.aim(), units)
                    + " without having it; beside the jump, " + found + " gives "
                    + figure(judged, one.achieved(), units) + ", which nobody tells from it.");
        } else if (one.met()) {
            boolean asItIs = one.value() == now.si();
            sentences.add((asItIs ? "The car as it stands does: at " : "At ") + found + " it is "
                    + figure(judged, one.achieved(), units) + ", as asked.");
        } else {
            sentences.add("No value in that range gives " + demand(one.aim(), units)
                    + (one.kept().isEmpty() ? "" : " and keeps what is to be kept") + "; "
                    + (one.unrounded().isPresent() ? "of the steps that can be built " : "") + "the nearest is " + found
                    + ", with " + figure(judged, one.achieved(), units) + ".");
        }
        List<String> others = one.solutions().stream()
                .filter(solution -> solution != one.value()
                        && !(one.unrounded().isPresent()
                                && solution == one.unrounded().getAsDouble()))
                .map(solution -> value(now, solution, units))
                .toList();
        if (one.met() && !others.isEmpty()) {
            boolean exactly = one.aim().sense() == Aim.Sense.EXACTLY;
            sentences.add((exactly ? "The aim is met at " : "What meets the aim has its other edges at ")
                    + String.join(" and ", others) + (exactly ? " too" : "")
                    + "; what is nearest to the present value is taken.");
        }
        if (!one.jumps().isEmpty()) {
            sentences.add("At "
                    + one.jumps().stream().map(jump -> value(now, jump, units)).collect(joining(" and "))
                    + " the " + JudgedWords.figure(judged)
                    + " jumps past the aim: something touches or lifts there at once.");
        }
        sentences.add(sharpness(one, units));
        kept(one.kept(), units, sentences);
        notes(one.notes(), one.met(), sentences);
        tailFirst(judged, one.achieved(), units).ifPresent(sentences::add);
    }

    private static String sharpness(Finding.One one, Units units) {
        Adjustable now = one.change().adjustable();
        boolean length = now.dimension() == Dimension.LENGTH;
        double fine = units == Units.METRIC ? MILLIMETRE : SIXTEENTH_INCH;
        boolean ofItself = one.value() > 0; // of nothing, and of what is below it, a per cent says little
        double little = length ? fine : (ofItself ? one.value() : one.change().width()) / 100;
        String by = length ? (units == Units.METRIC ? "1 mm" : "1/16 in") : ofItself ? "1 %" : "1 % of the range";
        Criterion criterion = one.aim().judged().criterion();
        Unit unit = units.of(criterion);
        return "There, " + by + " more moves it by " + signed(unit.fromSi(one.slope() * little), criterion.digits())
                + " " + unit.symbol() + ".";
    }

    /** With more digits than a table has, where the table would show nothing. */
    private static String signed(double value, int digits) {
        String text = Numbers.signed(value, digits);
        return text.matches("[+−]?0(\\.0*)?") ? (value > 0 ? "+" : "") + Numbers.significant(value, 2) : text;
    }

    private static void several(Finding.Several several, Units units, List<String> sentences) {
        Judged judged = several.aim().judged();
        sentences.add("With these " + several.changes().size() + " changes the " + JudgedWords.figure(judged)
                + " can be had from " + figures(judged, several.reach(), units) + ".");
        List<String> moves = new ArrayList<>();
        for (int i = 0; i < several.changes().size(); i++) {
            Adjustable now = several.changes().get(i).adjustable();
            moves.add(ChangeWords.name(now.path()) + " from " + value(now, now.si(), units) + " to "
                    + value(now, several.values().get(i), units));
        }
        String achieved = figure(judged, several.achieved(), units);
        String list = String.join("; ", moves);
        if (several.unrounded().isPresent()) {
            boolean asAsked = achieved.equals(figure(judged, several.aim().value(), units));
            sentences.add((several.met() ? "Of the steps that can be built, take " : "The nearest steps are ") + list
                    + ". They give " + achieved
                    + (asAsked ? ", as asked." : ", where " + demand(several.aim(), units) + " was asked."));
        } else if (several.met()) {
            sentences.add("The smallest changes that do, each measured by its range: " + list + ". They give "
                    + achieved + ", as asked.");
        } else {
            sentences.add("Nothing within the ranges gives " + demand(several.aim(), units)
                    + (several.kept().isEmpty() ? "" : " and keeps what is to be kept") + "; the nearest is: " + list
                    + ", with " + achieved + ".");
        }
        kept(several.kept(), units, sentences);
        notes(several.notes(), several.met(), sentences);
        tailFirst(judged, several.achieved(), units).ifPresent(sentences::add);
    }

    /** Said where what is found lets the tail go first. */
    private static Optional<String> tailFirst(Judged judged, double achieved, Units units) {
        Criterion criterion = judged.criterion();
        boolean below = Numbers.fixed(units.of(criterion).fromSi(achieved), criterion.digits())
                .startsWith(Numbers.MINUS);
        return criterion.equals(Criterion.LIMIT_BALANCE) && below
                ? Optional.of("Mind: with " + figure(judged, achieved, units)
                        + " the rear has less in hand at the limit, and the tail goes first; on the road stay above"
                        + " zero.")
                : Optional.empty();
    }

    private static void kept(List<Finding.Kept> kept, Units units, List<String> sentences) {
        for (Finding.Kept one : kept) {
            String text = AimText.write(one.keep(), units);
            String now = one.value().isPresent()
                    ? figure(one.keep().judged(), one.value().getAsDouble(), units)
                    : "no value at all";
            sentences.add((one.ok() ? "Kept: " : "Not kept: ") + text + "; it is " + now + ".");
        }
    }

    private static void notes(List<Finding.Note> notes, boolean met, List<String> sentences) {
        for (Finding.Note note : notes) {
            sentences.add(
                    switch (note) {
                        case KINK ->
                            "Mind: the figure bends right there, where a stop is just touched or a wheel just lifts;"
                                    + " a little to either side the car answers differently.";
                        case END_OF_RANGE ->
                            "Mind: that is at the end of the range; "
                                    + (met
                                            ? "there is nothing left to adjust."
                                            : "where more of it can be built, widen the range and look further.");
                        case FLAT ->
                            "Mind: over the whole range the figure moves by less than anyone notices, so it matters"
                                    + " little what is chosen.";
                    });
        }
    }

    private static String demand(Aim aim, Units units) {
        return AimText.demand(aim, units)
                + (aim.judged().criterion().hasPace() ? " " + JudgedWords.pace(aim.judged()) : "");
    }

    private static String figure(Judged judged, double si, Units units) {
        return units.show(si, judged.criterion());
    }

    private static String figures(Judged judged, Finding.Reach reach, Units units) {
        Criterion criterion = judged.criterion();
        Unit unit = units.of(criterion);
        return Numbers.fixed(unit.fromSi(reach.lowest()), criterion.digits()) + " to "
                + figure(judged, reach.highest(), units);
    }
}
