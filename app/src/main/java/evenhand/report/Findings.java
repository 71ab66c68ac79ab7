package evenhand.report;

import evenhand.answers.Judged;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Catalogue.Difference;
import evenhand.catalogue.Entries;
import evenhand.choice.Change;
import evenhand.choice.Comparison;
import evenhand.doubt.Doubt;
import evenhand.doubt.Spread;
import evenhand.doubt.Tolerance;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.words.loads.LoadedSetup;
import evenhand.words.loads.LoadedSetup.Loaded;
import evenhand.words.loads.LoadsAsked;
import evenhand.words.lowering.CostWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** All answers that papers are written from, each worked out when a paper first asks for it. */
public final class Findings {
    /** How far down the chosen set-up is tried, m. */
    private static final double LOWEST = Unit.of("mm").toSi(80);

    /** From which the cars of the doubt are drawn: the same every time. */
    static final long SEED = 1;

    private final Question question;
    private final Candidate base;
    private final Candidate chosen;
    private final Once<List<Candidate>> candidates = new Once<>(this::askAll);
    private final Once<Optional<Comparison>> comparison = new Once<>(this::compared);
    private final Once<Optional<Doubt.Answer>> doubt;
    private final Once<Optional<LoweringStudy>> lower = new Once<>(this::lowered);
    private final Once<Optional<BrakedAndDriven>> ahead = new Once<>(this::askAhead);
    private final Once<List<Loaded>> loaded = new Once<>(this::askLoads);
    private final Once<List<CostWords.Cost>> costs = new Once<>(this::askCosts);
    private final Once<Optional<evenhand.roadtest.Findings>> road = new Once<>(this::askRoad);
    private final Once<Optional<Complained>> complained = new Once<>(this::askComplaint);

    private final Once<Optional<OwnerFacts>> owned = new Once<>(this::askOwned);

    private Findings(Question question, Progress progress) {
        this.question = question;
        base = candidate(question.base());
        Setup last = question.setups().get(question.setups().size() - 1);
        chosen = last.equals(question.base()) ? base : candidate(last);
        doubt = new Once<>(() -> chosen.turns()
                .map(turn -> doubt(question, bothAnswer() ? List.of(base, chosen) : List.of(chosen), progress)));
    }

    /** @param progress of what takes longest, the doubt */
    public static Findings of(Question question, Progress progress) {
        return new Findings(question, progress);
    }

    private Candidate candidate(Setup setup) {
        return Candidate.of(setup, question.scenario().setups().indexOf(setup), question.trial());
    }

    private List<Candidate> askAll() {
        return Stream.concat(Stream.of(question.base()), question.setups().stream())
                .distinct()
                .map(setup ->
                        setup.equals(base.setup()) ? base : setup.equals(chosen.setup()) ? chosen : candidate(setup))
                .toList();
    }

    /** Whether there are two, and both have an answer. */
    private boolean bothAnswer() {
        return compares() && base.turns().isPresent() && chosen.turns().isPresent();
    }

    private Optional<Comparison> compared() {
        return bothAnswer()
                ? Optional.of(
                        Comparison.of(base.setup().entries(), chosen.setup().entries(), question.trial()))
                : Optional.empty();
    }

    private Optional<LoweringStudy> lowered() {
        return chosen.turns()
                .map(turn -> LoweringStudy.of(
                        chosen.setup().car(),
                        0,
                        LOWEST,
                        LOWEST,
                        OptionalDouble.empty(),
                        question.judging(),
                        done -> {}));
    }

    private Optional<BrakedAndDriven> askAhead() {
        return BrakedAndDriven.of(question, base.setup(), chosen.setup());
    }

    private List<Loaded> askLoads() {
        return loaded(question, base.setup(), chosen.setup());
    }

    private List<CostWords.Cost> askCosts() {
        return bothAnswer() || (!compares() && chosen.turns().isPresent())
                ? costs(base.setup(), chosen.setup(), question.judging())
                : List.of();
    }

    private Optional<evenhand.roadtest.Findings> askRoad() {
        return RoadTestPages.ask(question, chosen.setup());
    }

    private Optional<OwnerFacts> askOwned() {
        return OwnerFacts.of(this);
    }

    private Optional<Complained> askComplaint() {
        return Complained.of(question, chosen.setup(), compares() ? Optional.of(base.setup()) : Optional.empty());
    }

    public Question question() {
        return question;
    }

    /** The set-up before. */
    public Candidate base() {
        return base;
    }

    /** The one that is handed over; the base itself where it is the only one. */
    public Candidate chosen() {
        return chosen;
    }

    /** All, the base first. */
    public List<Candidate> candidates() {
        return candidates.get();
    }

    /** Of chosen and base, each difference shared out to the changes; none where one of them has no answer. */
    public Optional<Comparison> comparison() {
        return comparison.get();
    }

    /** Of base and chosen, or of the chosen alone; none where that one has no answer. */
    public Optional<Doubt.Answer> doubt() {
        return doubt.get();
    }

