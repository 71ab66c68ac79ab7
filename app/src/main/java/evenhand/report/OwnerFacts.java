package evenhand.report;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.bump.BumpAnswer;
import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Catalogue.Difference;
import evenhand.catalogue.Entries;
import evenhand.choice.Change;
import evenhand.doubt.SlopeDoubt;
import evenhand.doubt.SlopeSpread;
import evenhand.doubt.Tolerance;
import evenhand.quantity.Unit;
import evenhand.scenario.Asked;
import evenhand.scenario.Judge;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.words.owner.AskedWords;
import evenhand.words.owner.Known;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The numbers that the owner reads: of the set-up before and the one that is handed over, turning the way that is the worse one
 * for the latter, each with its doubt to first order.
 */
final class OwnerFacts {
    private final Findings findings;
    private final Direction worse;
    private final List<TurnAnswer.Turns> ways;
    private final List<Candidate> cars;
    private final Trial trial;
    private final SlopeDoubt doubt;

    private OwnerFacts(Findings findings, TurnAnswer.Turns first) {
        this.findings = findings;
        ways = ways(first, findings.turnedBack(findings.chosen()));
        worse = worse(ways);
        Question question = findings.question();
        trial = question.trial().turning(worse).through(question.scenario().hardUse());
        cars = findings.beforeAndAfter().stream()
                .filter(one -> one.turns().isPresent())
                .map(one -> worse == question.trial().direction()
                        ? one
                        : Candidate.of(
                                one.setup(), one.index(), question.trial().turning(worse)))
                .toList();
        doubt = SlopeDoubt.of(
                cars.stream().map(one -> one.setup().entries()).toList(),
                trial,
                figures(),
                Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                Progress.NONE);
    }

    /** Nothing where the set-up that is handed over has no answer. */
    static Optional<OwnerFacts> of(Findings findings) {
        return findings.chosen().turns().map(turns -> new OwnerFacts(findings, turns));
    }

    private static List<TurnAnswer.Turns> ways(TurnAnswer.Turns first, Optional<TurnAnswer> back) {
        List<TurnAnswer.Turns> ways = new ArrayList<>(List.of(first));
        back.ifPresent(other -> {
            if (other instanceof TurnAnswer.Turns turns) {
                ways.add(turns);
            }
        });
        return List.copyOf(ways);
    }

    /** The way round in which the tail goes first, where it is one of them alone; else the one that holds less. */
    private static Direction worse(List<TurnAnswer.Turns> ways) {
        TurnAnswer.Turns worse = ways.get(0);
        for (TurnAnswer.Turns way : ways) {
            boolean tail = !way.limit().frontFirst() && worse.limit().frontFirst();
            boolean alike = way.limit().frontFirst() == worse.limit().frontFirst();
            if (tail
                    || (alike
                            && way.limit().lateralAcceleration() < worse.limit().lateralAcceleration())) {
                worse = way;
            }
        }
        return worse.direction();
    }

    /** All that is asked of both cars, in one go. */
    private List<Judged> figures() {
        Set<Judged> figures = new LinkedHashSet<>();
        for (double pace : trial.paces()) {
            figures.add(new Judged(Criterion.UNDERSTEER, OptionalDouble.of(pace)));
            figures.add(new Judged(Criterion.LEAN, OptionalDouble.of(pace)));
        }
        figures.add(NEAR);
        figures.add(LIMIT);
        figures.add(SHAKING);
        for (Asked asked : findings.question().scenario().asked()) {
            if (asked.judge().orElse(null) instanceof Judge.OfFigure of
                    && !of.judged().criterion().equals(Criterion.FRONT_FIRST)
                    && of.judged().criterion().loads().isEmpty()) {
                figures.add(of.judged());
            }
        }
        return List.copyOf(figures);
    }

    private static final String POTHOLE = "pothole 50 mm by 0.6 m";

    private static final double POTHOLE_SPEED = Unit.of("km/h").toSi(50);

    static final Judged NEAR = new Judged(Criterion.NEAR_UNDERSTEER, OptionalDouble.empty());
    static final Judged LIMIT = new Judged(Criterion.LIMIT, OptionalDouble.empty());
    static final Judged SHAKING = new Judged(Criterion.SEAT_COMFORT, OptionalDouble.empty());

    Findings findings() {
        return findings;
    }

    /** The way round that the figures are of. */
    Direction worse() {
        return worse;
    }

    /** Whether both ways round were asked, and are two turns. */
    boolean isTwoSided() {
        return ways.size() > 1 && !findings.chosen().car().turnsAlikeBothWays();
    }

    /** How the set-up that is handed over turns, each way that was asked. */
    List<TurnAnswer.Turns> ways() {
        return ways;
    }

    /** How the set-up before turned, each way that was asked; nothing where there is none, or it has no answer. */
    List<TurnAnswer.Turns> waysBefore() {
        return findings.compares() && findings.base().turns().isPresent()
                ? ways(findings.base().turns().get(), findings.turnedBack(findings.base()))
                : List.of();
    }

    /** The set-up that is handed over, turning the worse way. */
    Candidate now() {
        return cars.get(cars.size() - 1);
    }

    /** The one before; nothing where there is none, or it has no answer. */
    Optional<Candidate> before() {
        return cars.size() > 1 ? Optional.of(cars.get(0)) : Optional.empty();
    }

    /** The briskest pace of the trial, m/s². */
    double brisk() {
        return trial.paces().stream().mapToDouble(pace -> pace).max().orElse(Trial.BRISK);
    }

    List<Double> paces() {
        return trial.paces();
    }

    Known atBrisk(Criterion criterion) {
        return known(new Judged(criterion, OptionalDouble.of(brisk())));
    }

