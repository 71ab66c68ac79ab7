package evenhand.words.effects;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.car.Car;
import evenhand.car.Drive;
import evenhand.turn.PaceAnswer;
import evenhand.turn.PacesAnswer;
import evenhand.words.JudgedWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What is said where the sums do not show what a driver complains of: that, and what to look at instead. */
final class ComplaintWords {
    private final Complaint complaint;
    private final Car car;
    private final Answers before;
    private final Units units;

    ComplaintWords(Complaint complaint, Car car, Answers before, Units units) {
        this.complaint = complaint;
        this.car = car;
        this.before = before;
        this.units = units;
    }

    List<String> notShown() {
        List<String> sentences = new ArrayList<>();
        sentences.add("By the sums it does not " + verb() + ": " + figures() + ".");
        if (complaint.kind() == Complaint.Kind.PUSHES || complaint.kind() == Complaint.Kind.SLIDES) {
            String elsewhere = elsewhere();
            if (!elsewhere.isEmpty()) {
                sentences.add("It does " + elsewhere + ".");
            }
        }
        sentences.add("Look instead at " + instead() + ".");
        return sentences;
    }

    private String verb() {
        return switch (complaint.kind()) {
            case PUSHES -> "push " + JudgedWords.pace(complaint.judged());
            case SLIDES -> "slide " + JudgedWords.pace(complaint.judged());
            case LEANS -> "lean much";
            case SPINS -> "spin the inside wheel";
            case RIDES_HARD -> "ride hard";
            case WALLOWS -> "wallow";
        };
    }

    private String figures() {
        double worst = complaint.wish().worstValue(before).orElseThrow();
        return switch (complaint.kind()) {
            case PUSHES, SLIDES -> balance(worst);
            case LEANS ->
                figure(worst, complaint.judged().criterion()) + " at "
                        + Units.pace(complaint.judged().pace().orElseThrow())
                        + ", as little as a very firm road car";
            case SPINS ->
                car.drive().differential() instanceof Drive.Differential.Locked
                        ? "its differential is locked, so that neither driven wheel turns faster than the other"
                        : "at " + Units.pace(complaint.judged().pace().orElseThrow()) + " it still carries "
                                + figure(worst, complaint.judged().criterion()) + ", "
                                + Numbers.fixed(100 * worst / Complaint.restLoad(car), 0) + " % of its load at rest";
            case RIDES_HARD ->
                complaint.judged().criterion().name() + " "
                        + figure(worst, complaint.judged().criterion());
            case WALLOWS -> "damping " + bothEnds(Criterion.FRONT_DAMPING, Criterion.REAR_DAMPING);
        };
    }

    private String balance(double worst) {
        Criterion criterion = complaint.judged().criterion();
        return (worst < 0 ? "it oversteers by " : "it understeers by ")
                + figure(Math.abs(worst), criterion)
                + (complaint.kind() == Complaint.Kind.PUSHES && worst > 0 ? ", which is neutral" : "");
    }

    private String figure(double si, Criterion criterion) {
        return units.show(si, criterion);
    }

    /** "0.41 in front, 0.56 behind". */
    private String bothEnds(Criterion front, Criterion rear) {
        List<String> ends = new ArrayList<>();
        of(front).ifPresent(value -> ends.add(figure(value, front) + " in front"));
        of(rear).ifPresent(value -> ends.add(figure(value, rear) + " behind"));
        return String.join(", ", ends);
    }

    private OptionalDouble of(Criterion criterion) {
        return new Judged(criterion, OptionalDouble.empty()).si(before);
    }

    /** Where else it does what it does not where it is said to: "at 0.5 g: it understeers by 4.38 deg/g". */
    private String elsewhere() {
        List<String> places = new ArrayList<>();
        boolean slides = complaint.kind() == Complaint.Kind.SLIDES;
        for (Judged one : Judged.all(paces())) {
            boolean balance = one.criterion().equals(Criterion.UNDERSTEER)
                    || one.criterion().equals(Criterion.NEAR_UNDERSTEER);
            if (balance && !one.equals(complaint.judged())) {
                List<Double> all = one.everywhere(before);
                double value = all.stream()
                        .mapToDouble(each -> slides ? each : -each)
                        .min()
                        .orElse(0);
                if (value < -Complaint.NEUTRAL) {
                    places.add(JudgedWords.pace(one) + ": it " + (slides ? "oversteers" : "understeers") + " by "
                            + figure(-value, one.criterion()));
                }
            }
        }
        return String.join("; ", places);
    }

    private List<Double> paces() {
        return before.bends().stream()
                .flatMap(bend -> bend.turn() instanceof PacesAnswer.Paces turn
                        ? turn.paces().stream().map(PaceAnswer::lateralAcceleration)
                        : Stream.empty())
                .distinct()
                .toList();
    }

    private String instead() {
        return switch (complaint.kind()) {
            case PUSHES ->
                "the pressures and the age of the front tyres, at front toe and camber, and for a joint that binds; and"
                        + " ask at which pace he means, on the power or off it";
            case SLIDES ->
                "the pressures and the age of the rear tyres, for play in what holds the rear axle and for a rear rubber"
                        + " that is touched; and ask whether he lifts off in the bend, which these sums do not know";
            case LEANS ->
                "how quickly it leans, which is the dampers' work and not these sums'; for a drop link or a bush of a bar"
                        + " that has come loose; and at the height of the centre of gravity, if it was guessed";
            case SPINS ->
                "a worn differential, the pressures of the driven tyres, and how much power is put down in a tight bend:"
                        + " try `balance` with its radius";
            case RIDES_HARD ->
                "rubbers that are touched on a rough road (`lower` tells the travel that is left), tyre pressures, bushes"
                        + " that bind, and sharp edges: try `bump --over \"kerb 30 mm\"`";
            case WALLOWS -> "dampers that no longer give the forces in the file, and worn bushes" + pitching();
        };
    }

    /** A rear end that is slower than the front pitches, which is felt as wallowing. */
    private String pitching() {
        OptionalDouble front = of(Criterion.FRONT_FREQUENCY);
        OptionalDouble rear = of(Criterion.REAR_FREQUENCY);
        return front.isPresent() && rear.isPresent() && rear.getAsDouble() < front.getAsDouble()
                ? "; and at the rear springs: that end is slower than the front ("
                        + bothEnds(Criterion.FRONT_FREQUENCY, Criterion.REAR_FREQUENCY)
                        + "), so it pitches over waves"
                : "";
    }
}
