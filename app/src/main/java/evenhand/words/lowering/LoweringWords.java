package evenhand.words.lowering;

import evenhand.answers.HandSumFigures;
import evenhand.answers.TurnFigures;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.handsums.HandSums;
import evenhand.lowering.LoweringStudy;
import evenhand.lowering.Need;
import evenhand.lowering.Stance;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.Ride;
import evenhand.turn.Limit;
import evenhand.turn.TurnAnswer;
import evenhand.turn.TurnEvent;
import evenhand.turn.TurnRow;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.balance.BalanceWords;
import evenhand.words.balance.LimitWords;
import evenhand.words.balance.OtherWay;
import evenhand.words.ride.SeatWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What lowering does to a car, so that a customer follows: why it leans no less, what the stops do in a corner, what the
 * ride pays, and how low it can go. The sentences follow the numbers.
 */
public final class LoweringWords {
    /** So far behind the first touch of a stop the balance is looked at again, m/s². */
    private static final double BEHIND_THE_TOUCH = Unit.of("g").toSi(0.1);

    /** Understeer gradients that differ by less feel the same, deg/g. */
    private static final double SAME_UNDERSTEER = 0.15;

    /** Camber that changes by less is not spoken of, deg. */
    private static final double SAME_CAMBER = 0.2;

    /** Beyond it a tyre wears on its inner edge, deg; common practice, no source. */
    private static final double WEARS = -2;

    /** Comfort that differs by less is felt as the same, m/s². */
    private static final double SAME_COMFORT = 0.03;

    private static final Unit DEG_PER_G = Dimension.UNDERSTEER_GRADIENT.metric();

    private final LoweringStudy study;
    private final Car car;
    private final OptionalDouble reserve;
    private final Units units;
    private final List<String> sentences = new ArrayList<>();

    private LoweringWords(LoweringStudy study, Car car, OptionalDouble reserve, Units units) {
        this.study = study;
        this.car = car;
        this.reserve = reserve;
        this.units = units;
    }

    /**
     * The sentences of a study, the lowest that works last.
     *
     * @param car as it was read
     * @param reserve that springs were to keep, g
     */
    public static List<String> of(LoweringStudy study, Car car, OptionalDouble reserve, Units units) {
        LoweringWords words = new LoweringWords(study, car, reserve, units);
        words.sentences.addAll(LoweringWarnings.of(study, units));
        words.given();
        words.lever();
        words.camber();
        words.stops();
        words.springs();
        words.comfort();
        words.noAnswers();
        words.works();
        words.sentences.add(LowestWords.of(study, units));
        return words.sentences;
    }

    private String down(Stance stance) {
        return LowestWords.down(stance.lowered(), units);
    }

    private String length(double metres) {
        return LowestWords.length(metres, units);
    }

