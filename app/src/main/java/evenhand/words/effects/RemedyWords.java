package evenhand.words.effects;

import evenhand.advice.Advice;
import evenhand.advice.Refused;
import evenhand.advice.Remedy;
import evenhand.answers.Answers;
import evenhand.answers.Judged;
import evenhand.answers.Ways;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.catalogue.Slot;
import evenhand.choice.Effect;
import evenhand.lowering.Need;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.Standing;
import evenhand.words.BothWays;
import evenhand.words.ChangeWords;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.lowering.LowestWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What helps against a complaint, what comes with it, and what is not advised and why. */
public final class RemedyWords {
    /** The rule of the order, in a sentence. */
    public static final String RULE =
            "Best first: the gain, divided by what it makes worse; rebuilding counts half, an old part"
                    + " that can go in again 0.8, what cannot be undone 0.6.";

    /** From where a driver feels a gain, in a sentence. */
    public static final String FELT =
            "Too small to feel by itself is a gain of less than a tenth of what there is, and of"
                    + " understeer one below 0.3 deg/g (common practice): two such steps together may be felt.";

    private static final int MOST_REFUSED = 3;

    private final Complaint complaint;
    private final Ways ways;
    private final boolean alike;
    private final Units units;

    /**
     * @param ways that were asked
     * @param alike whether both ways are one and its mirror image
     */
    public RemedyWords(Complaint complaint, Ways ways, boolean alike, Units units) {
        this.complaint = complaint;
        this.ways = ways;
        this.alike = alike;
        this.units = units;
    }

    /** All that is said of a car. */
    public List<String> help(Car car, Answers before, Advice advice) {
        if (!complaint.shown()) {
            return new ComplaintWords(complaint, car, before, units).notShown();
        }
        List<String> sentences = new ArrayList<>();
        if (advice.remedies().isEmpty()) {
            sentences.add("No single usual step "
                    + (complaint.up() ? "raises" : "lowers") + " the " + figure() + " noticeably"
                    + (advice.refused().isEmpty() ? "." : " without harm."));
            uneven(before).ifPresent(sentences::add);
        } else {
            Remedy best = advice.remedies().get(0);
            sentences.add(change(best) + moves(best));
            List<String> others = EffectWords.sideEffects(best.whereWorst(), complaint.judged(), units);
            sentences.add(
                    others.isEmpty()
                            ? "Nothing else moves noticeably with it."
                            : "It also moves " + String.join("; ", others) + ".");
            if (best.tooSmall()) {
                sentences.add("By itself that is too small a gain to be felt.");
            }
            earlier(best).ifPresent(sentences::add);
            lessLow(best).ifPresent(sentences::add);
            sentences.add(work(best.step()));
            past(best).ifPresent(sentences::add);
        }
        refused(advice).ifPresent(sentences::add);
        if (complaint.kind() == Complaint.Kind.RIDES_HARD) {
            onRubbers(car).ifPresent(said -> sentences.add(0, said));
        }
        return sentences;
    }

    /** Said where a rough road brings the car onto its rubbers: no spring is as hard. */
    private Optional<String> onRubbers(Car car) {
        Car standing = car.settled();
        List<String> ends = new ArrayList<>();
        for (End end : End.values()) {
            OptionalDouble left = Standing.of(standing, end).bumpTravelToStop();
            if (left.isPresent() && left.getAsDouble() < Need.TO_STOP) {
                ends.add(LowestWords.length(Math.max(0, left.getAsDouble()), units) + " at the " + end.key());
            }
        }
        return ends.isEmpty()
                ? Optional.empty()
                : Optional.of("Look first at the bump travel that is left, " + String.join(" and ", ends) + ", where "
                        + LowestWords.length(Need.TO_STOP, units)
                        + " are wanted: on a rough road it sits on its rubbers, and they are harder than any spring.");
    }

