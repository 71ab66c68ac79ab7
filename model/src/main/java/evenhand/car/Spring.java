package evenhand.car;

import static evenhand.quantity.InvalidValue.require;

import evenhand.geometry.Lever;
import java.util.Optional;
import java.util.OptionalDouble;

/** The springs of one axle, left and right alike. */
public sealed interface Spring permits Spring.AtWheel, Spring.Upright, Spring.Leaning {
    /** Rate of one spring along its line, N/m. */
    double rate();

    /** Lengths of one spring and the perch below or above it, for ride height and coil bind. */
    Lengths lengths();

    /** Leverage on an axle or a wheel of a track, m. */
    Lever lever(double track);

    /** Half the distance between the springs at their lower mounts, m: half the track of wheels of their own. */
    double halfBase(double track);

    /** These springs with another rate, of the same length at rest. */
    Spring ofRate(double rate);

    /**
     * These springs after the body sank on them by {@code travel} m, and the axle that they stand on by {@code squash} m.
     *
     * @throws evenhand.quantity.InvalidValue if nothing of their length is left, or the coils are bound
     */
    Spring pressed(double travel, double squash);

    /** This spring shorter by so much, m, carrying more. */
    Spring shorter(double by);

    /** This spring worked with a leverage; of one that leans nothing changes. */
    Spring worked(Lever lever);

    /** Lengths along the spring's line, m, each where known, and the thread that its perch is screwed on, where there is one. */
    record Lengths(OptionalDouble installed, OptionalDouble free, OptionalDouble solid, Optional<Perches> perches) {
        public static final Lengths UNKNOWN =
                new Lengths(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

        public Lengths {
            require(installed.orElse(1) > 0, "installedLength", "must be above zero");
            require(free.orElse(1) > 0, "freeLength", "must be above zero");
            require(solid.orElse(1) > 0, "solidLength", "must be above zero");
            require(
                    solid.orElse(0) < installed.orElse(Double.MAX_VALUE),
                    "solidLength",
                    "must be less than installedLength: the coils would be bound at rest");
        }

        /** Of springs that stand on no thread. */
        public Lengths(OptionalDouble installed, OptionalDouble free, OptionalDouble solid) {
            this(installed, free, solid, Optional.empty());
        }

        Lengths shorter(double by) {
            return installed.isEmpty()
                    ? this
                    : new Lengths(OptionalDouble.of(installed.getAsDouble() - by), free, solid, perches);
        }
    }

    /** Spring of an independent wheel; motion ratio = spring travel over wheel travel. */
    record AtWheel(double rate, double motionRatio, Lengths lengths) implements Spring {
        public AtWheel {
            require(rate > 0, "rate", "must be above zero");
            require(motionRatio > 0, "motionRatio", "must be above zero");
        }

        @Override
        public Lever lever(double track) {
            return Lever.upright(motionRatio, halfBase(track));
        }

        @Override
        public double halfBase(double track) {
            return track / 2;
        }

        @Override
        public AtWheel ofRate(double other) {
            return new AtWheel(other, motionRatio, lengths);
        }

        @Override
        public Spring pressed(double travel, double squash) {
            return shorter(motionRatio * travel);
        }

        @Override
        public AtWheel shorter(double by) {
            return new AtWheel(rate, motionRatio, lengths.shorter(by));
        }

        @Override
        public AtWheel worked(Lever lever) {
            return new AtWheel(rate, lever.ratio(), lengths);
        }
    }

    /** Upright springs of a live axle, worked through a motion ratio where they do not stand on the axle itself. */
    record Upright(double rate, double base, double motionRatio, Lengths lengths) implements Spring {
        public Upright {
            require(rate > 0, "rate", "must be above zero");
            require(base > 0, "base", "must be above zero");
            require(motionRatio > 0, "motionRatio", "must be above zero");
        }

        @Override
        public Lever lever(double track) {
            return Lever.upright(motionRatio, halfBase(track));
        }

        @Override
        public double halfBase(double track) {
            return base / 2;
        }

        @Override
        public Spring ofRate(double other) {
            return new Upright(other, base, motionRatio, lengths);
        }

        @Override
        public Spring pressed(double travel, double squash) {
            return shorter(motionRatio * travel);
        }

        @Override
        public Upright shorter(double by) {
            return new Upright(rate, base, motionRatio, lengths.shorter(by));
        }

        @Override
        public Upright worked(Lever lever) {
            return new Upright(rate, 2 * lever.arm().atGround(), lever.ratio(), lengths);
        }
    }

    /** Springs of a live axle that lean inwards going up by {@code lean}, rad; lower mounts {@code base} apart. */
    record Leaning(double rate, double base, double lean, double lowerMountHeight, Lengths lengths) implements Spring {
        public Leaning {
            require(rate > 0, "rate", "must be above zero");
            require(base > 0, "base", "must be above zero");
            require(Math.abs(lean) < Math.toRadians(80), "lean", "must be less than 80 deg");
            require(lowerMountHeight > 0, "lowerMountHeight", "must be above the ground");
        }

        @Override
        public Lever lever(double track) {
            return Lever.leaning(halfBase(track), lowerMountHeight, lean, lengths.installed());
        }

        @Override
        public double halfBase(double track) {
            return base / 2;
        }

        @Override
        public Spring ofRate(double other) {
            return new Leaning(other, base, lean, lowerMountHeight, lengths);
        }

        @Override
        public Spring pressed(double travel, double squash) {
            return new Leaning(rate, base, lean, lowerMountHeight - squash, lengths.shorter(Math.cos(lean) * travel));
        }

        @Override
        public Leaning shorter(double by) {
            return new Leaning(rate, base, lean, lowerMountHeight, lengths.shorter(by));
        }

        @Override
        public Leaning worked(Lever lever) {
            return this;
        }
    }
}
