package evenhand.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenhand.car.Car;
import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

public class CatalogueTest {
    /** A shape whose builder reads a slot that it does not list would throw IllegalStateException for want of a value. */
    @Test
    void aShapeReadsJustTheSlotsItLists() {
        for (Shape.Plain<?> plain : plains(Catalogue.CAR, new ArrayList<>())) {
            Set<String> keys = new HashSet<>();
            plain.slots()
                    .forEach(slot -> assertThat(keys.add(slot.key()))
                            .as(plain.name() + "." + slot.key())
                            .isTrue());
        }
        assertThat(Catalogue.build(car()).faults()).isEmpty();
    }

    @Test
    void everySlotHasAMeaningAndAStandInComesAfterItsNeeds() {
        for (Shape.Plain<?> plain : plains(Catalogue.CAR, new ArrayList<>())) {
            Set<String> before = new HashSet<>();
            for (Slot<?> slot : plain.slots()) {
                assertThat(slot.meaning()).as(plain.name() + "." + slot.key()).isNotEmpty();
                slot.standIn()
                        .ifPresent(standIn -> assertThat(before)
                                .containsAll(
                                        standIn.needs().stream().map(Slot::key).toList()));
                before.add(slot.key());
            }
        }
    }

    @Test
    void everyMeasureThatShopsTurnHasAStepAndItsUsualRangeLiesWithinItsBounds() {
        for (Shape.Plain<?> plain : plains(Catalogue.CAR, new ArrayList<>())) {
            for (Slot<?> slot : plain.slots()) {
                slot.usual().ifPresent(usual -> {
                    assertThat(usual.low()).as(slot.key()).isLessThan(usual.high());
                    assertThat(slot.bounds().holds(usual.low())).as(slot.key()).isTrue();
                    assertThat(slot.bounds().holds(usual.high())).as(slot.key()).isTrue();
                });
            }
        }
    }

    /** Who asks what helps is told of springs and pressures, not of another tyre, another weight or another wheelbase. */
    @Test
    void whatIsTheCarAsItCameIsNoSetting() {
        Map<Slot.Work, Set<String>> paths = new EnumMap<>(Slot.Work.class);
        for (Adjustable number : Catalogue.adjustments(car())) {
            if (number.slot().step().isPresent()) {
                paths.computeIfAbsent(number.slot().work(), work -> new HashSet<>())
                        .add(number.path());
            }
        }
        assertThat(paths.get(Slot.Work.SETTING))
                .contains("rear.lateralLocator.height", "front.spring.rate", "front.camber", "rear.lowered")
                .noneMatch(path -> path.contains(".tyre.") && !path.endsWith(".pressure"));
        assertThat(paths.get(Slot.Work.REBUILDING))
                .contains("front.track", "front.rollCamber")
                .allMatch(path -> path.startsWith("front.") || path.startsWith("rear."));
        assertThat(paths.get(Slot.Work.ANOTHER_CAR))
                .contains("wheelbase", "cgHeight", "front.unsprungMass", "rear.tyre.verticalRate");
    }

    @Test
    void aValueIsChangedByItsPathAndReadBack() {
        Entries car = car();
        Entries changed = Catalogue.with(car, "car.rear.lateralLocator.height", 0.275);
        assertThat(Catalogue.number(changed, "rear.lateralLocator.height")).hasValue(0.275);
        assertThat(Catalogue.build(changed)
                        .value()
                        .orElseThrow()
                        .rear()
                        .geometry()
                        .rollCentreHeight())
                .isEqualTo(0.275);
        assertThat(Catalogue.number(car, "rear.lateralLocator.height")).hasValue(0.255);
        assertThat(Catalogue.differences(car, changed))
                .extracting(Catalogue.Difference::path)
                .containsExactly("rear.lateralLocator.height");
        Entries back = Catalogue.with(car, Catalogue.differences(car, changed).get(0));
        assertThat(back).isEqualTo(changed);
    }

    @Test
    void everyNumberOfACarCanBeNamedByItsPath() {
        Entries car = car();
        for (Adjustable number : Catalogue.adjustments(car)) {
            Entries same = Catalogue.with(car, number.path(), number.si());
            Built<Car> built = Catalogue.build(same);
            assertThat(built.faults()).as(number.path()).isEmpty();
            assertThat(built.at(number.path()).orElseThrow().si()).isEqualTo(number.si());
        }
    }