    /** A figure, before and now; what parts carry is known without its doubt. */
    Known known(Judged judged) {
        if (judged.criterion().loads().isPresent()) {
            List<OptionalDouble> loads = cars.stream()
                    .map(one -> judged.si(trial.ask(one.setup().car(), List.of(judged))))
                    .toList();
            OptionalDouble none = OptionalDouble.empty();
            return new Known(
                    judged, loads.size() > 1 ? loads.get(0) : none, loads.get(loads.size() - 1), none, none, none);
        }
        Optional<SlopeSpread> is = doubt.of(cars.size() - 1, judged);
        Optional<SlopeSpread> was = cars.size() > 1 ? doubt.of(0, judged) : Optional.empty();
        return new Known(
                judged,
                nominal(was),
                nominal(is),
                width(was),
                width(is),
                cars.size() > 1 ? width(doubt.difference(1, judged)) : OptionalDouble.empty());
    }

    private static OptionalDouble nominal(Optional<SlopeSpread> spread) {
        return spread.isPresent() ? OptionalDouble.of(spread.get().nominal()) : OptionalDouble.empty();
    }

    /** With what straight lines miss; none where some errors leave no such figure. */
    private static OptionalDouble width(Optional<SlopeSpread> spread) {
        return spread.isPresent()
                        && spread.get().rest().isPresent()
                        && spread.get().untold().isEmpty()
                ? OptionalDouble.of(
                        Math.hypot(spread.get().halfWidth(), spread.get().rest().getAsDouble()))
                : OptionalDouble.empty();
    }

    /**
     * A bump in which metal meets metal.
     *
     * @param before none where there is no set-up before
     */
    record Blow(Judge.Over judge, Optional<BumpAnswer.Straight> before, BumpAnswer.Straight now) {
        /** Whether it did not before. */
        boolean isNew() {
            return before.isPresent() && !AskedWords.metalMeets(before.get());
        }
    }

    /** The bumps that were asked for in which metal meets; a pothole of a town's road where none was. */
    List<Blow> blows() {
        List<Judge.Over> asked = findings.question().scenario().asked().stream()
                .flatMap(one -> one.judge().stream())
                .flatMap(judge -> judge instanceof Judge.Over over ? Stream.of(over) : Stream.empty())
                .toList();
        List<Blow> blows = new ArrayList<>();
        for (Judge.Over over : asked.isEmpty() ? List.of(new Judge.Over(POTHOLE, POTHOLE_SPEED)) : asked) {
            over.of(now().car())
                    .filter(AskedWords::metalMeets)
                    .ifPresent(metal -> blows.add(new Blow(over, before().flatMap(one -> over.of(one.car())), metal)));
        }
        return blows;
    }

    /** Whose errors a figure of the set-up that is handed over owes its doubt to, the largest first. */
    List<SlopeSpread.Cause> causes(Judged judged) {
        return doubt.of(cars.size() - 1, judged).map(SlopeSpread::causes).orElse(List.of());
    }

    /**
     * A part of the car that was changed, and what the car would be without that.
     *
     * @param part path of the part
     * @param changes of its values
     * @param without what the set-up that is handed over has less or more for it, SI, by figure: as it is, less without it
     */
    record PartChanged(String part, List<Change> changes, Map<Judged, Double> without) {
        PartChanged {
            changes = List.copyOf(changes);
            without = Map.copyOf(without);
        }
    }

    /** What was changed, part by part; values that make a car only together stay together. */
    List<PartChanged> changed() {
        if (!findings.compares()) {
            return List.of();
        }
        Entries base = findings.base().setup().entries();
        Entries chosen = findings.chosen().setup().entries();
        Map<String, List<Change>> parts = new LinkedHashMap<>();
        for (Change change : Change.between(base, chosen)) {
            parts.computeIfAbsent(part(change.path()), part -> new ArrayList<>())
                    .add(change);
        }
        List<PartChanged> changed = new ArrayList<>();
        parts.forEach((part, changes) -> changed.add(new PartChanged(part, changes, without(chosen, changes))));
        return changed;
    }

    /** "rear.bumpStop" of "rear.bumpStop.gap"; two names deep, for that is what one takes into one's hand. */
    private static String part(String path) {
        if (path.contains(",")) {
            return path;
        }
        List<String> names = Stream.of(path.split("\\.", -1)).toList();
        int deep = names.size() > 2 && names.get(1).equals("links") ? 3 : 2;
        return names.size() <= deep ? path : String.join(".", names.subList(0, deep));
    }

    private Map<Judged, Double> without(Entries chosen, List<Change> changes) {
        Entries undone = chosen;
        for (Change change : changes) {
            for (Difference one : change.differences()) {
                undone = Catalogue.with(undone, new Difference(one.path(), one.to(), one.from()));
            }
        }
        Optional<Car> car = Catalogue.build(undone).value();
        Map<Judged, Double> moved = new LinkedHashMap<>();
        if (car.isPresent()) {
            List<Judged> figures = List.of(
                    new Judged(Criterion.LEAN, OptionalDouble.of(brisk())),
                    new Judged(Criterion.UNDERSTEER, OptionalDouble.of(brisk())),
                    NEAR,
                    LIMIT,
                    SHAKING);
            Answers answers = trial.ask(car.get(), figures);
            for (Judged judged : figures) {
                OptionalDouble is = known(judged).now();
                OptionalDouble would = judged.si(answers);
                if (is.isPresent() && would.isPresent()) {
                    moved.put(judged, is.getAsDouble() - would.getAsDouble());
                }
            }
        }
        return moved;
    }
}
