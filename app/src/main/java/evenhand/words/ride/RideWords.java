package evenhand.words.ride;

import evenhand.answers.FirstStops;
import evenhand.bump.BodyOverHump;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.lowering.Need;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.ride.AxleRide;
import evenhand.ride.AxleTramp;
import evenhand.ride.DamperChoice;
import evenhand.ride.DampingAtSpeed;
import evenhand.ride.Ride;
import evenhand.ride.RoadClass;
import evenhand.ride.Standing;
import evenhand.words.EventWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * How a car rides, in plain sentences. What is judged is judged by the bands of common practice, which have no source, but
 * for comfort where the driver sits, which has ISO 2631-1.
 */
public final class RideWords {
    /** What the verdicts rest on. */
    public static final String PRACTICE = "Verdicts on frequency, damping and travel are common practice of the trade;"
            + " those on comfort are of ISO 2631-1, for the place where the driver's seat is bolted down, without what"
            + " its cushion takes up.";

    /** Rear over front frequency that makes for a flat ride. Common practice. */
    private static final double FLAT_FROM = 1.1;

    private static final double FLAT_TO = 1.2;

    /** Rebound over bump, at 0.1 m/s. Common practice. */
    private static final double MOST_REBOUND = 3;

    /** A damping ratio below it is shown as 0.00. */
    private static final double LEAST_SHOWN = 0.005;

    /** Damping in roll, over that in heave, from which inboard dampers are spoken of. */
    private static final double WORKS_INBOARD = 0.75;

    /** Travel before the rubber and before metal that a road car should have, m. Common practice. */
    private static final double LEAST_TO_STOP = Need.TO_STOP;

    private static final double LEAST_TO_METAL = Need.TO_METAL;
    private static final double LEAST_DROOP = 0.060;

    /** Room between the coils when metal meets, m. Common practice. */
    private static final double LEAST_COIL_ROOM = 0.006;

    /** A fitted spring is spoken of when it is so much longer or shorter than needed, m. */
    private static final double SPRING_FITS = 0.005;

    /** A stop touched below this is touched on any bend, m/s². */
    private static final double TOUCHED_EARLY = 0.4 * Weights.GRAVITY;

    private static final double TOUCHED_LATE = 0.7 * Weights.GRAVITY;

    /** Upper ends of the classes of body frequency, Hz, and what rides so. Common practice. */
    private record RidesLike(double front, double rear, String words) {}

    private static final List<RidesLike> CLASSES = List.of(
            new RidesLike(1.1, 1.2, "a soft old saloon"),
            new RidesLike(1.4, 1.55, "an ordinary car"),
            new RidesLike(1.7, 1.85, "a fast road car in daily use"),
            new RidesLike(2.1, 2.2, "a road car for track days"),
            new RidesLike(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, "a circuit car"));

    private final Car car;
    private final Ride ride;
    private final FirstStops stops;
    private final List<BodyOverHump.Passage> passages;
    private final String road;
    private final Units units;
    private final List<String> sentences = new ArrayList<>();

    private RideWords(
            Car car, Ride ride, FirstStops stops, List<BodyOverHump.Passage> passages, String road, Units units) {
        this.car = car;
        this.ride = ride;
        this.stops = stops;
        this.passages = passages;
        this.road = road;
        this.units = units;
    }

    /**
     * The sentences of one set-up, in the order to be read.
     *
     * @param car settled at its ride height
     * @param passages over a hump, from slow to fast
     * @param road what it is: "a class B road (a good main road)"
     */
    public static List<String> of(
            Car car, Ride ride, FirstStops stops, List<BodyOverHump.Passage> passages, String road, Units units) {
        RideWords words = new RideWords(car, ride, stops, passages, road, units);
        words.body();
        words.settings();
        words.roadAndTravel();
        return words.sentences;
    }

    /** The same without what each setting of the dampers gives, where that is a question of its own. */
    public static List<String> withoutSettings(
            Car car, Ride ride, FirstStops stops, List<BodyOverHump.Passage> passages, String road, Units units) {
        RideWords words = new RideWords(car, ride, stops, passages, road, units);
        words.body();
        words.roadAndTravel();
        return words.sentences;
    }

    private void body() {
        for (End end : End.values()) {
            sentences.addAll(warnings(ride.axle(end)));
        }
        frequencies();
        flatRide();
        damping();
    }

    private void roadAndTravel() {
        tramp();
        road();
        travel();
        stopsInTheTurn();
        springs();
    }

