package evenhand.words.find;

import static java.util.stream.Collectors.joining;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.LinkCriteria;
import evenhand.catalogue.Adjustable;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Range;
import evenhand.choice.Finding;
import evenhand.choice.Obstacle;
import evenhand.choice.Span;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.words.AimText;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a search has found, in sentences: first what can be reached, then what does, then how sharp it is. */
public final class FindWords {
    private static final String LONGER = ".longer";
    private static final String PER_TURN = ".perTurn";
    private static final int VALUE_DIGITS = 4;
    private static final int TOLERANCE_DIGITS = 3;
    /** Eyes that differ by less stand on parallel bolts, rad. */
    private static final double PARALLEL = 1e-9;

    private static final double MILLIMETRE = 0.001;
    private static final double SIXTEENTH_INCH = 0.0254 / 16;

    private FindWords() {}

    /** What is said of it, warnings first and marked as such. */
    public static List<String> of(Finding finding, Units units) {
        List<String> sentences = new ArrayList<>(
                warnings(finding, units).stream().map(one -> "Warning: " + one).toList());
        if (finding instanceof Finding.One one) {
            one(one, units, sentences);
        } else if (finding instanceof Finding.Several several) {
            several(several, units, sentences);
        } else if (finding instanceof Finding.NoValue none) {
            sentences.add("No answer: " + none.text() + ".");
        }
        return sentences;
    }

    /** What nobody should overlook, the worst first: an end that goes the wrong way, a way round that is off. */
    public static List<String> warnings(Finding finding, Units units) {
        return finding instanceof Finding.Found found ? new AllRoundWords(found, units).warnings() : List.of();
    }

    /** The same, rounded to the side that still does: down where what does lies below. */
    static String valueWithin(Adjustable adjustable, double si, boolean below, Units units) {
        Unit unit = unit(adjustable, units);
        MathContext within = new MathContext(VALUE_DIGITS, below ? RoundingMode.FLOOR : RoundingMode.CEILING);
        double rounded = new BigDecimal(unit.fromSi(si)).round(within).doubleValue();
        return value(adjustable, unit.toSi(rounded), units);
    }

