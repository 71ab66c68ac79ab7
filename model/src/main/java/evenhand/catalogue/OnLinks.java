package evenhand.catalogue;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Axle;
import evenhand.car.Bar;
import evenhand.car.End;
import evenhand.car.LateralLocator;
import evenhand.car.Spring;
import evenhand.car.Stops;
import evenhand.car.links.Dampers;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.LinkedWheels;
import evenhand.car.links.Locator;
import evenhand.car.links.Mounts;
import evenhand.car.links.Pair;
import evenhand.car.links.SideView;
import evenhand.car.links.SpringLine;
import evenhand.car.links.Stance;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import evenhand.linkage.AxleState.WheelFigures;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Builds axles that are known by their points: the links stand at rest as measured, and what the record has as coefficients
 * are their slopes there. A coefficient that the links decide must not stand in the file as well.
 */
final class OnLinks {
    private static final List<Slot<Double>> REPLACED_OF_SPRINGS = List.of(
            SpringCatalogue.SPRING_MOTION_RATIO,
            SpringCatalogue.LEAN,
            SpringCatalogue.BASE,
            SpringCatalogue.LOWER_MOUNT_HEIGHT,
            SpringCatalogue.INSTALLED_LENGTH);
    private static final List<Slot<Double>> REPLACED_OF_DAMPERS =
            List.of(DamperCatalogue.DAMPER_MOTION_RATIO, SpringCatalogue.LEAN, DamperCatalogue.DAMPER_BASE);

    private OnLinks() {}

    /**
     * Paths of coefficients that the points of a car decide, as far as one sees it in what was given: a file that gives them as well
     * is refused.
     */
    static Set<String> decided(Entries car) {
        Set<String> paths = new LinkedHashSet<>();
        for (End end : End.values()) {
            if (!(part(car, end.key())
                    .flatMap(axle -> part(axle, LinkCatalogue.WHEEL_LINKS.key()))
                    .isPresent())) {
                continue;
            }
            Entries axle = part(car, end.key()).orElseThrow();
            decided(
                    paths,
                    end.key(),
                    List.of(AxleCatalogue.ROLL_CENTRE_GROUP, AxleCatalogue.ROLL_CAMBER, AxleCatalogue.ROLL_STEER));
            decidedBeside(
                    paths,
                    axle,
                    end,
                    AxleCatalogue.LOCATOR,
                    List.of("pivot", "body", "axle"),
                    List.of(LocatorCatalogue.LOCATOR_HEIGHT, LocatorCatalogue.LOCATOR_PER_BUMP));
            decidedBeside(
                    paths, axle, end, AxleCatalogue.SPRING_AT_WHEEL, List.of("top", "around"), REPLACED_OF_SPRINGS);
            decidedBeside(
                    paths, axle, end, AxleCatalogue.DAMPER_AT_WHEEL, List.of("top", "around"), REPLACED_OF_DAMPERS);
            decidedBeside(
                    paths,
                    axle,
                    end,
                    AxleCatalogue.BAR_AT_WHEEL,
                    List.of("pivot"),
                    List.of(SpringCatalogue.LINK_RATIO));
            boolean steered = end == End.FRONT
                    && part(axle, LinkCatalogue.WHEEL_LINKS.key())
                            .flatMap(links -> part(links, "tieRod"))
                            .isPresent();
            if (steered) {
                decided(paths, CarCatalogue.STEERING.key(), List.of(CarCatalogue.ACKERMANN_SHARE));
            }
        }
        return paths;
    }

    private static Optional<Entries> part(Entries whole, String key) {
        return whole.get(key).filter(Entries.class::isInstance).map(Entries.class::cast);
    }

    private static void decidedBeside(
            Set<String> paths,
            Entries axle,
            End end,
            Slot<?> part,
            List<String> points,
            List<? extends Slot<?>> coefficients) {
        if (part(axle, part.key()).stream().anyMatch(given -> points.stream().anyMatch(given.given()::containsKey))) {
            decided(paths, Path.join(end.key(), part.key()), coefficients);
        }
    }

    private static void decided(Set<String> paths, String part, List<? extends Slot<?>> coefficients) {
        coefficients.forEach(slot -> paths.add(Path.join(part, slot.key())));
    }

