package evenhand.words.find;

import static java.util.stream.Collectors.joining;

import evenhand.answers.Aim;
import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.choice.Finding;
import evenhand.turn.PacesAnswer;
import evenhand.words.AimText;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Units;
import evenhand.words.balance.LimitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a search has found, both ways round and on every circle: which bend decides, and what nobody should overlook. Which end
 * goes first is said by the limit's first axle.
 */
final class AllRoundWords {
    private final Finding.Found found;
    private final Answers answers;
    private final Units units;

    AllRoundWords(Finding.Found found, Units units) {
        this.found = found;
        this.answers = found.allRound().answers();
        this.units = units;
    }

    private boolean severalCircles() {
        return answers.bends().stream()
                        .mapToDouble(Answers.Bend::radius)
                        .distinct()
                        .count()
                > 1;
    }

    private boolean bothWays() {
        return answers.bends().stream().map(Answers.Bend::direction).distinct().count() > 1;
    }

    /** Whether a figure may be another one in another bend. */
    private boolean differs(Criterion criterion) {
        return !criterion.knowsNoTurn()
                && (severalCircles() || (bothWays() && !found.allRound().alike()));
    }

    /** Where it holds: "both ways", "turning left", "both ways on every circle". */
    String everywhere() {
        String ways = bothWays() ? "both ways" : turning(answers.bends().get(0));
        return ways + (severalCircles() ? " on every circle" : "");
    }

    private static String turning(Answers.Bend bend) {
        return "turning " + bend.direction().key();
    }

    /** "turning left", "turning left on the 40 m circle". */
    private String in(Answers.Bend bend) {
        return turning(bend) + (severalCircles() ? " on the " + units.radius(bend.radius()) + " circle" : "");
    }

    /** Which figure decides an aim: " on the mean of both ways", " the worse way"; nothing where there is but one. */
    String deciding(Aim aim) {
        if (!differs(aim.judged().criterion())) {
            return "";
        }
        if (aim.sense() == Aim.Sense.EXACTLY) {
            return bothWays() && !severalCircles() ? " on the mean of both ways" : " on the mean of all bends";
        }
        return severalCircles() ? " in the worst bend" : " the worse way";
    }

    /** " (18.7 % turning left, 13.2 % turning right)"; nothing where there is but one, or all print alike. */
    String inEach(Judged judged) {
        if (!differs(judged.criterion())) {
            return "";
        }
        List<String> shown = IntStream.range(0, answers.bends().size())
                .mapToObj(bend -> figure(judged, bend))
                .toList();
        if (shown.stream().distinct().count() == 1) {
            return "";
        }
        return IntStream.range(0, shown.size())
                .mapToObj(bend -> shown.get(bend) + " " + in(answers.bends().get(bend)))
                .collect(joining(", ", " (", ")"));
    }

    private String figure(Judged judged, int bend) {
        OptionalDouble value = judged.si(answers, bend);
        return value.isPresent() ? units.show(value.getAsDouble(), judged.criterion()) : "no value";
    }