    private static String capital(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private List<Stance.Stands> standing() {
        List<Stance.Stands> standing = new ArrayList<>();
        for (Stance stance : study.rows()) {
            if (stance instanceof Stance.Stands stands) {
                standing.add(stands);
            }
        }
        return standing;
    }

    /** What the file does not say, so that nobody takes silence for room. */
    private void given() {
        List<String> missing = new ArrayList<>();
        for (End end : End.values()) {
            String its = EventWords.end(end);
            if (car.axle(end).stops().bump().isEmpty()) {
                missing.add("no " + its + " bump stop");
            }
            if (car.axle(end).stops().metal().isEmpty()) {
                missing.add("no " + its + " metal stop");
            }
        }
        if (!missing.isEmpty()) {
            sentences.add("The file has " + String.join(", ", missing)
                    + ": what is not given cannot stop it here, but it will on the road.");
        }
    }

    private void lever() {
        List<Stance.Stands> free = standing().stream()
                .filter(stands -> !stands.onStop() && stands.handSums().isPresent())
                .toList();
        if (free.size() >= 2) {
            Stance.Stands low = free.get(free.size() - 1);
            sentences.addAll(LeverWords.of(free.get(0), low, stiffened(low), units));
        }
    }

    /** The wheels' lean, down to the lowest that works or else to the last height. */
    private void camber() {
        List<Stance.Stands> standing = standing();
        if (standing.isEmpty()) {
            return;
        }
        Stance.Stands low = study.works().isPresent()
                        && study.lowest().isPresent()
                        && study.works().get() instanceof Stance.Stands works
                ? works
                : standing.get(standing.size() - 1);
        for (End end : End.values()) {
            if (standing.get(0).car().axle(end) instanceof Axle.Independent before
                    && low.car().axle(end) instanceof Axle.Independent after) {
                Unit degree = Dimension.ANGLE.metric();
                double was = degree.fromSi(before.alignment().camber());
                double is = degree.fromSi(after.alignment().camber());
                if (Math.abs(is - was) >= SAME_CAMBER) {
                    sentences.add("The static camber of its " + EventWords.end(end) + " wheels goes from "
                            + Numbers.fixed(was, 1) + " to " + Numbers.fixed(is, 1) + " deg at " + down(low)
                            + ", unless it is set back"
                            + (is < WEARS
                                    ? "; beyond " + Numbers.fixed(WEARS, 0) + " deg tyres wear on their inner edge"
                                    : "")
                            + ".");
                }
            }
        }
    }

    /** What happens when the stops carry it in a corner, at the first height at which they do so early. */
    private void stops() {
        List<Stance.Stands> touching = standing().stream()
                .filter(stands -> stands.firstTouch().isPresent())
                .toList();
        Optional<Stance.Stands> early = touching.stream()
                .filter(stands -> stands.firstStop().orElse(Double.MAX_VALUE) < Need.FIRST_STOP)
                .findFirst();
        Optional<Stance.Stands> told =
                early.isPresent() || touching.isEmpty() ? early : Optional.of(touching.get(touching.size() - 1));
        told.ifPresent(this::touch);
        Optional<Stance.Stands> on =
                standing().stream().filter(Stance.Stands::onStop).findFirst();
        if (on.isPresent()) {
            Stance.Stands stands = on.get();
            boolean front = stands.onStop(End.FRONT);
            String which = front && stands.onStop(End.REAR) ? "front and rear" : front ? "front" : "rear";
            sentences.add(capital(standsThere(stands)) + " it stands on its " + which
                    + " bump stops at rest: in every bend they are its springs.");
        } else if (touching.isEmpty()
                && standing().stream().anyMatch(stands -> stands.turns().isPresent())
                && (car.front().stops().bump().isPresent()
                        || car.rear().stops().bump().isPresent())) {
            sentences.add("At none of these heights is a bump stop touched before the limit.");
        }
    }

    private String standsThere(Stance stance) {
        return stance.lowered() == 0 ? "as it stands" : "at " + down(stance);
    }

    private void touch(Stance.Stands stands) {
        TurnEvent event = stands.firstTouch().orElseThrow();
        TurnAnswer.Turns turn = stands.turns().orElseThrow();
        double at = event.lateralAcceleration();
        End end = event.axle().orElse(End.REAR);
        TurnRow before = turn.rowsToLimit().get(0);
        TurnRow after = turn.limit().row();
        for (TurnRow row : turn.rowsToLimit()) {
            if (row.lateralAcceleration() <= at) {
                before = row;
            }
        }
        for (TurnRow row : turn.rowsToLimit()) {
            if (row.lateralAcceleration() >= at + BEHIND_THE_TOUCH
                    && row.understeerGradient().isPresent()) {
                after = row;
                break;
            }
        }
        TurnRow limit = turn.limit().row();
        StringBuilder text = new StringBuilder(capital(standsThere(stands)));
        text.append(", at ").append(Units.exactPace(at)).append(", ").append(EventWords.happening(event));
        text.append(". From there the stops carry it at the ").append(EventWords.end(end));
        text.append(" as well: the front's share of the load transfer goes from ");
        text.append(perCent(before.frontLoadTransferShare())).append(" to ");
        text.append(perCent(limit.frontLoadTransferShare())).append(" at the limit");
        OptionalDouble was = TurnFigures.UNDERSTEER_GRADIENT.si(before);
        OptionalDouble is = TurnFigures.UNDERSTEER_GRADIENT.si(after);
        if (was.isPresent() && is.isPresent()) {
            double k = DEG_PER_G.fromSi(was.getAsDouble());
            double next = DEG_PER_G.fromSi(is.getAsDouble());
            text.append(", and the understeer from ")
                    .append(Numbers.signed(k, 2))
                    .append(" deg/g before it to ");
            text.append(Numbers.signed(next, 2)).append(" deg/g at ");
            text.append(Units.exactPace(after.lateralAcceleration()));
            if (next < k - SAME_UNDERSTEER) {
                text.append(
                        next < 0
                                ? ": it feels as if the tail let go in mid-bend"
                                : ": it feels as if the nose turned in by itself in mid-bend");
            } else if (next > k + SAME_UNDERSTEER) {
                text.append(": it feels as if the nose stopped answering");
            }
        }
        sentences.add(text.append('.').toString());
        OptionalDouble back = stands.steerReversal();
        if (back.isPresent()) {
            sentences.add("From " + Units.exactPace(back.getAsDouble())
                    + " on the steering has to be let back while the speed still rises: it has come to oversteer.");
        }
        sentences.add(
                capital(standsThere(stands)) + " " + LimitWords.brief(turn.limit()) + near(stands, turn.limit()) + ".");
        otherWays(stands).forEach(other -> sentences.addAll(OtherWay.of(turn, other)));
    }

    /** How it steers near its limit there, and at the first height where that is another. */
    private String near(Stance.Stands stands, Limit limit) {
        if (limit.nearUndersteer().isEmpty()) {
            return "";
        }
        String verdict = "; near its limit it "
                + BalanceWords.verdict(limit.nearUndersteer().getAsDouble());
        if (!(study.first() instanceof Stance.Stands first) || first.equals(stands)) {
            return verdict;
        }
        OptionalDouble before =
                first.turns().map(turn -> turn.limit().nearUndersteer()).orElse(OptionalDouble.empty());
        return before.isEmpty()
                ? verdict
                : verdict + ", at " + length(first.lowered()) + " it " + BalanceWords.verdict(before.getAsDouble());
    }

    /** The other way round on the first circle, where it was asked. */
    private List<TurnAnswer> otherWays(Stance.Stands stands) {
        if (study.alike()) {
            return List.of();
        }
        Stance.Bend here = stands.bends().get(0);
        return stands.bends().stream()
                .filter(bend -> bend.radius() == here.radius() && bend.direction() != here.direction())
                .map(Stance.Bend::turn)
                .toList();
    }

    private static boolean stiffened(Stance.Stands stands, Axle had, End end) {
        return stands.springs().map(springs -> springs.stiffened(had, end)).orElse(false);
    }

    private boolean stiffened(Stance.Stands stands) {
        return stiffened(stands, car.front(), End.FRONT) || stiffened(stands, car.rear(), End.REAR);
    }

    /** What springs the reserve asks for, at the lowest that works or else at the lowest that has springs. */
    private void springs() {
        if (reserve.isEmpty()) {
            return;
        }
        List<Stance.Stands> sprung = standing().stream()
                .filter(stands -> stands.springs().isPresent())
                .toList();
        if (sprung.isEmpty()) {
            return;
        }
        Stance.Stands stands = study.works()
                .filter(lowest ->
                        lowest instanceof Stance.Stands one && one.springs().isPresent())
                .map(lowest -> (Stance.Stands) lowest)
                .orElse(sprung.get(sprung.size() - 1));
        List<String> ends = new ArrayList<>();
        for (End end : End.values()) {
            String its = EventWords.end(end);
            if (car.axle(end).stops().bump().isEmpty()) {
                ends.add("the " + its + " ones, which have no bump stop to be kept off, stay");
            } else if (stiffened(stands, car.axle(end), end)) {
                double rate = stands.springs().orElseThrow().rate(end);
                ends.add("the " + its + " ones " + units.show(rate, Dimension.STIFFNESS, 1) + " instead of "
                        + units.show(car.axle(end).spring().rate(), Dimension.STIFFNESS, 1)
                        + onSprings(stands, end));
            } else {
                ends.add("the " + its + " ones are stiff enough as they are");
            }
        }
        sentences.add("To keep " + Numbers.plain(reserve.getAsDouble(), 2) + " g in reserve above the stops "
                + standsThere(stands) + ", springs: " + String.join(", ", ends)
                + ". The dampers are still those of the set-up; stiffer springs want more damping.");
    }

    private static String onSprings(Stance.Stands stands, End end) {
        OptionalDouble frequency = stands.frequencyOnSprings(end);
        return frequency.isPresent() ? " (" + Numbers.fixed(frequency.getAsDouble(), 2) + " Hz)" : "";
    }

    private void comfort() {
        List<Stance.Stands> riding =
                standing().stream().filter(stands -> stands.rides().isPresent()).toList();
        if (riding.isEmpty()) {
            return;
        }
        Ride first = riding.get(0).rides().orElseThrow();
        if (first.seatComfort().isEmpty()) {
            sentences.add("Without damper curves at both ends there is no answer on comfort.");
            return;
        }
        List<Stance.Stands> free =
                riding.stream().filter(stands -> !stands.onStop()).toList();
        Stance.Stands low = riding.get(riding.size() - 1);
        double was = atSeat(first);
        double off =
                free.isEmpty() ? was : atSeat(free.get(free.size() - 1).rides().orElseThrow());
        double is = atSeat(low.rides().orElseThrow());
        StringBuilder text = new StringBuilder("On a class ");
        text.append(Stance.ROAD.name()).append(" road at ").append(units.show(Stance.SPEED, Dimension.SPEED, 0));
        text.append(" the seat's mounting, as a body feels it, ");
        if (Math.abs(off - was) < SAME_COMFORT) {
            text.append("stays at ").append(felt(was));
            text.append(free.isEmpty() ? "" : " as long as the car is off its stops");
        } else {
            text.append("goes from ").append(felt(was)).append(" to ").append(felt(off));
            text.append(" at ").append(down(free.get(free.size() - 1)));
        }
        if (low.onStop() && !free.isEmpty()) {
            text.append("; standing on them it has ")
                    .append(felt(is))
                    .append(" at ")
                    .append(down(low));
        }
        sentences.add(text.append('.').toString());
    }

    private static double atSeat(Ride ride) {
        return ride.seatComfort().orElse(0);
    }

    private static String felt(double acceleration) {
        return SeatWords.acceleration(acceleration) + " (" + SeatWords.felt(acceleration) + ")";
    }

    /** What it is like where it works. */
    private void works() {
        if (study.works().isEmpty() || !(study.works().get() instanceof Stance.Stands stands)) {
            return;
        }
        Optional<TurnAnswer.Turns> turn = stands.turns();
        Optional<HandSums> sums = stands.handSums();
        if (turn.isEmpty() || sums.isEmpty()) {
            return;
        }
        OptionalDouble touched = stands.firstStop();
        sentences.add(capital(standsThere(stands)) + " it leans, by the hand sums, "
                + Numbers.fixed(
                        DEG_PER_G.fromSi(
                                HandSumFigures.ROLL_GRADIENT.si(sums.get()).orElse(0)),
                        2)
                + " deg/g, "
                + (touched.isPresent()
                        ? "touches its first bump stop at " + Units.exactPace(touched.getAsDouble())
                        : "touches no bump stop")
                + ", and " + LimitWords.brief(turn.get().limit()) + ".");
    }

    private void noAnswers() {
        for (Stance stance : study.rows()) {
            if (stance.noAnswer().isPresent()) {
                sentences.add("There is no answer " + standsThere(stance)
                        + (stance.equals(study.last()) ? "" : " and perhaps below") + ": "
                        + stance.noAnswer().get() + ".");
                return;
            }
        }
    }

    private static String perCent(double ratio) {
        return Numbers.fixed(Unit.of("%").fromSi(ratio), 1) + " %";
    }
}