    /** Refuses points of springs, dampers and bars on an axle without links. */
    static void requireNone(
            Values v, Slot<? extends Given.OfSpring<?>> spring, Slot<Given.OfBar> bar, Slot<Given.OfDamper> damper) {
        require(v.of(spring).line().isEmpty(), spring.key(), needsLinks("the points of a spring"));
        require(
                v.optional(bar).flatMap(Given.OfBar::points).isEmpty(),
                bar.key(),
                needsLinks("the points of an anti-roll bar"));
        require(
                v.optional(damper).flatMap(Given.OfDamper::points).isEmpty(),
                damper.key(),
                needsLinks("the points of a damper"));
        require(
                !v.has(LinkCatalogue.CLEARANCES),
                LinkCatalogue.CLEARANCES.key(),
                needsLinks("gaps that are watched through the travel"));
    }

    static void requireNoLocatorPoints(Given.OfLocator locator) {
        require(
                locator.points().isEmpty() && locator.known().isPresent(),
                AxleCatalogue.LOCATOR.key(),
                needsLinks("the points of a lateralLocator"));
    }

    private static String needsLinks(String what) {
        return "has " + what
                + ", which need the axle's links; give \"links\" by their points, or the coefficients instead";
    }

    /** A bar on an axle without points. */
    static Bar bar(Given.OfBar given) {
        return given.made().apply(given.linkRatio().orElse(1));
    }

    static Axle wheels(Values v, End end) {
        Given.OfSpring<Spring.AtWheel> spring = v.of(AxleCatalogue.SPRING_AT_WHEEL);
        Optional<Given.OfDamper> damper = v.optional(AxleCatalogue.DAMPER_AT_WHEEL);
        Optional<Given.OfBar> bar = v.optional(AxleCatalogue.BAR_AT_WHEEL);
        LinkedWheels linked = new LinkedWheels(
                stance(v, end, 0),
                v.of(LinkCatalogue.WHEEL_LINKS),
                mounts(v, spring.line(), damper, bar),
                SideView.ofAxleAlone(v.of(LinkCatalogue.BRAKES_AT)),
                Optional.empty());
        LinksAtRest rest = LinksAtRest.of(linked, v.of(AxleCatalogue.LOWERED));
        Replaced replaced = new Replaced(v, end);
        replaced.links(
                AxleCatalogue.ROLL_CENTRE_GROUP, () -> "its height comes out at " + length(rest.rollCentreHeight()));
        replaced.links(
                AxleCatalogue.WHEEL_ROLL_CAMBER,
                () -> comesOut(ratio(rest.state().rollCamber())));
        replaced.links(
                AxleCatalogue.LINKED_ROLL_STEER,
                () -> comesOut(ratio(rest.state().rollSteer())));
        replaced.links(
                AxleCatalogue.sideView(),
                () -> contactSlope(rest.mean(side -> side.own().orElseThrow().contactSideSlope())));
        replaced.parts(AxleCatalogue.SPRING_AT_WHEEL, spring.line().isPresent(), REPLACED_OF_SPRINGS, rest);
        replaced.parts(AxleCatalogue.DAMPER_AT_WHEEL, hasPoints(damper), REPLACED_OF_DAMPERS, rest);
        replaced.bar(AxleCatalogue.BAR_AT_WHEEL, bar, rest);
        Stops stops = AxleCatalogue.stopsAtWheel(v);
        return new Axle.Independent(
                v.of(AxleCatalogue.TRACK),
                AxleCatalogue.unsprung(v),
                inPart("links", () -> new Axle.RollCentre(rest.rollCentreHeight(), rest.rollCentrePerBump())),
                inPart("spring", () -> spring.known().orElseGet(() -> rest.spring(spring))),
                bar.map(given -> rest.bar(given)),
                stops,
                damper.map(given -> inPart("damper", () -> rest.damper(given, OptionalDouble.empty()))),
                v.of(AxleCatalogue.LOWERED),
                rest.state().rollCamber(),
                AxleCatalogue.alignment(
                        v,
                        rest.mean(WheelFigures::camber),
                        rest.mean(WheelFigures::toe),
                        rest.state().rollSteer()),
                v.of(AxleCatalogue.TYRE),
                v.maybe(AxleCatalogue.ROLL_INERTIA),
                AxleCatalogue.reaction(v, OptionalDouble.empty()),
                Optional.of(linked),
                Optional.of((WheelPairMotion) rest.motion(stops)));
    }

