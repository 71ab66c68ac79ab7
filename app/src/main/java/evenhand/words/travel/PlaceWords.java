package evenhand.words.travel;

import evenhand.answers.Figure;
import evenhand.answers.TravelFigures;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.linkage.AxleMotion;
import evenhand.linkage.AxleState;
import evenhand.linkage.AxleState.LiveFigures;
import evenhand.linkage.TravelLimit;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** An axle in one place of its travel, in words. */
public final class PlaceWords {
    private static final double HARDLY = 1e-9;

    /** Limits of both sides that are nearer than this are told as one, m or rad. */
    private static final double ONE_PLACE = 5e-4;

    private PlaceWords() {}

    /** "at rest", "at 25 mm of bump", "at 2.0 deg of roll, right side down", "with the left wheel 25 mm up", "steered 10 deg to the left". */
    public static String of(AxleMotion motion, double place, Units units) {
        if (Math.abs(place) < HARDLY) {
            return "at rest";
        }
        String size = size(motion, Math.abs(place), units);
        return switch (motion) {
            case HEAVE -> "at " + size + " of " + (place > 0 ? "bump" : "droop");
            case ROLL -> "at " + size + " of roll, " + (place > 0 ? "right" : "left") + " side down";
            case ONE_WHEEL -> "with the left wheel " + size + (place > 0 ? " up" : " down");
            case STEER -> "steered " + size + " to the " + (place > 0 ? "left" : "right");
        };
    }

    /** A place's size with its unit. */
    public static String size(AxleMotion motion, double size, Units units) {
        return motion.isAngle()
                ? Numbers.plain(Math.toDegrees(size), 2) + " deg"
                : Numbers.plain(units.of(Dimension.LENGTH).fromSi(size), units == Units.METRIC ? 1 : 2) + " "
                        + units.of(Dimension.LENGTH).symbol();
    }

    /** What the axle does there: where it rolls about, how it steers and stands. */
    public static String sentence(AxleTravel axle, AxleMotion motion, double place, AxleState there, Units units) {
        String where = of(motion, place, units);
        List<String> clauses = new ArrayList<>();
        OptionalDouble height = there.rollCentreHeight();
        clauses.add(
                height.isPresent()
                        ? "the roll centre stands " + show(TravelFigures.ROLL_CENTRE, there, units)
                                + " above the ground"
                        : "there is no roll centre, for the force lines run side by side");
        AxleState rest = axle.followed().rest();
        if (axle.linked() instanceof LinkedLiveAxle) {
            LiveFigures live = there.live().orElseThrow();
            double steer =
                    Math.toDegrees(live.axleSteer() - rest.live().orElseThrow().axleSteer());
            clauses.add(
                    Math.abs(steer) < 0.005
                            ? "the axle does not steer"
                            : "the axle has steered " + Numbers.fixed(Math.abs(steer), 2) + " deg to the "
                                    + (steer > 0 ? "left" : "right"));
            double side = live.sideShift() - rest.live().orElseThrow().sideShift();
            clauses.add(
                    TravelWords.sideways(side, units).equals(TravelWords.sideways(0, units))
                            ? TravelWords.staying(rest.live().orElseThrow().sideShift(), units)
                            : "it has gone "
                                    + TravelWords.sideways(side, units)
                                    + " to the " + (side < 0 ? "right" : "left"));
        } else {
            clauses.add(wheel("left", there.left()));
            clauses.add(wheel("right", there.right()));
        }
        String begin = where.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + where.substring(1);
        return begin + ", " + String.join(", ", clauses.subList(0, clauses.size() - 1)) + ", and "
                + clauses.get(clauses.size() - 1) + ".";
    }

    private static String wheel(String side, AxleState.WheelFigures wheel) {
        double toe = Math.toDegrees(wheel.toe());
        return "the " + side + " wheel points " + Numbers.fixed(Math.abs(toe), 2) + " deg " + (toe < 0 ? "out" : "in")
                + " with " + Numbers.signed(Math.toDegrees(wheel.camber()), 2) + " deg of camber";
    }

    private static <T> String show(Figure<T> figure, T part, Units units) {
        Unit unit = units.of(figure.dimension());
        return Numbers.fixed(unit.fromSi(figure.si(part).orElse(0)), units.digits(figure)) + " " + unit.symbol();
    }

    /** Limits that come at one place, in few words: "left damper closed", "both dampers closed". */
    public record Together(TravelLimit first, String words) {}

    /** Limits with those of both sides that come at one place put together, in their order. */
    public static List<Together> together(List<TravelLimit> limits) {
        List<Together> all = new ArrayList<>();
        List<TravelLimit> left = new ArrayList<>(limits);
        while (!left.isEmpty()) {
            TravelLimit first = left.remove(0);
            Optional<TravelLimit> other = left.stream()
                    .filter(limit -> limit.motion() == first.motion()
                            && limit.kind() == first.kind()
                            && Math.abs(limit.at() - first.at()) < ONE_PLACE
                            && limit.part().equals(otherSide(first.part())))
                    .findFirst();
            other.ifPresent(left::remove);
            String part = PartWords.of(first.part()).replaceFirst("^the ", "");
            all.add(new Together(
                    first,
                    brief(
                            first,
                            other.isEmpty() ? part : part.replaceFirst("^(left|right) ", "both ") + "s",
                            other.isEmpty())));
        }
        return all;
    }

    private static String otherSide(String part) {
        return part.endsWith("Left")
                ? part.substring(0, part.length() - "Left".length()) + "Right"
                : part.endsWith("Right") ? part.substring(0, part.length() - "Right".length()) + "Left" : "";
    }

    private static String brief(TravelLimit limit, String part, boolean single) {
        return switch (limit.kind()) {
            case CANNOT_REACH -> "end of the links' reach";
            case CRANK_OVER_CENTRE -> "bell-crank over centre";
            case DAMPER_CLOSED -> part + " closed";
            case DAMPER_OPEN -> part + " pulled out";
            case JOINT -> single ? "joint of the " + part + " at its limit" : "joints of " + part + " at their limit";
            case CLEARANCE -> "“" + limit.part() + "” too near";
        };
    }

    /** What ends a motion first, each way; that nothing does where limits are looked for and none is found. */
    public static List<String> stops(AxleTravel axle, AxleMotion motion, Units units) {
        List<String> sentences = new ArrayList<>();
        for (boolean up : new boolean[] {true, false}) {
            Optional<TravelLimit.Motion> way = motion.way(up);
            if (way.isEmpty()) {
                continue;
            }
            List<TravelLimit> limits = axle.followed().limits().stream()
                    .filter(limit -> limit.motion() == way.get())
                    .toList();
            double range = motion.furthest(axle.followed().range(), up);
            sentences.add(
                    limits.isEmpty()
                            ? "Nothing of the links is in the way of "
                                    + of(motion, up ? range : -range, units).replaceFirst("^at ", "")
                                    + "."
                            : TravelWords.limit(limits.get(0), units));
        }
        return sentences;
    }
}
