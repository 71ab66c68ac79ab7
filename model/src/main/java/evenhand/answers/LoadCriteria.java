package evenhand.answers;

import evenhand.answers.Criterion.Reading;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.mounts.Mount;
import evenhand.car.mounts.PartEnd;
import evenhand.quantity.Unit;
import evenhand.structure.CarLoads;
import evenhand.structure.MountFigure;
import evenhand.structure.Peak;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The figures of what parts carry that a car is judged by: each the worst of all that it is put through. */
public final class LoadCriteria {
    /** What of a part. */
    public enum What {
        /** The greater force of a member's ends. */
        FORCE("force in", "N", 0, 50),
        /** Mean pressure under what spreads a mount's load. */
        PRESSURE("pressure at", "MPa", 2, 0.05),
        YIELD_USED("yield used at", "%", 0, 1),
        RATED_USED("rated load used at", "%", 0, 1);

        private final String words;
        private final String unit;
        private final int digits;
        private final double noticeable;

        What(String words, String unit, int digits, double noticeable) {
            this.words = words;
            this.unit = unit;
            this.digits = digits;
            this.noticeable = noticeable;
        }

        /** How it begins in an aim. */
        public String words() {
            return words;
        }

        private MountFigure figure() {
            return switch (this) {
                case FORCE -> MountFigure.TOTAL;
                case PRESSURE -> MountFigure.PRESSURE;
                case YIELD_USED -> MountFigure.YIELD_USED;
                case RATED_USED -> MountFigure.RATED_USED;
            };
        }
    }

    private LoadCriteria() {}

    /** @param part a member, such as {@code rear.upperRod}, for a force; else the name of a mount */
    public static Criterion of(What what, String part) {
        Unit unit = Unit.of(what.unit);
        return new Criterion(
                what.words + " " + part,
                unit,
                what.digits,
                unit.toSi(what.noticeable),
                new Reading.OfLoads(what, part));
    }

    /** What a car as read is judged by where its mounts are: all that its file says enough of. */
    static List<Judged> of(Car car) {
        List<Judged> all = new ArrayList<>();
        for (Mount mount : car.mounts()) {
            for (What what : What.values()) {
                if (what != What.FORCE && lacks(what, mount).isEmpty()) {
                    all.add(new Judged(of(what, mount.name()), OptionalDouble.empty()));
                }
            }
        }
        return all;
    }

    /** What a car as read lacks for a figure, as a clause; nothing where it has it, or where the figure is no such. */
    public static Optional<String> lacks(Criterion criterion, Car car) {
        return criterion.loads().flatMap(reading -> {
            if (reading.what() == What.FORCE) {
                List<String> parts = parts(car);
                return parts.contains(reading.part())
                        ? Optional.empty()
                        : Optional.of(
                                "it has no part \"" + reading.part() + "\"; known parts: " + String.join(", ", parts));
            }
            Optional<Mount> mount = car.mounts().stream()
                    .filter(one -> one.name().equals(reading.part()))
                    .findFirst();
            return mount.isPresent()
                    ? lacks(reading.what(), mount.get())
                    : Optional.of("car.mounts has no \"" + reading.part() + "\""
                            + (car.mounts().isEmpty()
                                    ? ""
                                    : "; it has "
                                            + String.join(
                                                    ", ",
                                                    car.mounts().stream()
                                                            .map(Mount::name)
                                                            .toList())));
        });
    }

    private static Optional<String> lacks(What what, Mount mount) {
        return switch (what) {
            case FORCE -> Optional.empty();
            case PRESSURE ->
                mount.spread().isPresent()
                        ? Optional.empty()
                        : Optional.of("nothing spreads the load of " + mount.name() + "; give its spread");
            case YIELD_USED ->
                mount.pin().filter(pin -> pin.yield().isPresent()).isPresent()
                        ? Optional.empty()
                        : Optional.of(
                                mount.name() + " has no pin of known steel; give its pin with propertyClass or yield");
            case RATED_USED ->
                mount.ratedLoad().isPresent()
                        ? Optional.empty()
                        : Optional.of(mount.name() + " has no rated load; give its ratedLoad");
        };
    }

    private static List<String> parts(Car car) {
        return Stream.of(End.values())
                .flatMap(end -> PartEnd.known(car.axle(end), end).stream())
                .map(PartEnd::part)
                .distinct()
                .toList();
    }

    /** The worst of all cases that have an answer; nothing where there is no such part. */
    static OptionalDouble si(Reading.OfLoads reading, CarLoads loads) {
        Optional<Peak> peak = reading.what() == What.FORCE
                ? loads.worstMembers().stream()
                        .filter(member -> member.part().equals(reading.part()))
                        .map(member -> member.greatest())
                        .findFirst()
                : loads.worstMounts().stream()
                        .filter(mount -> mount.mount().equals(reading.part()))
                        .flatMap(mount -> Optional.ofNullable(
                                mount.peaks().get(reading.what().figure()))
                                .stream())
                        .findFirst();
        return peak.map(found -> OptionalDouble.of(found.value())).orElseGet(OptionalDouble::empty);
    }
}
