package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.links.LinkedAxle;
import evenhand.geometry.Linear;
import evenhand.geometry.LinkMotion;
import evenhand.geometry.LiveAxleMotion;
import evenhand.geometry.WheelPairMotion;
import evenhand.tyre.Tyre;
import java.util.Optional;
import java.util.OptionalDouble;

/** One end of the car on its two wheels. */
public sealed interface Axle permits Axle.Independent, Axle.Live {
    /** Distance between contact-patch centres, m. */
    double track();

    Unsprung unsprung();

    Spring spring();

    Optional<Bar> bar();

    Stops stops();

    Optional<Damper> damper();

    /** How far the body was let down by its perches, m; the heights of this record are those before. */
    double lowered();

    Alignment alignment();

    Tyre tyre();

    /** Moment of inertia of a live axle about its long axis of roll, kg·m², where known. */
    OptionalDouble rollInertia();

    /** What its links make of travel and roll. */
    Linear geometry();

    /**
     * Its links by points, where they are given: the coefficients of this record are then their slopes at rest. What they need
     * to know of the whole car is {@link Car#linked}'s to say.
     */
    Optional<LinkedAxle> links();

    /** What those links do wherever the travel goes, from where this axle stands. */
    Optional<? extends LinkMotion> motion();

    /** How it takes what pulls it along the car. */
    Reaction reaction();

    /** This axle seen in a mirror. */
    Axle mirrored();

    /** Whether it is the same seen in a mirror, to what matters nowhere. */
    default boolean alikeBothWays() {
        return motion().isEmpty() || motion().get().alikeBothWays();
    }

    /**
     * This axle after the body went down by its {@code lowered}: same links, springs and loads, perches down. Roll
     * centre by {@code perBump}, bump gaps less, droop travel more, static camber of an independent wheel by its links.
     */
    Axle settled();

    /**
     * This axle after the body sank on its springs and stops and its tyres gave, by the same slopes; what is carried by
     * the wheels comes down with them, and the springs are shorter.
     *
     * @throws evenhand.quantity.InvalidValue if no axle can be so
     */
    Axle sunk(Sinking sinking);

    /** This axle with the body to be let down by so much more, m. */
    Axle letDown(double by);

    /** This axle on springs of another rate, N/m along their line, that carry the same. */
    Axle onSpringsOf(double rate);

    /** Half the base of a live axle's stops or dampers, m: that of the springs where they have none of their own. */
    default double halfBase(OptionalDouble ofTheirOwn) {
        boolean live = this instanceof Live;
        return live && ofTheirOwn.isPresent() ? ofTheirOwn.getAsDouble() / 2 : spring().halfBase(track());
    }

    /** Roll stiffness of the bar, N·m/rad; zero without one. */
    default double barRollStiffness() {
        return bar().map(b -> b.rollStiffness(track())).orElse(0.0);
    }