    static Axle axle(Values v, End end) {
        Given.OfSpring<Spring> spring = v.of(AxleCatalogue.SPRING_ON_AXLE);
        Optional<Given.OfDamper> damper = v.optional(AxleCatalogue.DAMPER_ON_AXLE);
        Optional<Given.OfBar> bar = v.optional(AxleCatalogue.BAR_ON_AXLE);
        Optional<Given.OfLocator> locator = v.optional(AxleCatalogue.LOCATOR);
        LinkedLiveAxle linked = new LinkedLiveAxle(
                stance(v, end, v.optional(LinkCatalogue.OFFSET).orElse(0.0)),
                v.of(LinkCatalogue.AXLE_LINKS),
                locator.map(OnLinks::locator),
                mounts(v, spring.line(), damper, bar),
                v.optional(LinkCatalogue.PROP_SHAFT),
                SideView.ofAxleAlone(v.of(LinkCatalogue.BRAKES_AT)),
                Optional.empty());
        LinksAtRest rest = LinksAtRest.of(linked, v.of(AxleCatalogue.LOWERED));
        Replaced replaced = new Replaced(v, end);
        replaced.links(
                AxleCatalogue.LINKED_ROLL_STEER,
                () -> comesOut(ratio(rest.state().rollSteer())));
        replaced.links(
                AxleCatalogue.sideView(),
                () -> contactSlope(rest.state().live().orElseThrow().contactSideSlope()));
        replaced.locator(locator, rest);
        replaced.parts(AxleCatalogue.SPRING_ON_AXLE, spring.line().isPresent(), REPLACED_OF_SPRINGS, rest);
        replaced.parts(AxleCatalogue.DAMPER_ON_AXLE, hasPoints(damper), REPLACED_OF_DAMPERS, rest);
        replaced.bar(AxleCatalogue.BAR_ON_AXLE, bar, rest);
        double track = v.of(AxleCatalogue.TRACK);
        Stops stops = AxleCatalogue.stopsOnAxle(v);
        return new Axle.Live(
                track,
                AxleCatalogue.unsprung(v),
                inPart("links", () -> new LateralLocator.ByPoints(rest.rollCentreHeight(), rest.rollCentrePerBump())),
                inPart("spring", () -> spring.known().orElseGet(() -> rest.springOnAxle(spring, track))),
                bar.map(given -> rest.bar(given)),
                seats(linked).isPresent() ? stops.onBase(seats(linked).getAsDouble()) : stops,
                damper.map(given -> inPart("damper", () -> rest.damper(given, OptionalDouble.of(track)))),
                v.of(AxleCatalogue.LOWERED),
                AxleCatalogue.alignment(
                        v,
                        v.of(AxleCatalogue.CAMBER),
                        v.of(AxleCatalogue.TOE),
                        rest.state().rollSteer()),
                v.of(AxleCatalogue.TYRE),
                v.maybe(AxleCatalogue.ROLL_INERTIA),
                AxleCatalogue.reaction(v, spring.windUp()),
                Optional.of(linked),
                Optional.of((LiveAxleMotion) rest.motion(stops)));
    }

    private static boolean hasPoints(Optional<Given.OfDamper> damper) {
        return damper.flatMap(Given.OfDamper::points).isPresent();
    }

    private static Stance stance(Values v, End end, double offset) {
        return new Stance(
                end,
                v.of(AxleCatalogue.TRACK),
                offset,
                v.of(AxleCatalogue.TYRE).loadedRadius(),
                v.of(AxleCatalogue.CAMBER),
                v.of(AxleCatalogue.TOE),
                0);
    }

    private static Mounts mounts(
            Values v, Optional<SpringLine> spring, Optional<Given.OfDamper> damper, Optional<Given.OfBar> bar) {
        return new Mounts(
                spring,
                damper.flatMap(Given.OfDamper::points),
                bar.flatMap(Given.OfBar::points),
                v.optional(LinkCatalogue.CLEARANCES).orElse(List.of()));
    }

    /** By its points, or an ideal one of a known height. */
    private static Locator locator(Given.OfLocator given) {
        return given.points().orElseGet(() -> {
            LateralLocator known = given.known().orElseThrow();
            return new Locator.Ideal(known.height(), known.perBump(), known instanceof LateralLocator.LeafSprings);
        });
    }