    /** What of it the owner of the car wants to know: how it swings, how the road feels, where travel is short. */
    public static List<String> forOwner(Car car, Ride ride, String road, Units units) {
        RideWords words = new RideWords(car, ride, FirstStops.NONE, List.of(), road, units);
        for (End end : End.values()) {
            words.sentences.addAll(warnings(ride.axle(end)));
        }
        words.frequencies();
        words.road();
        words.travel();
        return words.sentences;
    }

    /** What a road class is like. Common practice, no source. */
    public static String like(RoadClass road) {
        return switch (road) {
            case A -> "a new motorway";
            case B -> "a good main road";
            case C -> "an ordinary country road";
            case D -> "a rough back road";
            case E -> "a bad track";
            case F, G, H -> "no road for a car";
        };
    }

    /** What is out of order with an axle at rest: it stands on its stop, or its spring is loose. */
    public static List<String> warnings(AxleRide axle) {
        Standing standing = axle.standing();
        String end = EventWords.end(axle.end());
        List<String> warnings = new ArrayList<>();
        if (standing.looseAtRest()) {
            warnings.add(
                    "The " + end + " springs are loose at this ride height: the bump stops carry more than stands on"
                            + " them, so the car would stand higher; raise it, or take stiffer springs and shorter stops.");
        } else if (standing.onStop()) {
            double share =
                    standing.stopLoadAtRest().orElse(0) / (axle.undamped().sprungMass() * Weights.GRAVITY);
            warnings.add("The " + end + " stands on its bump stops at rest, which carry " + percent(share)
                    + " of it: rates and frequencies here are those of springs and stops together, for small"
                    + " movements only.");
        }
        return warnings;
    }

    private void frequencies() {
        RidesLike front = classOf(End.FRONT);
        RidesLike rear = classOf(End.REAR);
        sentences.add("The body swings at " + hertz(ride.front().bodyFrequency()) + " at the front and "
                + hertz(ride.rear().bodyFrequency()) + " at the rear, "
                + (front.equals(rear)
                        ? "as " + front.words()
                        : "as " + front.words() + " at the front and " + rear.words() + " at the rear")
                + "; the springs give " + length(ride.front().staticDeflection()) + " and "
                + length(ride.rear().staticDeflection()) + " under what stands on them.");
        double reserveFront = reserve(ride.front());
        double reserveRear = reserve(ride.rear());
        if (Double.isFinite(reserveFront) && Double.isFinite(reserveRear)) {
            sentences.add("Before the bump stops there is room for " + Numbers.fixed(reserveFront, 2)
                    + " g of extra load" + " at the front and " + Numbers.fixed(reserveRear, 2) + " g at the rear.");
        }
    }

    /** Bump travel to the stop over static deflection: extra load before the stop, g. */
    private static double reserve(AxleRide axle) {
        return Math.max(0, axle.standing().bumpTravelToStop().orElse(Double.NaN)) / axle.staticDeflection();
    }

    private RidesLike classOf(End end) {
        double frequency = ride.frequency(end);
        return CLASSES.stream()
                .filter(one -> frequency < (end == End.FRONT ? one.front() : one.rear()))
                .findFirst()
                .orElseThrow();
    }

    private void flatRide() {
        // As it is shown: a verdict must not part from its number.
        double ratio =
                Math.round(100 * ride.rear().bodyFrequency() / ride.front().bodyFrequency()) / 100.0;
        String verdict = ratio < 0.995
                ? "the rear is the slower end, so after a bump the body goes on pitching"
                : ratio < FLAT_FROM
                        ? "less than the 1.1 to 1.2 that lets the rear catch up after a bump"
                        : ratio <= FLAT_TO
                                ? "within the 1.1 to 1.2 that makes for a flat ride"
                                : "more than the 1.1 to 1.2 that makes for a flat ride: the tail is livelier than it"
                                        + " need be";
        sentences.add("Rear over front frequency is " + Numbers.fixed(ratio, 2) + ": " + verdict + ".");
        if (!passages.isEmpty()) {
            BodyOverHump.Passage slow = passages.get(0);
            BodyOverHump.Passage middle = passages.get(passages.size() / 2);
            BodyOverHump.Passage fast = passages.get(passages.size() - 1);
            sentences.add("Left to itself after a short hump at " + speed(slow.speed()) + ", " + speed(middle.speed())
                    + " and " + speed(fast.speed()) + ", the ends of the body go "
                    + ratio(slow.pitchOverBounce()) + ", " + ratio(middle.pitchOverBounce()) + " and "
                    + ratio(fast.pitchOverBounce()) + " times as far against each other as together.");
        }
    }