    /** How much lower the chosen one could stand; none where it has no answer. */
    Optional<LoweringStudy> lower() {
        return lower.get();
    }

    /** How base and chosen brake and pull away; none where nothing is known of the brakes. */
    Optional<BrakedAndDriven> ahead() {
        return ahead.get();
    }

    /** What the parts of base and chosen carry, the chosen last; none where the file has no mounts. */
    List<Loaded> loaded() {
        return loaded.get();
    }

    /** What a low car must have, of base and chosen; none where one of them has no answer. */
    List<CostWords.Cost> costs() {
        return costs.get();
    }

    /** What road tests say of the file; none where it has none with a reading. */
    Optional<evenhand.roadtest.Findings> road() {
        return road.get();
    }

    /** What the owner is told in numbers; none where the set-up that is handed over has no answer. */
    Optional<OwnerFacts> owned() {
        return owned.get();
    }

    /** What is complained of, and what is found against it. */
    Optional<Complained> complained() {
        return complained.get();
    }

    private static List<Loaded> loaded(Question question, Setup base, Setup chosen) {
        LoadsAsked asked = LoadsAsked.all(question.scenario());
        List<Loaded> loaded = new ArrayList<>();
        for (Setup setup : base.equals(chosen) ? List.of(chosen) : List.of(base, chosen)) {
            if (!setup.car().mounts().isEmpty()
                    && LoadedSetup.of(setup, question.trial().load(), asked) instanceof Loaded one) {
                loaded.add(one);
            }
        }
        boolean ofChosen =
                !loaded.isEmpty() && loaded.get(loaded.size() - 1).setup().equals(chosen);
        return ofChosen ? loaded : List.of();
    }

    /** Each change is undone by itself, so that the one that decides shows. */
    private static List<CostWords.Cost> costs(Setup base, Setup chosen, Trial trial) {
        Stance before = stance(base.car(), trial);
        Stance now = stance(chosen.car(), trial);
        Map<Change, Stance> without = new LinkedHashMap<>();
        for (Change change : Change.between(base.entries(), chosen.entries())) {
            Entries undone = chosen.entries();
            for (Difference one : change.differences()) {
                undone = Catalogue.with(undone, new Difference(one.path(), one.to(), one.from()));
            }
            Catalogue.build(undone).value().ifPresent(car -> without.put(change, stance(car, trial)));
        }
        List<CostWords.Cost> costs = new ArrayList<>();
        for (Need need : Need.ALL) {
            OptionalDouble was = need.value(before);
            OptionalDouble is = need.value(now);
            if (was.isPresent() || is.isPresent()) {
                List<CostWords.Without> each = new ArrayList<>();
                without.forEach((change, stance) -> {
                    if (stance.noAnswer().isEmpty()) {
                        each.add(new CostWords.Without(change, need.value(stance)));
                    }
                });
                costs.add(new CostWords.Cost(need, was, is, each));
            }
        }
        return costs;
    }

    private static Stance stance(Car car, Trial trial) {
        return Stance.of(car, 0, OptionalDouble.empty(), trial);
    }

    private static Doubt.Answer doubt(Question question, List<Candidate> doubted, Progress progress) {
        return Doubt.of(
                doubted.stream().map(one -> one.setup().entries()).toList(),
                new Doubt.Question(
                        question.judging(),
                        question.samples(),
                        SEED,
                        Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES,
                        Optional.empty(),
                        progress));
    }

    /** How a set-up turns the other way, as far as its limit. */
    Optional<TurnAnswer> turnedBack(Candidate candidate) {
        if (!question.bothWays()) {
            return Optional.empty();
        }
        Trial trial = question.trial();
        return Optional.of(SteadyTurn.answer(
                candidate.car(), List.of(), trial.radius(), trial.direction().other()));
    }

    /** Whether there is a set-up before the one that is handed over. */
    public boolean compares() {
        return base.index() != chosen.index();
    }

    /** Whether this set-up is the one that is handed over. */
    boolean hasChosen(Candidate candidate) {
        return candidate.index() == chosen.index();
    }

    /** Base and chosen, or the one. */
    List<Candidate> beforeAndAfter() {
        return compares() ? List.of(base, chosen) : List.of(chosen);
    }

    /** Set-ups without an answer, of those that a paper has asked. */
    List<Candidate> silent() {
        return candidates.known().orElse(beforeAndAfter()).stream()
                .filter(one -> one.turns().isEmpty())
                .toList();
    }

    /** A figure of a set-up, SI. */
    OptionalDouble figure(Candidate candidate, Judged judged) {
        return judged.si(candidate.judged(), candidate.ride());
    }

    /** What doubt leaves of a figure of the chosen set-up. */
    Optional<Spread> spread(Judged judged) {
        return doubt().stream()
                .flatMap(answer -> answer.cars().get(answer.cars().size() - 1).spreads().stream())
                .filter(spread -> spread.judged().equals(judged))
                .findFirst();
    }
}
