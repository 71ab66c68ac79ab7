package evenhand.scenario;

import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.mounts.HardUse;
import evenhand.catalogue.Entries;
import evenhand.catalogue.Entry;
import evenhand.quantity.InvalidValue;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

/** What is wrong with the cases of hard use beside one another and beside the car. */
final class HardUseChecks {
    private static final String KEY = "hardUse";
    private static final String DRIVE = "drive";

    private HardUseChecks() {}

    /**
     * What is wrong with cases each of which is sound by itself, by path.
     *
     * @param file all that stands in it
     */
    static Map<String, String> together(List<HardUse> uses, Entries file) {
        Map<String, String> wrong = new LinkedHashMap<>();
        for (int i = 0; i < uses.size(); i++) {
            String path = KEY + "[" + i + "]";
            try {
                uses.get(i).requireAfter(uses.subList(0, i));
            } catch (InvalidValue invalid) {
                wrong.put(path + "." + invalid.component(), String.valueOf(invalid.getMessage()));
            }
            if (uses.get(i) instanceof HardUse.Launch launch) {
                launch(path, launch, file, wrong);
            }
        }
        return wrong;
    }

    private static void launch(String path, HardUse.Launch launch, Entries file, Map<String, String> wrong) {
        Optional<Entry> drive = file.get("car")
                .filter(Entries.class::isInstance)
                .map(Entries.class::cast)
                .flatMap(car -> car.get(DRIVE));
        if (drive.isEmpty()) {
            wrong.put(path, "needs to know which wheels drive; give car.drive, or take this case out");
        } else if (drive.get() instanceof Entries given
                && given.get("gears").orElse(null) instanceof Entry.Numbers gears
                && launch.gear() > gears.numbers().size()) {
            wrong.put(
                    path + ".gear",
                    "is beyond the " + gears.numbers().size() + " gears of car.drive.gears; give one from 1 to "
                            + gears.numbers().size());
        }
    }

    /** Cases that this car cannot be asked, by path; answers leave them out and say so. */
    static void leftOut(List<HardUse> uses, Car car, BiConsumer<String, String> warn) {
        for (int i = 0; i < uses.size(); i++) {
            for (End end : End.values()) {
                String path = KEY + "[" + i + "]";
                whyLeftOut(uses.get(i), end, car.axle(end)).ifPresent(why -> warn.accept(path, why));
            }
        }
    }

    private static Optional<String> whyLeftOut(HardUse use, End end, Axle axle) {
        String at = "car." + end.key() + ".";
        if (use instanceof HardUse.Pothole
                && axle.stops().metal().isEmpty()
                && axle.stops().bump().isEmpty()) {
            return Optional.of("is left out at the " + end.key() + " axle, whose travel ends nowhere; give " + at
                    + "metalStop or " + at + "bumpStop");
        }
        return use instanceof HardUse.Hanging && axle.stops().droop().isEmpty()
                ? Optional.of("is left out at the " + end.key() + " axle, which has no end of droop; give " + at
                        + "droopStop")
                : Optional.empty();
    }
}