    private void damping() {
        for (End end : End.values()) {
            AxleRide axle = ride.axle(end);
            List<DampingAtSpeed> speeds = axle.dampingBySpeed(car);
            if (speeds.isEmpty()) {
                sentences.add("There are no damper curves at the " + EventWords.end(end)
                        + ", so nothing is said of damping, comfort and grip there.");
                continue;
            }
            DampingAtSpeed usual = speeds.get(DampingAtSpeed.SPEEDS.indexOf(AxleRide.USUAL_DAMPER_SPEED));
            StringBuilder sentence =
                    new StringBuilder("The " + EventWords.end(end) + " dampers give the body a ratio of "
                            + ratio(usual.mean()) + " at 0.1 m/s (bump " + ratio(usual.bump()) + ", rebound "
                            + ratio(usual.rebound()) + "), " + firmness(usual.mean()));
            sentence.append(reboundAgainstBump(usual));
            double inRoll = axle.damped().map(AxleRide.Damped::rollShare).orElse(1.0);
            if (inRoll < WORKS_INBOARD) {
                sentence.append("; in roll they are worth ")
                        .append(percent(inRoll))
                        .append(" of that at the wheels, as they stand inboard");
            }
            sentences.add(sentence.append('.').toString());
        }
    }

    /** What stands out between the two; nothing is times nothing, so a damper that is slack in bump has words of its own. */
    private static String reboundAgainstBump(DampingAtSpeed usual) {
        if (usual.rebound() <= 0) {
            return usual.bump() > 0 ? "; in rebound they do nothing at that speed, which is unusual" : "";
        }
        if (usual.bump() < LEAST_SHOWN) {
            return "; in bump they do next to nothing at that speed, and rebound alone pulls the car down on a rough road";
        }
        double over = usual.rebound() / usual.bump();
        double shown = Math.round(10 * over) / 10.0; // a verdict must not part from its number
        if (shown > MOST_REBOUND) {
            return "; rebound is " + Numbers.fixed(shown, 1)
                    + " times bump, and more than 3 pulls the car down on a rough road";
        }
        return over < 1 ? "; bump is the harder of the two, which is unusual" : "";
    }

    /** Bands of the mean at low speed. Common practice. */
    static String firmness(double ratio) {
        if (ratio < DamperChoice.LEAST_RATIO) {
            return "too little to hold the body on a wavy road";
        }
        if (ratio < 0.32) {
            return "as for comfort";
        }
        if (ratio < 0.52) {
            return "as for fast road";
        }
        return ratio < 0.77 ? "as for track use" : "more than a track car has";
    }

    private void settings() {
        for (End end : End.values()) {
            AxleRide axle = ride.axle(end);
            List<AxleRide.Setting> settings = axle.settings(car, ride.road(), ride.speed());
            if (!settings.isEmpty()) {
                sentences.add("Settings of the " + EventWords.end(end) + " damper: "
                        + settings.stream()
                                .map(setting -> "\"" + setting.name() + "\" "
                                        + ratio(setting.damped().modes().body().dampingRatio())
                                        + ", felt above the axle "
                                        + acceleration(setting.damped().road().weightedAcceleration())
                                        + ", tyre load varies "
                                        + finePercent(axle.loadVariation(
                                                setting.damped().road()))
                                        + (setting.set() ? " (set)" : ""))
                                .collect(Collectors.joining("; "))
                        + ".");
            }
        }
    }

    private void tramp() {
        for (End end : End.values()) {
            if (ride.axle(end).tramp().isPresent()) {
                AxleTramp tramp = ride.axle(end).tramp().get();
                OptionalDouble damping = tramp.dampingRatio();
                sentences.add("The " + EventWords.end(end) + " axle hops at "
                        + Numbers.fixed(ride.axle(end).hopFrequency(), 1) + " Hz and tramps, wheel against wheel, at "
                        + Numbers.fixed(tramp.frequency(), 1) + " Hz"
                        + (damping.isPresent() ? ", damped by " + ratio(damping.getAsDouble()) : "")
                        + (damping.orElse(1) < 0.1 ? ": little, so one wheel's bump rings on" : "") + ".");
            }
        }
    }