    /** Wheels on links of their own. */
    record Independent(
            double track,
            Unsprung unsprung,
            RollCentre rollCentre,
            Spring.AtWheel spring,
            Optional<Bar> bar,
            Stops stops,
            Optional<Damper> damper,
            double lowered,
            double rollCamber,
            Alignment alignment,
            Tyre tyre,
            OptionalDouble rollInertia,
            Reaction reaction,
            Optional<LinkedAxle> links,
            Optional<WheelPairMotion> motion)
            implements Axle {
        /** An axle known by coefficients alone. */
        public Independent(
                double track,
                Unsprung unsprung,
                RollCentre rollCentre,
                Spring.AtWheel spring,
                Optional<Bar> bar,
                Stops stops,
                Optional<Damper> damper,
                double lowered,
                double rollCamber,
                Alignment alignment,
                Tyre tyre,
                OptionalDouble rollInertia,
                Reaction reaction) {
            this(
                    track,
                    unsprung,
                    rollCentre,
                    spring,
                    bar,
                    stops,
                    damper,
                    lowered,
                    rollCamber,
                    alignment,
                    tyre,
                    rollInertia,
                    reaction,
                    Optional.empty(),
                    Optional.empty());
        }

        /** The same whose side view is not known. */
        public Independent(
                double track,
                Unsprung unsprung,
                RollCentre rollCentre,
                Spring.AtWheel spring,
                Optional<Bar> bar,
                Stops stops,
                Optional<Damper> damper,
                double lowered,
                double rollCamber,
                Alignment alignment,
                Tyre tyre,
                OptionalDouble rollInertia) {
            this(
                    track,
                    unsprung,
                    rollCentre,
                    spring,
                    bar,
                    stops,
                    damper,
                    lowered,
                    rollCamber,
                    alignment,
                    tyre,
                    rollInertia,
                    Reaction.UNKNOWN);
        }

        public Independent {
            require(track > 0, "track", "must be above zero");
            require(Double.isFinite(rollCamber), "rollCamber", "must be a finite number");
            require(Math.abs(lowered) < 0.5, "lowered", "must be less than half a metre");
        }

        @Override
        public Linear geometry() {
            return new Linear(
                    rollCentre.height(),
                    rollCentre.perBump(),
                    alignment.rollSteer(),
                    rollCamber,
                    Linear.leanByTravel(rollCamber, track),
                    spring.lever(track),
                    damper.map(fitted -> fitted.lever(this)));
        }

        @Override
        public Axle settled() {
            return lowered == 0 ? this : moved(lowered, 0, spring);
        }

        @Override
        public Axle sunk(Sinking sinking) {
            double travel = sinking.travel();
            double squash = sinking.squash();
            return moved(travel, squash, pressed(travel, squash));
        }

        private Spring pressed(double travel, double squash) {
            return motion.isPresent() && motion.get().guidesSprings()
                    ? spring.shorter(motion.get().springsShorterBy(travel))
                    : spring.pressed(travel, squash);
        }

        private Axle moved(double travel, double squash, Spring shortened) {
            return motion.isPresent()
                    ? at(motion.get().sunk(travel, squash), travel, squash, shortened)
                    : at(travel, squash, shortened);
        }

        @Override
        public Axle letDown(double by) {
            return with(spring, lowered + by, motion);
        }

        @Override
        public Axle onSpringsOf(double rate) {
            return with(spring.ofRate(rate), lowered, motion);
        }

        private Axle with(Spring.AtWheel itsSpring, double itsLowered, Optional<WheelPairMotion> itsMotion) {
            return new Independent(
                    track,
                    unsprung,
                    rollCentre,
                    itsSpring,
                    bar,
                    stops,
                    damper,
                    itsLowered,
                    rollCamber,
                    alignment,
                    tyre,
                    rollInertia,
                    reaction,
                    links,
                    itsMotion);
        }

        private Axle at(double travel, double squash, Spring shortened) {
            Linear known = geometry();
            return standing(
                    squash,
                    new RollCentre(known.rollCentreHeight(travel) - squash, rollCentre.perBump()),
                    (Spring.AtWheel) shortened,
                    stops.inBump(travel),
                    damper,
                    rollCamber,
                    alignment.leaning(alignment.camber() - known.lean(travel), alignment.toe(), alignment.rollSteer()),
                    links.map(points -> points.down(points.stance().cameDown() + travel)),
                    Optional.empty());
        }

        /** The same by its links: whatever they make of it there. */
        private Axle at(WheelPairMotion there, double travel, double squash, Spring shortened) {
            Linear known = there.atRest(shortened.lever(track), geometry().dampers());
            return standing(
                    squash,
                    new RollCentre(known.rollCentreHeight(), known.rollCentreByTravel()),
                    (Spring.AtWheel) (there.guidesSprings() ? shortened.worked(known.springs()) : shortened),
                    stops.inBump(travel),
                    damper.map(fitted -> there.guidesDampers()
                            ? fitted.worked(known.dampers().orElseThrow(), OptionalDouble.empty())
                            : fitted),
                    known.rollCamber(),
                    alignment.leaning(there.camberAtRest(), there.toeAtRest(), known.rollSteer()),
                    links.map(points -> points.down(points.stance().cameDown() + travel)),
                    Optional.of(there));
        }

        private Axle standing(
                double squash,
                RollCentre itsRollCentre,
                Spring.AtWheel itsSpring,
                Stops itsStops,
                Optional<Damper> itsDamper,
                double itsRollCamber,
                Alignment itsAlignment,
                Optional<LinkedAxle> itsLinks,
                Optional<WheelPairMotion> itsMotion) {
            return new Independent(
                    track,
                    unsprung.lower(squash),
                    itsRollCentre,
                    itsSpring,
                    bar,
                    itsStops,
                    itsDamper,
                    0,
                    itsRollCamber,
                    itsAlignment,
                    tyre.squashed(squash),
                    rollInertia,
                    reaction,
                    itsLinks,
                    itsMotion);
        }

        @Override
        public Axle mirrored() {
            return motion.isEmpty() ? this : with(spring, lowered, motion.map(WheelPairMotion::mirrored));
        }
    }

    /** Roll centre of an independent axle: height at rest, m, and its change per bump travel. */
    record RollCentre(double height, double perBump) {
        public RollCentre {
            require(Math.abs(height) < 2, "height", "must be less than two metres");
            require(Math.abs(perBump) <= 20, "perBump", "must lie between -20 and 20");
        }
    }

