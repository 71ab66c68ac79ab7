package evenhand.scenario;

import static java.util.stream.Collectors.joining;

import evenhand.answers.AheadCriteria;
import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.LinkCriteria;
import evenhand.answers.LoadCriteria;
import evenhand.catalogue.Nearest;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the text of an aim means: "understeer 0.8 deg/g at 0.5 g", "roll gradient at most 5.5 deg/g at 0.5 g". */
public final class AimReading {
    private static final String NEUTRAL = "neutral";
    private static final Pattern SENSE = Pattern.compile("^at\\s+(most|least)\\s+");
    /** A part, which side, and a number with what follows it. */
    private static final Pattern PART = Pattern.compile(
            "(\\S.*?)(?: at (most|least))? ([-+−]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?(?! at (?:most|least) )(?: ?[^\\s\\d].*)?)",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern PACE = Pattern.compile("^(.*\\S)\\s+at\\s+(\\S.*)$", Pattern.CASE_INSENSITIVE);

    private AimReading() {}

    /**
     * Reads an aim.
     *
     * @throws InvalidValue if it is none, with what is wrong and how to mend it
     */
    public static Aim read(String text) {
        String said = spelledOut(text.replaceAll("[\\s\u00a0\u202f]+", " ").strip());
        String lower = said.toLowerCase(Locale.ROOT);
        if (lower.equals(Criterion.FRONT_FIRST.name())) {
            return Aim.frontFirst();
        }
        if (lower.startsWith(Criterion.FRONT_FIRST.name() + " ")) {
            String more = said.substring(Criterion.FRONT_FIRST.name().length()).strip();
            throw invalid(
                    "\"front first\" has no number and no pace, it speaks of the limit; leave out \"" + more + "\"");
        }
        Optional<Aim> ofLoads = ofLoads(said);
        if (ofLoads.isPresent()) {
            return ofLoads.get();
        }
        Criterion criterion = figure(lower).orElseThrow(() -> unknown(lower));
        String rest = said.substring(criterion.name().length()).strip();
        Matcher side = SENSE.matcher(rest.toLowerCase(Locale.ROOT));
        Aim.Sense sense = Aim.Sense.EXACTLY;
        if (side.find()) {
            sense = side.group(1).equals("most") ? Aim.Sense.AT_MOST : Aim.Sense.AT_LEAST;
            rest = rest.substring(side.end());
        }
        Matcher paced = PACE.matcher(rest);
        Optional<String> pace = paced.matches() ? Optional.of(paced.group(2)) : Optional.empty();
        String value = pace.isPresent() ? paced.group(1) : rest;
        if (!criterion.hasPace() && pace.isPresent()) {
            throw invalid("is judged at no pace; leave out \"at " + pace.get() + "\"");
        }
        if (rest.isEmpty() || rest.toLowerCase(Locale.ROOT).startsWith("at ")) {
            throw invalid("needs a value, for example \"" + example(criterion) + "\"");
        }
        if (criterion.hasPace() && pace.isEmpty()) {
            throw invalid("needs its pace, for example \"" + example(criterion) + "\"");
        }
        double number = number(value, criterion.dimension(), example(criterion));
        OptionalDouble at = pace.isPresent() ? OptionalDouble.of(pace(pace.get(), criterion)) : OptionalDouble.empty();
        return new Aim(new Judged(criterion, at), sense, number);
    }

    /** The figure that a text in small letters begins with. */
    private static Optional<Criterion> figure(String lower) {
        return Stream.of(Criterion.ALL, LinkCriteria.ALL, AheadCriteria.ALL)
                .flatMap(List::stream)
                .filter(one -> lower.equals(one.name()) || lower.startsWith(one.name() + " "))
                .max(Comparator.comparingInt(one -> one.name().length()));
    }

    /** Whether a text begins as an aim does, be it one or not. */
    static boolean begins(String text) {
        String lower = text.replaceAll("[\\s\u00a0\u202f]+", " ").strip().toLowerCase(Locale.ROOT);
        return figure(lower).isPresent()
                || Stream.concat(
                                Stream.of(NEUTRAL, Criterion.FRONT_FIRST.name()),
                                Stream.of(LoadCriteria.What.values()).map(LoadCriteria.What::words))
                        .anyMatch(word -> lower.equals(word) || lower.startsWith(word + " "));
    }

    /**
     * A figure by itself, at its pace where it has one: "seat comfort", "understeer at 0.5 g". Nothing where more or less is said.
     *
     * @throws InvalidValue if its pace is none
     */
    static Optional<Judged> figureAlone(String text) {
        String said = text.replaceAll("[\\s\u00a0\u202f]+", " ").strip();
        String lower = said.toLowerCase(Locale.ROOT);
        if (figure(lower).isEmpty()) {
            return Optional.empty();
        }
        Criterion criterion = figure(lower).get();
        String rest = said.substring(criterion.name().length()).strip();
        if (!criterion.hasPace()) {
            return rest.isEmpty() ? Optional.of(new Judged(criterion, OptionalDouble.empty())) : Optional.empty();
        }
        if (rest.isEmpty()) {
            throw invalid("needs its pace, for example \"" + criterion.name() + " at 0.5 g\"");
        }
        if (!rest.toLowerCase(Locale.ROOT).startsWith("at ")
                || SENSE.matcher(rest.toLowerCase(Locale.ROOT)).find()) {
            return Optional.empty();
        }
        return Optional.of(new Judged(criterion, OptionalDouble.of(pace(rest.substring(3), criterion))));
    }

    private static double pace(String text, Criterion criterion) {
        double acceleration = number(text, Dimension.ACCELERATION, example(criterion));
        if (acceleration <= 0) {
            throw invalid("has a pace that is not above zero; write for example \"" + example(criterion) + "\"");
        }
        return acceleration;
    }

    /** "pressure at springTower at most 2 MPa": the part has a name of the person's own, and goes on to the number. */
    private static Optional<Aim> ofLoads(String said) {
        String lower = said.toLowerCase(Locale.ROOT);
        for (LoadCriteria.What what : LoadCriteria.What.values()) {
            if (lower.equals(what.words())) {
                throw invalid("needs a part and a value, for example \"" + example(what) + "\"");
            }
            if (lower.startsWith(what.words() + " ")) {
                Matcher rest =
                        PART.matcher(said.substring(what.words().length()).strip());
                if (!rest.matches()) {
                    throw invalid("needs a part and a value, for example \"" + example(what) + "\"");
                }
                Aim.Sense sense = rest.group(2) == null
                        ? Aim.Sense.EXACTLY
                        : rest.group(2).equalsIgnoreCase("most") ? Aim.Sense.AT_MOST : Aim.Sense.AT_LEAST;
                Criterion criterion = LoadCriteria.of(what, rest.group(1));
                return Optional.of(new Aim(
                        new Judged(criterion, OptionalDouble.empty()),
                        sense,
                        number(rest.group(3), criterion.dimension(), example(what))));
            }
        }
        return Optional.empty();
    }

    private static String example(LoadCriteria.What what) {
        return what.words()
                + switch (what) {
                    case FORCE -> " rear.upperRod at most 3000 N";
                    case PRESSURE -> " springTower at most 2 MPa";
                    case YIELD_USED -> " pivotPost at most 60 %";
                    case RATED_USED -> " linkBracket at most 50 %";
                };
    }

    /** "neutral at 0.5 g" as "understeer 0 deg/g at 0.5 g", "neutral near the limit" likewise; all else as it is. */
    private static String spelledOut(String said) {
        String lower = said.toLowerCase(Locale.ROOT);
        if (!lower.equals(NEUTRAL) && !lower.startsWith(NEUTRAL + " ")) {
            return said;
        }
        String where = said.substring(NEUTRAL.length()).strip();
        if (where.equalsIgnoreCase("near the limit")) {
            return Criterion.NEAR_UNDERSTEER.name() + " 0 deg/g";
        }
        if (!where.toLowerCase(Locale.ROOT).startsWith("at ")
                || where.toLowerCase(Locale.ROOT).endsWith(" limit")) {
            throw invalid("\"neutral\" needs its place: write \"neutral at 0.5 g\" or \"neutral near the limit\"");
        }
        return Criterion.UNDERSTEER.name() + " 0 deg/g " + where;
    }

    private static double number(String text, Dimension dimension, String example) {
        try {
            Quantity quantity = Quantity.parse(text, dimension);
            if (quantity.hasTolerance()) {
                throw invalid("takes no tolerance; write \"at most\" or \"at least\" for a bound");
            }
            return quantity.si();
        } catch (QuantityException e) {
            throw invalid(e.message("\"" + example + "\""));
        }
    }

    private static InvalidValue unknown(String said) {
        List<String> names = Stream.of(
                        Criterion.ALL.stream().map(Criterion::name),
                        Stream.of(Criterion.FRONT_FIRST.name(), NEUTRAL),
                        LinkCriteria.AT_REST.stream().map(Criterion::name),
                        AheadCriteria.ALL.stream().map(Criterion::name),
                        Stream.of(LoadCriteria.What.values()).map(what -> what.words() + " PART"))
                .flatMap(all -> all)
                .toList();
        String begin = said.split(" (at|[-−+]?[0-9.])", 2)[0];
        String nearest = Nearest.to(begin, names);
        return invalid("begins with no known figure"
                + (Nearest.isSlip(begin, nearest) ? "; did you mean \"" + nearest + "\"?" : "")
                + "; known are "
                + names.stream().map(name -> "\"" + name + "\"").collect(joining(", ")));
    }

    private static InvalidValue invalid(String remedy) {
        return new InvalidValue("aim", remedy);
    }

    /** An aim at this figure, for a message. */
    private static String example(Criterion criterion) {
        String value = switch (criterion.dimension()) {
            case UNDERSTEER_GRADIENT ->
                criterion.equals(Criterion.UNDERSTEER)
                        ? "0.8 deg/g"
                        : criterion.equals(Criterion.NEAR_UNDERSTEER) ? "3 deg/g" : "at most 5.5 deg/g";
            case ANGLE -> "-1.5 deg";
            case FORCE -> criterion.equals(AheadCriteria.PEDAL_FORCE) ? "at most 250 N" : "at least 800 N";
            case ACCELERATION -> criterion.ofRide() ? "at most 0.4 m/s^2" : "at least 0.85 g";
            case FREQUENCY -> "1.5 Hz";
            case LENGTH -> criterion.ahead().isPresent() ? "at most 30 mm" : "at most 120 mm";
            case TRAVEL_STEER -> "at most 5 deg/m";
            default ->
                criterion.unit().symbol().isEmpty() ? "0.35" : criterion.equals(Criterion.FRONT_SHARE) ? "58 %" : "5 %";
        };
        return criterion.name() + " " + value + (criterion.hasPace() ? " at 0.5 g" : "");
    }
}