    private void road() {
        OptionalDouble front = ride.comfort(End.FRONT);
        OptionalDouble rear = ride.comfort(End.REAR);
        if (front.isEmpty() || rear.isEmpty()) {
            return;
        }
        double felt = ride.seatComfort().orElseThrow();
        sentences.add("On " + road + " at " + speed(ride.speed()) + " the seat's mounting shakes with "
                + acceleration(felt) + " as a body feels it, r.m.s.: " + SeatWords.felt(felt) + " by ISO 2631-1; "
                + SeatWords.onOtherRoads(ride).orElseThrow()
                + ". Above the front axle it is " + acceleration(front.getAsDouble()) + " and above the rear one "
                + acceleration(rear.getAsDouble()) + ". The load of the tyres varies by "
                + percent(ride.tyreLoadVariation(End.FRONT).orElse(0)) + " and "
                + percent(ride.tyreLoadVariation(End.REAR).orElse(0)) + " of that at rest.");
    }

    private void travel() {
        for (End end : End.values()) {
            Standing standing = ride.axle(end).standing();
            List<String> short_ = new ArrayList<>();
            little(short_, standing.bumpTravelToStop(), LEAST_TO_STOP, "before the bump stop");
            little(short_, standing.bumpTravelToMetal(), LEAST_TO_METAL, "to metal");
            little(short_, standing.droopTravel(), LEAST_DROOP, "in droop");
            if (!short_.isEmpty()) {
                sentences.add("At the " + EventWords.end(end) + " there is little travel for the road: "
                        + String.join(", ", short_) + ".");
            }
        }
    }

    private void little(List<String> found, OptionalDouble travel, double least, String where) {
        if (travel.isPresent() && travel.getAsDouble() < least) {
            found.add(length(travel.getAsDouble()) + " " + where + ", where " + length(least) + " are wanted");
        }
    }

    private void stopsInTheTurn() {
        if (stops.noTurn().isPresent()) {
            sentences.add("Where a stop is touched in a turn cannot be told: "
                    + stops.noTurn().get() + ".");
            return;
        }
        List<String> free = new ArrayList<>();
        for (End end : End.values()) {
            AxleRide axle = ride.axle(end);
            if (axle.standing().bumpTravelToStop().isEmpty() || axle.standing().onStop()) {
                continue;
            }
            OptionalDouble touched = stops.of(end);
            if (touched.isEmpty()) {
                free.add(EventWords.end(end));
            } else {
                sentences.add("In a left turn a " + EventWords.end(end) + " bump stop is reached at "
                        + Units.exactPace(touched.getAsDouble()) + pace(touched.getAsDouble()));
            }
        }
        if (!free.isEmpty()) {
            sentences.add("In a left turn the " + String.join(" and ", free)
                    + " bump stops are not reached up to the limit.");
        }
    }

    private static String pace(double touched) {
        if (touched < TOUCHED_EARLY) {
            return ", in any brisk bend: it takes part in springs and balance.";
        }
        return touched < TOUCHED_LATE ? ", in a fast bend." : ".";
    }

    private void springs() {
        for (End end : End.values()) {
            Standing standing = ride.axle(end).standing();
            String where = EventWords.end(end);
            double move = standing.perchMove().orElse(0);
            if (Math.abs(move) > SPRING_FITS) {
                sentences.add("The " + where + " springs are " + length(Math.abs(move))
                        + (move > 0 ? " longer" : " shorter")
                        + " than this ride height asks for: the perches have to go "
                        + (move > 0 ? "down" : "up") + " by that, or the car stands "
                        + (move > 0 ? "higher" : "lower") + ".");
            }
            if (standing.coilBindMargin().orElse(1) < LEAST_COIL_ROOM) {
                double left = standing.coilBindMargin().orElse(0);
                sentences.add(
                        left < 0
                                ? "The " + where + " springs bind " + length(-left) + " before metal meets."
                                : "When metal meets, the " + where + " springs have only " + length(left)
                                        + " left between their coils.");
            }
            if (standing.looseInDroop().orElse(false)) {
                sentences.add("The " + where + " springs hang loose before droop ends: they need a helper or a strap.");
            }
        }
    }

    private static String hertz(double frequency) {
        return Numbers.fixed(frequency, 2) + " Hz";
    }

    private static String ratio(double value) {
        return Numbers.fixed(value, 2);
    }

    private static String percent(double value) {
        return Numbers.fixed(Unit.of("%").fromSi(value), 0) + " %";
    }

    private static String finePercent(double value) {
        return Numbers.fixed(Unit.of("%").fromSi(value), 1) + " %";
    }

    private static String acceleration(double value) {
        return Numbers.fixed(value, 2) + " m/s²";
    }

    private String length(double value) {
        return units.show(value, Dimension.LENGTH, units == Units.METRIC ? 0 : 1);
    }

    private String speed(double value) {
        return units.show(value, Dimension.SPEED, 0);
    }
}