    /** What nobody should overlook, the worst first. */
    List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (!answers.frontFirst()) {
            warnings.add(notFrontFirst() + stillFrontFirst() + ".");
        }
        if (found.aim().met(found.achieved())) {
            off(found.aim(), found.aim().off(answers)).forEach(warnings::add);
        }
        return warnings;
    }

    /** Which end goes first in each bend: "Turning left the front goes first, at 0.790 g; turning right the tail ...". */
    private String notFrontFirst() {
        List<Answers.Bend> told = bothWays() && found.allRound().alike()
                ? answers.bends().stream()
                        .filter(bend ->
                                bend.direction() == answers.bends().get(0).direction())
                        .toList()
                : answers.bends();
        String text = told.stream()
                .map(bend -> (told.size() < answers.bends().size() && !severalCircles() ? "both ways" : in(bend)) + " "
                        + limit(bend))
                .collect(joining("; "));
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String limit(Answers.Bend bend) {
        return bend.turn() instanceof PacesAnswer.Paces turn ? LimitWords.brief(turn.limit()) : "it has no answer";
    }

    private String stillFrontFirst() {
        return found.allRound()
                .frontFirst()
                .map(last -> "; the last " + (last.values().size() == 1 ? "value" : "place on the way there")
                        + " at which the front still goes first " + everywhere() + " is " + changes(last) + with(last))
                .orElse("");
    }

    private String changes(Finding.FrontFirst last) {
        return IntStream.range(0, last.values().size())
                .mapToObj(i -> {
                    double value = last.values().get(i);
                    boolean below = value < found.values().get(i);
                    String shown = FindWords.valueWithin(found.spans().get(i).adjustable(), value, below, units);
                    return last.values().size() == 1
                            ? shown
                            : ChangeWords.name(found.spans().get(i).path()) + " " + shown;
                })
                .collect(joining("; "));
    }

    private String with(Finding.FrontFirst last) {
        Judged judged = found.aim().judged();
        OptionalDouble figure = found.aim().figure(last.answers());
        return found.aim().isYesOrNo() || figure.isEmpty()
                ? ""
                : ", with " + units.show(figure.getAsDouble(), judged.criterion()) + deciding(found.aim());
    }

    /** "Turning left it is 18.8 %, 2.8 % above the 16 % that was asked; turning right ..."; nothing where no bend is off. */
    private List<String> off(Aim aim, List<Answers.Bend> off) {
        if (off.isEmpty()) {
            return List.of();
        }
        List<String> each = new ArrayList<>();
        for (int i = 0; i < answers.bends().size(); i++) {
            if (off.contains(answers.bends().get(i))) {
                double by = aim.judged().si(answers, i).orElseThrow() - aim.value();
                String from = each.isEmpty() ? "the " + AimText.demand(aim, units) + " that was asked" : "it";
                each.add(in(answers.bends().get(i)) + " it is " + figure(aim.judged(), i) + ", "
                        + units.show(Math.abs(by), aim.judged().criterion()) + (by > 0 ? " above " : " below ") + from);
            }
        }
        String text = String.join("; ", each);
        return List.of(
                Character.toUpperCase(text.charAt(0)) + text.substring(1) + ": only the mean of all meets the aim.");
    }

    /** "the roll gradient at 0.5 g is 6.35 deg/g the worse way": where a thing to be kept is not asked for any more. */
    String standing(Finding.Kept one) {
        if (one.keep().isYesOrNo()) {
            return goesFirst(one);
        }
        Judged judged = one.keep().judged();
        return "the " + JudgedWords.figure(judged)
                + (one.value().isEmpty()
                        ? " has no value"
                        : " is " + units.show(one.value().getAsDouble(), judged.criterion()) + deciding(one.keep()));
    }

    private String goesFirst(Finding.Kept one) {
        return one.ok()
                ? "the front goes first " + everywhere()
                : answers.bends().stream()
                        .filter(bend -> !(bend.turn() instanceof PacesAnswer.Paces turn
                                && turn.limit().frontFirst()))
                        .map(bend -> in(bend) + " " + limit(bend))
                        .collect(joining("; "));
    }

    /** How a thing to be kept stands. */
    String kept(Finding.Kept one) {
        String text = (one.ok() ? "Kept: " : "Not kept: ") + AimText.write(one.keep(), units) + "; ";
        if (one.keep().isYesOrNo()) {
            return text + goesFirst(one) + ".";
        }
        if (one.value().isEmpty()) {
            return text + "it is no value at all.";
        }
        return text + "it is "
                + units.show(one.value().getAsDouble(), one.keep().judged().criterion())
                + deciding(one.keep())
                + (one.off().isEmpty() ? "" : inEach(one.keep().judged())) + ".";
    }
}