    /** Said where one way round the car pushes and the other way it slides: then no change of both helps. */
    private Optional<String> uneven(Answers before) {
        Judged judged = complaint.judged();
        if (!EffectWords.ofBalance(judged.criterion()) || before.bends().size() < 2) {
            return Optional.empty();
        }
        OptionalDouble first = judged.si(before, 0);
        OptionalDouble other = judged.si(before, 1);
        if (first.isEmpty() || other.isEmpty() || first.getAsDouble() * other.getAsDouble() >= 0) {
            return Optional.empty();
        }
        String text = BothWays.turning(ways.directions().get(0)) + " "
                + EffectWords.sums(complaint, first.getAsDouble(), units) + ", "
                + BothWays.turning(ways.directions().get(1)) + " "
                + EffectWords.sums(complaint, other.getAsDouble(), units);
        return Optional.of(Character.toUpperCase(text.charAt(0)) + text.substring(1)
                + ": make the two ways alike first, by corner weights and by what takes up the shaft's torque.");
    }

    private String figure() {
        return JudgedWords.figure(complaint.judged());
    }

    private String change(Remedy best) {
        if (best.step() instanceof Effect.ByBar) {
            return "Fit first: a " + name(best.step()) + ", where there is none, " + size(best) + ".";
        }
        return "Change first: " + name(best.step()) + (best.step() instanceof Effect.ByNumber ? " by " : " ")
                + size(best) + ".";
    }

    /** What is changed: "rear spring rate", "rear bar", "front dampers". */
    public static String name(Effect.Step step) {
        if (step instanceof Effect.ByBar bar) {
            return ChangeWords.name(bar.path().substring(0, bar.path().lastIndexOf('.')));
        }
        return ChangeWords.name(step.path()) + (step instanceof Effect.ByForces ? "s" : "");
    }

    /** The step, of a part that comes in sizes with all of them: "of 60 to 180 N·m/deg". */
    public String size(Remedy remedy) {
        String step = EffectWords.step(remedy.step(), units);
        return remedy.upTo()
                .map(largest -> {
                    Unit unit = units.of(Dimension.ROLL_STIFFNESS);
                    return "of " + Numbers.fixed(unit.fromSi(((Effect.ByBar) remedy.step()).rollStiffness()), 0)
                            + " to " + EffectWords.step(largest.step(), units).substring("of ".length());
                })
                .orElse(step);
    }

    private String moves(Remedy best) {
        Effect.Move move = move(best);
        Unit unit = units.of(move.judged().criterion());
        int digits = move.judged().criterion().digits();
        boolean apart =
                ways.isBoth() && !alike && !complaint.judged().criterion().ofRide(); // which knows no turn
        String worse =
                apart ? ", " + BothWays.turning(ways.directions().get(best.worst() % 2)) + ", the worse way," : "";
        String lightest = best.upTo().isPresent() ? " The lightest moves " : " It moves ";
        return lightest + JudgedWords.spoken(complaint.judged()) + worse + " by " + EffectWords.difference(move, units)
                + ", from " + Numbers.fixed(unit.fromSi(move.base()), digits) + " to "
                + units.show(move.base() + move.difference(), move.judged().criterion())
                + best.upTo()
                        .map(largest -> "; the heaviest by " + EffectWords.difference(move(largest), units))
                        .orElse("")
                + ".";
    }

    private Effect.Move move(Remedy remedy) {
        return remedy.whereWorst().move(complaint.judged()).orElseThrow();
    }

    /** How much work it is, and whether it can be undone. */
    static String work(Effect.Step step) {
        boolean set = step.work() == Slot.Work.SETTING;
        return switch (step.wayBack()) {
            case TURNED_BACK -> set ? "It is set, and can be set back." : "It takes rebuilding, and can be set back.";
            case OLD_PART ->
                (set ? "It takes another part" : "It takes other brackets or parts")
                        + "; "
                        + (step instanceof Effect.ByBar ? "they can come off again." : "the old one can go in again.");
            case NONE -> "It takes other links, brackets or wheels, and what is cut or welded stays so.";
        };
    }

    private Optional<String> earlier(Remedy best) {
        return best.price()
                .earlier()
                .map(one -> "The first bump stop is then touched at " + pace(one.is())
                        + (one.was().isPresent()
                                ? ", earlier than now (" + pace(one.was().getAsDouble()) + ")."
                                : "; now none is."));
    }

    private String pace(double lateralAcceleration) {
        return units.show(lateralAcceleration, Dimension.ACCELERATION, 2);
    }