    @Test
    void anAbsentTyreValueFollowsTheSize() {
        Entries car = car();
        Entries bigger = Catalogue.with(
                car,
                new Catalogue.Difference("rear.tyre.size", Optional.empty(), Optional.of(new Entry.Word("205/60R16"))));
        double before =
                Catalogue.build(car).at("rear.tyre.loadedRadius").orElseThrow().si();
        double after = Catalogue.build(bigger)
                .at("rear.tyre.loadedRadius")
                .orElseThrow()
                .si();
        assertThat(after).isGreaterThan(before);
        assertThat(Catalogue.build(bigger)
                        .value()
                        .orElseThrow()
                        .rear()
                        .unsprung()
                        .height())
                .isEqualTo(after);
    }

    @Test
    void aPathThatIsNoneNamesTheNearestKey() {
        assertThatThrownBy(() -> Catalogue.slot(car(), "rear.lateralLocator.hieght"))
                .isInstanceOf(InvalidValue.class)
                .hasMessage("is unknown; the nearest known key is height");
        assertThatThrownBy(() -> Catalogue.slot(car(), "rear.bar.rollStiffness"))
                .hasMessage("is not on this car; give it in the file first");
        assertThatThrownBy(() -> Catalogue.slot(car(), "rear.spring")).hasMessageContaining("rear.spring.rate");
        assertThatThrownBy(() -> Catalogue.slot(car(), "rear..x")).isInstanceOf(InvalidValue.class);
    }

    private static List<Shape.Plain<?>> plains(Shape<?> shape, List<Shape.Plain<?>> found) {
        if (shape instanceof Shape.Kinds<?> kinds) {
            kinds.kinds().values().forEach(kind -> plains(kind, found));
        } else if (shape instanceof Shape.ByName<?> byName) {
            plains(byName.each(), found);
        } else if (shape instanceof Shape.Plain<?> plain && !found.contains(plain)) {
            found.add(plain);
            plain.slots().forEach(slot -> {
                if (slot.content() instanceof Content.Group<?> group) {
                    plains(group.shape(), found);
                } else if (slot.content() instanceof Content.Groups<?> groups) {
                    plains(groups.shape(), found);
                }
            });
        }
        return found;
    }

    /** A small car: independent front, live rear axle. */
    public static Entries car() {
        Entries tyre = group(
                Optional.empty(),
                "pressure",
                measure("2 bar", Dimension.PRESSURE),
                "size",
                new Entry.Word("185/65R15"),
                "kind",
                new Entry.Word("touring radial"));
        Entries front = group(
                Optional.of("independent"),
                "track",
                measure("1420 mm", Dimension.LENGTH),
                "unsprungMass",
                measure("75 kg", Dimension.MASS),
                "rollCentre",
                group(
                        Optional.empty(),
                        "height",
                        measure("50 mm", Dimension.LENGTH),
                        "perBump",
                        measure("-1.3", Dimension.RATIO)),
                "spring",
                group(Optional.empty(), "rate", measure("60 N/mm", Dimension.STIFFNESS)),
                "tyre",
                tyre);
        Entries rear = group(
                Optional.of("live axle"),
                "track",
                measure("1400 mm", Dimension.LENGTH),
                "unsprungMass",
                measure("120 kg", Dimension.MASS),
                "lateralLocator",
                group(Optional.of("watt"), "height", measure("255 mm", Dimension.LENGTH)),
                "spring",
                group(
                        Optional.empty(),
                        "rate",
                        measure("28 N/mm", Dimension.STIFFNESS),
                        "base",
                        measure("1000 mm", Dimension.LENGTH)),
                "tyre",
                tyre);
        return group(
                Optional.empty(),
                "mass",
                measure("1100 kg", Dimension.MASS),
                "frontWeightFraction",
                measure("53 %", Dimension.RATIO),
                "wheelbase",
                measure("2500 mm", Dimension.LENGTH),
                "cgHeight",
                measure("500 mm", Dimension.LENGTH),
                "front",
                front,
                "rear",
                rear);
    }

    private static Entries group(Optional<String> kind, Object... keysAndEntries) {
        Map<String, Entry> given = new LinkedHashMap<>();
        for (int i = 0; i < keysAndEntries.length; i += 2) {
            given.put((String) keysAndEntries[i], (Entry) keysAndEntries[i + 1]);
        }
        return new Entries(kind, given);
    }

    private static Entry measure(String text, Dimension dimension) {
        try {
            return new Entry.Measured(Quantity.parse(text, dimension));
        } catch (QuantityException e) {
            throw new IllegalArgumentException(text, e);
        }
    }
}