    /** A rigid axle on links or leaf springs. */
    record Live(
            double track,
            Unsprung unsprung,
            LateralLocator lateralLocator,
            Spring spring,
            Optional<Bar> bar,
            Stops stops,
            Optional<Damper> damper,
            double lowered,
            Alignment alignment,
            Tyre tyre,
            OptionalDouble rollInertia,
            Reaction reaction,
            Optional<LinkedAxle> links,
            Optional<LiveAxleMotion> motion)
            implements Axle {
        /** An axle known by coefficients alone. */
        public Live(
                double track,
                Unsprung unsprung,
                LateralLocator lateralLocator,
                Spring spring,
                Optional<Bar> bar,
                Stops stops,
                Optional<Damper> damper,
                double lowered,
                Alignment alignment,
                Tyre tyre,
                OptionalDouble rollInertia,
                Reaction reaction) {
            this(
                    track,
                    unsprung,
                    lateralLocator,
                    spring,
                    bar,
                    stops,
                    damper,
                    lowered,
                    alignment,
                    tyre,
                    rollInertia,
                    reaction,
                    Optional.empty(),
                    Optional.empty());
        }

        /** The same whose side view is not known. */
        public Live(
                double track,
                Unsprung unsprung,
                LateralLocator lateralLocator,
                Spring spring,
                Optional<Bar> bar,
                Stops stops,
                Optional<Damper> damper,
                double lowered,
                Alignment alignment,
                Tyre tyre,
                OptionalDouble rollInertia) {
            this(
                    track,
                    unsprung,
                    lateralLocator,
                    spring,
                    bar,
                    stops,
                    damper,
                    lowered,
                    alignment,
                    tyre,
                    rollInertia,
                    Reaction.UNKNOWN);
        }

        public Live {
            require(track > 0, "track", "must be above zero");
            require(!(spring instanceof Spring.AtWheel), "spring", "needs its base on a live axle");
            require(Math.abs(lowered) < 0.5, "lowered", "must be less than half a metre");
        }

        @Override
        public Linear geometry() {
            return new Linear(
                    lateralLocator.height(),
                    lateralLocator.perBump(),
                    alignment.rollSteer(),
                    0,
                    0,
                    spring.lever(track),
                    damper.map(fitted -> fitted.lever(this)));
        }

        @Override
        public Axle settled() {
            return lowered == 0 ? this : moved(lowered, 0, spring);
        }

        @Override
        public Axle sunk(Sinking sinking) {
            double travel = sinking.travel();
            double squash = sinking.squash();
            return moved(travel, squash, pressed(travel, squash));
        }

        private Spring pressed(double travel, double squash) {
            return motion.isPresent() && motion.get().guidesSprings()
                    ? spring.shorter(motion.get().springsShorterBy(travel))
                    : spring.pressed(travel, squash);
        }

        private Axle moved(double travel, double squash, Spring shortened) {
            return motion.isPresent()
                    ? at(motion.get().sunk(travel, squash), travel, squash, shortened)
                    : at(travel, squash, shortened);
        }

        @Override
        public Axle letDown(double by) {
            return with(spring, lowered + by, motion);
        }

        @Override
        public Axle onSpringsOf(double rate) {
            return with(spring.ofRate(rate), lowered, motion);
        }

        private Axle with(Spring itsSpring, double itsLowered, Optional<LiveAxleMotion> itsMotion) {
            return new Live(
                    track,
                    unsprung,
                    lateralLocator,
                    itsSpring,
                    bar,
                    stops,
                    damper,
                    itsLowered,
                    alignment,
                    tyre,
                    rollInertia,
                    reaction,
                    links,
                    itsMotion);
        }

        private Axle at(double travel, double squash, Spring shortened) {
            return standing(
                    squash,
                    lateralLocator.at(geometry().rollCentreHeight(travel) - squash),
                    shortened,
                    stops.inBump(travel),
                    damper,
                    alignment,
                    links.map(points -> points.down(points.stance().cameDown() + travel)),
                    Optional.empty());
        }

        /** The same by its links: whatever they make of it there. */
        private Axle at(LiveAxleMotion there, double travel, double squash, Spring shortened) {
            Linear known = there.atRest(shortened.lever(track), geometry().dampers());
            return standing(
                    squash,
                    new LateralLocator.ByPoints(known.rollCentreHeight(), known.rollCentreByTravel()),
                    there.guidesSprings() ? shortened.worked(known.springs()) : shortened,
                    stops.inBump(travel),
                    damper.map(fitted -> there.guidesDampers()
                            ? fitted.worked(known.dampers().orElseThrow(), OptionalDouble.of(track))
                            : fitted),
                    alignment.leaning(alignment.camber(), alignment.toe(), known.rollSteer()),
                    links.map(points -> points.down(points.stance().cameDown() + travel)),
                    Optional.of(there));
        }

        private Axle standing(
                double squash,
                LateralLocator itsLocator,
                Spring itsSpring,
                Stops itsStops,
                Optional<Damper> itsDamper,
                Alignment itsAlignment,
                Optional<LinkedAxle> itsLinks,
                Optional<LiveAxleMotion> itsMotion) {
            return new Live(
                    track,
                    unsprung.lower(squash),
                    itsLocator,
                    itsSpring,
                    bar,
                    itsStops,
                    itsDamper,
                    0,
                    itsAlignment,
                    tyre.squashed(squash),
                    rollInertia,
                    reaction,
                    itsLinks,
                    itsMotion);
        }

        @Override
        public Axle mirrored() {
            return motion.isEmpty() ? this : with(spring, lowered, motion.map(LiveAxleMotion::mirrored));
        }
    }
}
