package evenhand.car.mounts;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Side;
import evenhand.quantity.InvalidValue;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that the car is put through. Its forces are all multiplied by {@code factor}: abuse, fatigue, doubt about a weld.
 */
public sealed interface HardUse {
    String name();

    double factor();

    /** Word of its kind in files and answers. */
    String kind();

    /** Whether it is looked at to the left and to the right. */
    default boolean handed() {
        return false;
    }

    /** The car at rest. It is looked at whether a file lists it or not. */
    record Standing(String name, double factor) implements HardUse {
        public Standing {
            checked(name, factor);
        }

        @Override
        public String kind() {
            return "standing";
        }
    }

    /**
     * Round a bend.
     *
     * @param pace lateral acceleration, m/s²; the limit where absent
     */
    record Cornering(String name, OptionalDouble pace, double factor) implements HardUse {
        public Cornering {
            checked(name, factor);
            require(pace.orElse(1) > 0, "pace", "must be above zero, or \"limit\"");
        }

        @Override
        public String kind() {
            return "cornering";
        }

        @Override
        public boolean handed() {
            return true;
        }
    }

    /**
     * Braking straight ahead.
     *
     * @param deceleration m/s²
     */
    record Braking(String name, double deceleration, double factor) implements HardUse {
        public Braking {
            checked(name, factor);
            require(deceleration > 0, "deceleration", "must be above zero");
        }

        @Override
        public String kind() {
            return "braking";
        }
    }

    /**
     * Pulling away as hard as engine or grip allow.
     *
     * @param gear from 1 on
     * @param shock all forces times that
     */
    record Launch(String name, int gear, double shock, double factor) implements HardUse {
        public Launch {
            checked(name, factor);
            require(gear >= 1, "gear", "must be 1 or more");
            require(shock > 0, "shock", "must be above zero");
        }

        @Override
        public String kind() {
            return "launch";
        }
    }

    /**
     * A kerb struck sideways by the wheels of one side.
     *
     * @param side force inwards over the wheel's load at rest
     * @param up force upwards over the same
     * @param height of the blow above the contact point, m
     */
    record Kerb(String name, double side, double up, double height, double factor) implements HardUse {
        public Kerb {
            checked(name, factor);
            require(side >= 0, "side", "must not be below zero");
            require(up >= 0, "up", "must not be below zero");
            require(height >= 0, "height", "must not be below zero");
        }

        @Override
        public String kind() {
            return "kerb";
        }

        @Override
        public boolean handed() {
            return true;
        }
    }

    /**
     * A pothole hit by the wheels of one side, at the end of their travel.
     *
     * @param up force upwards over the wheel's load at rest
     * @param back force backwards over the same
     */
    record Pothole(String name, double up, double back, double factor) implements HardUse {
        public Pothole {
            checked(name, factor);
            require(up > 0, "up", "must be above zero");
            require(back >= 0, "back", "must not be below zero");
        }

        @Override
        public String kind() {
            return "pothole";
        }

        @Override
        public boolean handed() {
            return true;
        }
    }

    /**
     * Axles that hang on their droop stops: jacked up, or landed from a crest.
     *
     * @param times their own weight times that
     */
    record Hanging(String name, double times, double factor) implements HardUse {
        public Hanging {
            checked(name, factor);
            require(times > 0, "times", "must be above zero");
        }

        @Override
        public String kind() {
            return "hanging";
        }
    }

    /**
     * Forces of the ground as somebody's rules have them, by wheel; a wheel that is not named stands.
     *
     * @param wheels forces along x, y and z by the wheel's name in answers, N
     */
    record Given(String name, Map<String, Force> wheels, double factor) implements HardUse {
        public Given {
            checked(name, factor);
            wheels = Map.copyOf(wheels);
            require(!wheels.isEmpty(), "wheels", "names no wheel; give frontLeft, frontRight, rearLeft or rearRight");
        }

        @Override
        public String kind() {
            return "given";
        }
    }

    /** A force of the ground on a tyre, N: forwards, to the left, up. */
    record Force(double x, double y, double z) {}

    /**
     * Several at once: each end's force is that of standing and so many times what each case adds to it.
     *
     * @param of cases before this one, and their share
     */
    record Combined(String name, List<Part> of, double factor) implements HardUse {
        public Combined {
            checked(name, factor);
            of = List.copyOf(of);
            require(
                    !of.isEmpty(),
                    "of",
                    "names no case; give a list such as [[\"Hard corner\", 0.7], [\"Hard braking\", 0.7]]");
        }

        @Override
        public String kind() {
            return "combined";
        }
    }

    /** One case of a combined one, times a share. */
    record Part(String name, double times) {
        public Part {
            require(!name.isBlank(), "of", "names a case without a name");
            require(Double.isFinite(times), "of", "must hold a number after each name");
        }
    }

    /** Throws unless all cases can stand together: no name twice, combined ones of cases before them. */
    static void requireTogether(List<HardUse> uses) {
        for (int i = 0; i < uses.size(); i++) {
            try {
                uses.get(i).requireAfter(uses.subList(0, i));
            } catch (InvalidValue invalid) {
                throw new InvalidValue(
                        "hardUse[" + i + "]." + invalid.component(), String.valueOf(invalid.getMessage()));
            }
        }
    }

    /** Throws unless this case can stand behind others: its name is new, and what it combines is among them. */
    default void requireAfter(List<HardUse> before) {
        require(named(before, name()).isEmpty(), "name", "is there twice; give each case a name of its own");
        if (this instanceof Combined combined) {
            for (Part part : combined.of()) {
                require(
                        named(before, part.name()).isPresent(),
                        "of",
                        "names \"" + part.name() + "\", which is no case before this one" + known(before));
            }
        }
    }

    private static String known(List<HardUse> before) {
        return before.isEmpty()
                ? "; put it behind the cases that it is made of"
                : "; before it stand "
                        + String.join(", ", before.stream().map(HardUse::name).toList());
    }

    private static void checked(String name, double factor) {
        require(!name.isBlank(), "name", "is empty; give the case a name");
        require(factor > 0 && Double.isFinite(factor), "factor", "must be above zero");
    }

    /** The case of a name among several. */
    static Optional<HardUse> named(List<HardUse> uses, String name) {
        return uses.stream().filter(use -> use.name().equals(name)).findFirst();
    }

    /** In words: {@code left} or {@code right}, for a case that has a hand. */
    static String handed(String name, Side hand) {
        return name + (hand == Side.LEFT ? ", left" : ", right");
    }
}