    private Optional<String> lessLow(Remedy best) {
        return best.price()
                .lessLow()
                .map(one -> "It costs height: let down by " + LowestWords.length(one.lowest(), units)
                        + ", which works now, " + LowestWords.missed(one.missed(), units) + ".");
    }

    /** The same in a line: "stop touched at 0.47 g; no longer works 28 mm down; too small to feel". */
    public List<String> mind(Remedy remedy) {
        List<String> mind = new ArrayList<>();
        remedy.price()
                .earlier()
                .ifPresent(one -> mind.add("a bump stop touched at " + pace(one.is())
                        + (one.was().isPresent()
                                ? " instead of " + pace(one.was().getAsDouble())
                                : "")));
        remedy.price()
                .lessLow()
                .ifPresent(one -> mind.add("no longer works " + LowestWords.length(one.lowest(), units) + " down"));
        if (remedy.upTo().orElse(remedy).tooSmall()) {
            mind.add("too small to feel");
        }
        return mind;
    }

    private Optional<String> past(Remedy best) {
        return EffectWords.past(complaint, move(best), units);
    }

    /** What helps, in a line: "rear.spring.rate +2.8 N/mm: −0.31 deg/g; also ...". */
    public String line(Remedy remedy) {
        return line(remedy, remedy.whereWorst());
    }

    /** The same in another bend, by its effect there. */
    public String line(Remedy remedy, Effect effect) {
        int bend = remedy.effects().indexOf(effect);
        Unit unit = units.of(complaint.judged().criterion());
        int digits = complaint.judged().criterion().digits();
        String moves = effect.move(complaint.judged())
                .map(move -> remedy.upTo()
                        .flatMap(largest -> largest.effects().get(bend).move(complaint.judged()))
                        .map(most -> Numbers.signed(unit.fromSi(move.difference()), digits) + " to "
                                + EffectWords.difference(most, units))
                        .orElseGet(() -> EffectWords.difference(move, units)))
                .orElse("no figure");
        List<String> others = EffectWords.sideEffects(effect, complaint.judged(), units);
        return remedy.step().path() + " " + size(remedy) + ": " + moves
                + (others.isEmpty() ? "" : "; also " + String.join(", ", others))
                + mind(remedy).stream().map(one -> "; " + one).collect(Collectors.joining())
                + (remedy.step().work() == Slot.Work.REBUILDING ? " (rebuilding)" : "");
    }

    /** What would move it and is not advised, the largest first, and why. */
    Optional<String> refused(Advice advice) {
        if (advice.refused().isEmpty()) {
            return Optional.empty();
        }
        List<Refused> told = advice.refused().stream().limit(MOST_REFUSED).toList();
        int more = advice.refused().size() - told.size();
        return Optional.of("Not advised, though it would move the figure: "
                + told.stream()
                        .map(one -> name(one.step()) + " " + EffectWords.step(one.step(), units) + ", " + why(one))
                        .collect(Collectors.joining("; "))
                + (more > 0 ? "; and " + more + " more" : "") + ".");
    }

    /** Why a step is not advised, as a clause. */
    public String why(Refused refused) {
        return switch (refused.reason()) {
            case SLIDES ->
                slidesIn(refused)
                        .map(judged -> "the tail would slide " + JudgedWords.pace(judged))
                        .orElse("the tail would slide the other way round");
            case UNUSUAL -> "past what is usual";
            case SOFTER -> "a softer car moves more, whatever its damping ratio says";
            case UNDAMPED -> "too little damping to hold the body";
            case RIDES_HARDER -> "the other end would ride harder";
            case NEED ->
                refused.missed()
                        .map(missed -> LowestWords.missed(missed, units))
                        .orElse("a road car needs what it takes");
            case STOP ->
                refused.step().path().endsWith(".gap")
                        ? "a stop that comes nearer is the classic snap"
                        : "it works by a stop alone";
        };
    }

    private static Optional<Judged> slidesIn(Refused refused) {
        return refused.whereWorst().moves().stream()
                .filter(move -> EffectWords.ofBalance(move.judged().criterion())
                        && move.base() + move.difference() < 0
                        && move.difference() < 0)
                .map(Effect.Move::judged)
                .findFirst();
    }
}