    /** Twice the mean distance of the springs' lower ends from the middle, m, where they have points. */
    private static OptionalDouble seats(LinkedAxle linked) {
        Optional<SpringLine> line = linked.mounts().spring();
        if (line.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (line.get() instanceof SpringLine.BetweenPoints points) {
            Pair<SpringLine.Ends> ends = points.ends();
            return OptionalDouble.of(
                    ends.left().bottom().out() + ends.right().bottom().out());
        }
        return linked.mounts().damper().isPresent()
                        && linked.mounts().damper().get().line() instanceof Dampers.BetweenEyes eyes
                ? OptionalDouble.of(eyes.ends().left().bottom().at().out()
                        + eyes.ends().right().bottom().at().out())
                : OptionalDouble.empty();
    }

    private static <T> T inPart(String part, Supplier<T> made) {
        try {
            return made.get();
        } catch (InvalidValue invalid) {
            throw new InvalidValue(Path.join(part, invalid.component()), String.valueOf(invalid.getMessage()));
        }
    }

    private static String contactSlope(double slope) {
        return "contact slope comes out at " + ratio(slope);
    }

    static String comesOut(String value) {
        return "it comes out at " + value;
    }

    static String ratio(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private static String length(double si) {
        return String.format(Locale.ROOT, "%.1f mm", Dimension.LENGTH.metric().fromSi(si));
    }

    /** Refuses coefficients that come out of the points. */
    private record Replaced(Values v, End end) {
        /** What all links decide; how it comes out is only worked into words where it is refused. */
        void links(Slot<?> slot, Supplier<String> outcome) {
            if (v.has(slot)) {
                throw new InvalidValue(
                        slot.key(),
                        "the links decide this, " + outcome.get() + "; take it out, or take out car." + end.key()
                                + ".links");
            }
        }

        void locator(Optional<Given.OfLocator> locator, LinksAtRest rest) {
            boolean points = locator.flatMap(Given.OfLocator::points).isPresent();
            for (Slot<Double> slot : List.of(LocatorCatalogue.LOCATOR_HEIGHT, LocatorCatalogue.LOCATOR_PER_BUMP)) {
                if (points && v.isGiven(AxleCatalogue.LOCATOR, slot)) {
                    throw new InvalidValue(
                            Path.join(AxleCatalogue.LOCATOR.key(), slot.key()),
                            byPoints(comesOut(
                                    slot == LocatorCatalogue.LOCATOR_HEIGHT
                                            ? length(rest.rollCentreHeight())
                                            : ratio(rest.rollCentrePerBump()))));
                }
            }
        }

        /** What the points of springs or dampers decide. */
        void parts(Slot<?> part, boolean points, List<Slot<Double>> slots, LinksAtRest rest) {
            for (Slot<Double> slot : slots) {
                if (points && v.isGiven(part, slot)) {
                    throw new InvalidValue(Path.join(part.key(), slot.key()), byPoints(outcome(part, slot, rest)));
                }
            }
        }

        private static String outcome(Slot<?> part, Slot<Double> slot, LinksAtRest rest) {
            if (slot.key().equals(SpringCatalogue.SPRING_MOTION_RATIO.key())) {
                boolean ofSpring = part.key().equals(AxleCatalogue.SPRING_AT_WHEEL.key());
                return comesOut(
                        ratio(rest.mean(side -> (ofSpring ? side.springRatio() : side.damperRatio()).orElse(0))));
            }
            return slot.key().equals(SpringCatalogue.INSTALLED_LENGTH.key())
                    ? comesOut(length(rest.mean(side -> side.springLength().orElse(0))))
                    : "it follows from top and bottom";
        }

        void bar(Slot<?> part, Optional<Given.OfBar> bar, LinksAtRest rest) {
            if (bar.flatMap(Given.OfBar::points).isPresent()
                    && bar.get().linkRatio().isPresent()) {
                throw new InvalidValue(
                        Path.join(part.key(), SpringCatalogue.LINK_RATIO.key()),
                        byPoints(comesOut(ratio(rest.barRatio()))));
            }
        }

        private static String byPoints(String outcome) {
            return "the points decide this, " + outcome + "; take it out, or take out the points beside it";
        }
    }
}
