package evenhand.window.desk;

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

    public boolean isTested() {
        return this != AS_MEASURED;
    }
}
