package evenhand.catalogue;

import static evenhand.catalogue.Shape.shape;
import static evenhand.catalogue.Slot.group;
import static evenhand.catalogue.Slot.length;

import evenhand.car.Perches;
import java.util.Optional;

/** Screwed perches that springs stand on. */
final class PerchCatalogue {
    static final Slot<Double> PITCH = length("pitch")
            .means("how far one turn moves the perch along its spring")
            .measured("thread gauge, or ten turns by a steel rule", Amount.of(0.0001))
            .usual(0.001, 0.004)
            .within(0.0001, 0.05);

    static final Slot<Double> RAISES = room("raises", "raise the body");
    static final Slot<Double> LOWERS = room("lowers", "let the body down");

    private static final Shape<Values> ON_THE_RIGHT = shape("perchOnTheRight", v -> v, RAISES, LOWERS);
    private static final Slot<Values> RIGHT =
            group("right", ON_THE_RIGHT).optional().means("what differs on the right side");

    private static final Shape<Perches> PERCHES = shape(
            "perch",
            v -> {
                Perches.Room left = room(new Sided(v, Optional.empty()));
                return new Perches(v.of(PITCH), left, room(new Sided(v, v.optional(RIGHT))));
            },
            PITCH,
            RAISES,
            LOWERS,
            RIGHT);

    static final Slot<Perches> PERCH =
            group("perch", PERCHES).optional().means("the screwed perch that each spring stands on");

    private PerchCatalogue() {}

    private static Slot<Double> room(String key, String doing) {
        return length(key)
                .optional()
                .means("thread left by which the perch can still " + doing
                        + ", as the car stands; without end where absent")
                .measured("steel rule along the thread", Amount.of(0.001))
                .usual(0, 0.08)
                .within(0, 1);
    }

    private static Perches.Room room(Sided side) {
        return new Perches.Room(side.maybe(RAISES), side.maybe(LOWERS));
    }
}
