package evenhand.window.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Which car is asked: the one of the file, or that one as its road tests have corrected it. */
public enum WhichCar {
    AS_MEASURED("as measured"),
    AS_TESTED("as tested"),
    /** Also where the file and the road do not agree. */
    AS_TESTED_ALL_THE_SAME("as tested, all the same");

    private final String words;

    WhichCar(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** By its words. */
    public static Optional<WhichCar> of(String words) {
        return Arrays.stream(values()).filter(one -> one.words.equals(words)).findFirst();
    }

    /** Which can be chosen for a job: without road tests only the one of the file; all the same, only where it was meant. */
    public static List<WhichCar> offered(Work work) {
        return work.scenario().roadTests().isEmpty()
                ? List.of(AS_MEASURED)
                : work.which() == AS_TESTED_ALL_THE_SAME ? List.of(values()) : List.of(AS_MEASURED, AS_TESTED);
    }

    public boolean isTested() {
        return this != AS_MEASURED;
    }
}
