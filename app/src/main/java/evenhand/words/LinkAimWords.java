package evenhand.words;

import evenhand.answers.AheadCriteria;
import evenhand.answers.Criterion;
import evenhand.answers.LinkCriteria;
import evenhand.answers.LoadCriteria;
import evenhand.car.Car;
import evenhand.linkage.LinkPlaces.Where;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a car has no such figure of its links, its brakes, its engine or its parts. */
public final class LinkAimWords {
    private LinkAimWords() {}

    /** What a car lacks for a figure, with the remedy, as a clause; nothing where it has it, or where nothing is needed for it. */
    public static Optional<String> missing(Criterion criterion, Car car) {
        Optional<String> ahead = AheadCriteria.needs(criterion, car);
        if (ahead.isPresent()) {
            return ahead.map(needs ->
                    "this car has no such figure: it needs " + needs + ", as in scenarios/harbour-saloon.json");
        }
        Optional<String> loads = LoadCriteria.lacks(criterion, car);
        if (loads.isPresent()) {
            return loads.map(lacks -> "this car has no such figure: " + lacks);
        }
        return LinkCriteria.isMissing(criterion, car)
                ? criterion.links().map(reading -> {
                    String axles = reading.axles().stream()
                            .map(end -> "car." + end.key())
                            .collect(Collectors.joining(" or "));
                    return "this car has no such figure: it needs " + reading.needs() + ", by points in " + axles
                            + ", as in scenarios/sluice-tourer.json";
                })
                : Optional.empty();
    }

    /** That the links do not reach the end of the travel, wherever a range is searched. */
    public static String outOfReach(Criterion criterion, Car car, String range) {
        Where where = criterion.links().map(Criterion.Reading.OfLinks::where).orElse(Where.REST);
        String links = "the "
                + LinkCriteria.axle(criterion, car).map(end -> end.key() + " ").orElse("") + "links";
        String shown = "; \"evenhand travel\" shows how far they go, and ";
        return switch (where) {
            case REST -> "nowhere in " + range + " have " + links + " such a figure";
            case BUMP ->
                "nowhere in " + range + " do " + links + " reach the end of bump" + shown
                        + "a smaller gap of metalStop or bumpStop asks for less";
            case DROOP ->
                "nowhere in " + range + " do " + links + " reach the end of droop" + shown
                        + "less travel of droopStop asks for less";
        };
    }
}