    /** A value of a change as a shop writes it: "262.4 mm". */
    public static String value(Adjustable adjustable, double si, Units units) {
        Unit unit = unit(adjustable, units);
        String symbol = unit.symbol();
        return Numbers.significant(unit.fromSi(si), VALUE_DIGITS) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /** The value that the car has now; a bar without stiffness is none. */
    public static String now(Span span, Units units) {
        return span.isOfNoBar()
                ? ChangeWords.NONE
                : value(span.adjustable(), span.adjustable().si(), units);
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

    public static Unit unit(Adjustable adjustable, Units units) {
        return adjustable.dimension() == Dimension.RATIO ? Dimension.RATIO.metric() : units.of(adjustable.dimension());
    }

    private static void one(Finding.One one, Units units, List<String> sentences) {
        AllRoundWords round = new AllRoundWords(one, units);
        Adjustable now = one.change().adjustable();
        sentences.add(oneReach(one, round, units));
        sentences.add(one.aim().isYesOrNo() ? yesFound(one, round, units) : figureFound(one, round, units));
        List<String> others = one.solutions().stream()
                .filter(solution -> solution != one.value()
                        && !(one.unrounded().isPresent()
                                && solution == one.unrounded().getAsDouble()))
                .map(solution -> value(now, solution, units))
                .toList();
        if (one.met() && !others.isEmpty()) {
            boolean exactly = one.aim().sense() == Aim.Sense.EXACTLY;
            String places = String.join(" and ", others);
            String edges = others.size() == 1
                    ? "The other edge of what meets the aim is at "
                    : "The other edges of what meets the aim are at ";
            sentences.add((exactly ? "The aim is met at " + places + " too" : edges + places)
                    + "; what is nearest to the present value is taken.");
        }
        for (Finding.Jump jump : one.jumps()) {
            boolean limit = one.aim().judged().criterion().atLimit() && jump.otherLimit();
            sentences.add("At " + value(now, jump.at(), units) + " the "
                    + JudgedWords.figure(one.aim().judged())
                    + " jumps past the aim: "
                    + (limit
                            ? "to either side of it another thing ends the turn."
                            : "something touches or lifts there at once."));
        }
        if (!one.aim().isYesOrNo()) {
            sentences.add(sharpness(one, units));
        }
        one.kept().forEach(kept -> sentences.add(round.kept(kept)));
        notes(one, units, sentences);
    }

    /** What the change can reach: "With the front spring rate between 20 N/mm and 40 N/mm, the ...". */
    private static String oneReach(Finding.One one, AllRoundWords round, Units units) {
        Span span = one.change();
        Adjustable now = span.adjustable();
        String reach = one.aim().isYesOrNo()
                ? yesReach(one, round, "that range")
                : "the " + JudgedWords.figure(one.aim().judged()) + " can be had from "
                        + figures(one.aim().judged(), one.reach(), units) + round.deciding(one.aim());
        return "With the " + ChangeWords.name(span.path()) + " between " + value(now, span.from(), units) + " and "
                + value(now, span.to(), units) + ", " + reach + "; the car has " + now(span, units) + " now.";
    }

    /** @param range "that range" */
    private static String yesReach(Finding.Found found, AllRoundWords round, String range) {
        String first = "the front goes first " + round.everywhere();
        return found.reach().lowest() > 0
                ? first + " throughout"
                : found.reach().highest() > 0
                        ? first + " in a part of " + range
                        : "nowhere in " + range + " does the front go first " + round.everywhere();
    }

    private static String yesFound(Finding.One one, AllRoundWords round, Units units) {
        Adjustable now = one.change().adjustable();
        String found = value(now, one.value(), units);
        String first = "the front goes first " + round.everywhere();
        if (!one.met()) {
            return "No value in that range lets the front go first " + round.everywhere()
                    + (one.kept().isEmpty() ? "" : " and keeps what is to be kept") + "; the nearest is " + found + ".";
        }
        if (one.value() == now.si()) {
            return "The car as it stands does: at " + found + " " + first + ", as asked.";
        }
        return one.unrounded().isPresent()
                ? "At " + value(now, one.unrounded().getAsDouble(), units)
                        + " the front comes to go first " + round.everywhere()
                        + "; of the steps that can be built take " + found + ", where it does."
                : "At " + found + " " + first + ", as asked; nearer to the present value it does not.";
    }

    private static String figureFound(Finding.One one, AllRoundWords round, Units units) {
        Adjustable now = one.change().adjustable();
        Judged judged = one.aim().judged();
        String found = value(now, one.value(), units);
        String achieved = figure(judged, one.achieved(), units) + round.deciding(one.aim()) + round.inEach(judged);
        boolean steps = one.unrounded().isPresent();
        if (steps && (one.met() || !one.solutions().isEmpty())) {
            return (one.met() ? "The aim, " : "The place nearest to the aim, ") + demand(one.aim(), units)
                    + ", is at " + value(now, one.unrounded().getAsDouble(), units)
                    + "; of the steps that can be built take " + found + ", which gives " + achieved + ".";
        }
        if (!one.met()
                && !one.jumps().isEmpty()
                && one.solutions().isEmpty()
                && one.aim().nearlyMet(one.achieved())) {
            return "The " + JudgedWords.figure(judged) + " jumps past " + demand(one.aim(), units)
                    + " without having it; beside the jump, " + found + " gives " + achieved
                    + ", which nobody tells from it.";
        }
        if (one.met()) {
            boolean asItIs = one.value() == now.si();
            return (asItIs ? "The car as it stands does: at " : "At ") + found + " it is " + achieved + ", as asked.";
        }
        return "No value in that range gives " + demand(one.aim(), units)
                + (one.aim().sense() == Aim.Sense.EXACTLY
                                && !round.deciding(one.aim()).isEmpty()
                        ? " " + round.everywhere()
                        : "")
                + (one.kept().isEmpty() ? "" : " and keeps what is to be kept") + "; "
                + (steps ? "of the steps that can be built " : "") + "the nearest is " + found + ", with " + achieved
                + ".";
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
        return "There, " + by + " more moves it by "
                + signed(unit.fromSi(one.slope() * little), units.digits(criterion)) + " " + unit.symbol() + ".";
    }

    /** With more digits than a table has, where the table would show nothing. */
    private static String signed(double value, int digits) {
        String text = Numbers.signed(value, digits);
        return text.matches("[+−]?0(\\.0*)?") ? (value > 0 ? "+" : "") + Numbers.significant(value, 2) : text;
    }

    private static void several(Finding.Several several, Units units, List<String> sentences) {
        AllRoundWords round = new AllRoundWords(several, units);
        Judged judged = several.aim().judged();
        boolean yesOrNo = several.aim().isYesOrNo();
        sentences.add("With these " + several.changes().size() + " changes "
                + (yesOrNo
                        ? yesReach(several, round, "their ranges")
                        : "the " + JudgedWords.figure(judged) + " can be had from "
                                + figures(judged, several.reach(), units) + round.deciding(several.aim()))
                + ".");
        List<String> moves = new ArrayList<>();
        for (int i = 0; i < several.changes().size(); i++) {
            Adjustable now = several.changes().get(i).adjustable();
            moves.add(ChangeWords.name(now.path()) + " from "
                    + now(several.changes().get(i), units) + " to "
                    + value(now, several.values().get(i), units));
        }
        String shown = figure(judged, several.achieved(), units);
        String achieved = shown + round.deciding(several.aim()) + round.inEach(judged);
        String list = String.join("; ", moves);
        String kept = several.kept().isEmpty() ? "" : " and keeps what is to be kept";
        if (yesOrNo) {
            String first = "the front go first " + round.everywhere();
            sentences.add(
                    several.met()
                            ? "The smallest changes found that let " + first + ": " + list + "."
                            : "Nothing within the ranges lets " + first + kept + "; the nearest is: " + list + ".");
        } else if (several.unrounded().isPresent()) {
            boolean asAsked = shown.equals(figure(judged, several.aim().value(), units));
            sentences.add((several.met() ? "Of the steps that can be built, take " : "The nearest steps are ") + list
                    + ". They give " + achieved
                    + (asAsked ? ", as asked." : ", where " + demand(several.aim(), units) + " was asked."));
        } else if (several.met()) {
            sentences.add("The smallest changes that do, each measured by its range: " + list + ". They give "
                    + achieved + ", as asked.");
        } else if (several.aim().met(several.achieved())
                && several.kept().stream().allMatch(Finding.Kept::ok)) {
            sentences.add("The smallest changes that give " + demand(several.aim(), units)
                    + round.deciding(several.aim()) + ": " + list + ". They give " + achieved + ".");
        } else {
            sentences.add("Nothing within the ranges gives " + demand(several.aim(), units) + kept
                    + "; the nearest is: " + list + ", with " + achieved + ".");
        }
        several.kept().forEach(one -> sentences.add(round.kept(one)));
        notes(several, units, sentences);
    }

    private static void notes(Finding.Found found, Units units, List<String> sentences) {
        for (Finding.Note note : found.notes()) {
            if (note == Finding.Note.FLAT && found.aim().isYesOrNo()) {
                continue; // that it is so throughout, or nowhere, is said with the reach
            }
            if (note == Finding.Note.END_OF_RANGE && noBarAtNothing(found)) {
                continue; // a bar cannot be less than none
            }
            sentences.add(
                    switch (note) {
                        case KINK ->
                            found.aim().judged().criterion().ofLinks()
                                    ? "Mind: the figure bends right there, as where a damper stands square to its bolt or"
                                            + " another joint comes to have the greatest angle."
                                    : "Mind: the figure bends right there, as where a stop is just touched, a wheel just lifts or"
                                            + " the other end comes to go first; a little to either side the car answers"
                                            + " differently.";
                        case END_OF_RANGE ->
                            "Mind: that is at the end of the range; "
                                    + (found.met()
                                            ? "there is nothing left to adjust."
                                            : "where more of it can be built, widen the range and look further.");
                        case UNUSUAL -> unusual(found, units);
                        case FLAT ->
                            found.aim().judged().criterion().ofLinks() && !found.met()
                                    ? noReach(found)
                                    : "Mind: over the whole range the figure moves by less than anyone notices, so it matters"
                                            + " little what is chosen.";
                    });
        }
    }

    /** That a change cannot do it at all, and why where that is plain. */
    private static String noReach(Finding.Found found) {
        boolean always = found.aim().judged().criterion().name().contains(LinkCriteria.EYE_DIFFERENCE.name())
                && Math.max(
                                Math.abs(found.reach().lowest()),
                                Math.abs(found.reach().highest()))
                        < PARALLEL;
        return "Mind: this change has no reach: over the whole range the figure moves by less than anyone notices; "
                + (always
                        ? "with both bolts parallel both eyes stand at the same angle always, so turn a bolt (\"bolt\","
                                + " \"tilt\")."
                        : "look for another part.");
    }

    /** "Mind: 90 N/mm is no usual rear spring rate: most cars have from 10 to 60 N/mm; see first that it can be had." */
    private static String unusual(Finding.Found found, Units units) {
        List<String> each = new ArrayList<>();
        for (int i = 0; i < found.spans().size(); i++) {
            Span span = found.spans().get(i);
            double value = found.values().get(i);
            if (span.isUnusual(value)) {
                Adjustable now = span.adjustable();
                Range usual = now.slot().usual().orElseThrow();
                each.add(value(now, value, units) + " is no usual " + ChangeWords.name(span.path())
                        + ": most cars have from " + rounded(now, usual.low(), units) + " to "
                        + rounded(now, usual.high(), units));
            }
        }
        return "Mind: " + String.join("; ", each) + "; see first that it can be had.";
    }

    /** Three digits are enough to compare with. */
    private static String rounded(Adjustable adjustable, double si, Units units) {
        Unit unit = unit(adjustable, units);
        String symbol = unit.symbol();
        return Numbers.significant(unit.fromSi(si), 3) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /** "From where it stands now the rear links torque arm is to be made longer by 3.7 turns ...": of links whose advance per turn is known. */
    public static List<String> turns(Finding finding, Entries car) {
        List<String> sentences = new ArrayList<>();
        if (finding instanceof Finding.Found found) {
            for (int i = 0; i < found.spans().size(); i++) {
                Span span = found.spans().get(i);
                double more = found.values().get(i) - span.adjustable().si();
                Optional<Quantity> perTurn = span.path().endsWith(LONGER)
                        ? Catalogue.get(
                                car, span.path().substring(0, span.path().length() - LONGER.length()) + PER_TURN)
                        : Optional.empty();
                if (perTurn.isPresent() && perTurn.get().si() > 0 && more != 0) {
                    String part = ChangeWords.name(
                            span.path().substring(0, span.path().length() - LONGER.length()));
                    sentences.add("From where it stands now the " + part + " is to be made "
                            + (more > 0 ? "longer" : "shorter") + " by "
                            + Numbers.fixed(Math.abs(more) / perTurn.get().si(), 1) + " turns of its thread.");
                }
            }
        }
        return sentences;
    }

    /** What stands in the way of an aim that is not met. */
    public static List<String> obstacles(List<Obstacle> obstacles, Units units) {
        return obstacles.stream().map(one -> obstacle(one, units)).toList();
    }

    private static String obstacle(Obstacle obstacle, Units units) {
        Finding.Found without = obstacle.without();
        String kept = obstacle.leftOut().stream()
                .map(keep -> "\"" + AimText.write(keep, units) + "\"")
                .collect(joining(" and "));
        String place = IntStream.range(0, without.spans().size())
                .mapToObj(i -> ChangeWords.name(without.spans().get(i).path()) + " "
                        + value(
                                without.spans().get(i).adjustable(),
                                without.values().get(i),
                                units))
                .collect(joining("; "));
        AllRoundWords round = new AllRoundWords(without, units);
        String best = place
                + (without.aim().isYesOrNo()
                        ? ""
                        : ", with " + figure(without.aim().judged(), without.achieved(), units)
                                + round.deciding(without.aim()));
        if (!obstacle.blocks()) {
            return "It is not what is to be kept that blocks the aim: without keeping " + kept
                    + " nothing in the range meets it either; the nearest is then " + best + ".";
        }
        String stand = obstacle.stand().stream().map(round::standing).collect(joining("; "));
        return "What blocks the aim is to keep " + kept + (obstacle.leftOut().size() > 1 ? ", together" : "")
                + ": without that it is met by " + best + ". Then " + stand + ".";
    }

    /** Whether a bar that is not fitted best stays so, and nothing else stands at an end of its range. */
    private static boolean noBarAtNothing(Finding.Found found) {
        boolean none = false;
        for (int i = 0; i < found.spans().size(); i++) {
            Span span = found.spans().get(i);
            double value = found.values().get(i);
            if (span.isOfNoBar() && value == 0) {
                none = true;
            } else if (value == span.from() || value == span.to()) {
                return false;
            }
        }
        return none;
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
        return Numbers.fixed(unit.fromSi(reach.lowest()), units.digits(criterion)) + " to "
                + figure(judged, reach.highest(), units);
    }
}
