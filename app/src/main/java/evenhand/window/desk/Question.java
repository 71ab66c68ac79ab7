package evenhand.window.desk;

import evenhand.answers.Progress;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.turn.Direction;
import evenhand.turn.TurnAnswer;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** One of the questions on the left: its words, what matters for it, and its answer. A new question is one such class. */
public interface Question {
    /** Key of the question that is answered by the form of the car. */
    String FORM = "car";

    /** Key of the question that sets readings of road tests beside the file. */
    String ROAD = "road";

    /** Its name inside the program, unique. */
    String key();

    /** In the user's words. */
    String words();

    /** Where a builder looks for it. */
    Group group();

    /** What questions are about, in the order of the list. */
    enum Group {
        BALANCE("balance"),
        RIDE("ride and height"),
        LINKS("links"),
        LOADS("brakes and loads"),
        ROAD("the road"),
        TRUST("trust");

        private final String words;

        Group(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Fields of its own beside the words; what stands in one may decide which others there are. */
    default List<Field> fields(Asking asking) {
        return List.of();
    }

    /** Paths of what is adjusted for it on this car, the most telling first. */
    List<String> adjustments(Setup active);

    /** Whether it asks the numbers of the file in any case, and not those that road tests have corrected. */
    default boolean asksTheFile() {
        return false;
    }

    /** Whether the car is drawn beside the answer. */
    default boolean drawsTheCar() {
        return true;
    }

    /** Whether the shop's book stands below the answer, with an entry to put down. */
    default boolean showsTheBook() {
        return false;
    }

    /**
     * The answer. Asked on a worker's thread; looks at the progress between two cars where it takes long.
     *
     * @throws CancellationException if it is no longer wanted
     */
    Reply answer(Asked asked, Progress progress);

    /** What may follow the answer: worked out when the hands are still, as it may take longer. */
    default Afterthought after(Asked asked, Progress progress) {
        return Afterthought.NONE;
    }

    /**
     * A field of a question.
     *
     * @param choices what can be chosen; any text where there are none
     * @param start what stands there at first
     * @param hint what an empty field stands for
     * @param onNewLine whether it begins a line of fields
     * @param slide the track along which it is moved, where it is no text
     */
    record Field(
            String key,
            String words,
            List<String> choices,
            String start,
            String hint,
            boolean onNewLine,
            Optional<Slide> slide) {
        public Field {
            choices = List.copyOf(choices);
        }

        public Field(String key, String words, List<String> choices, String start) {
            this(key, words, choices, start, start.isEmpty() ? "as usual" : start, false, Optional.empty());
        }

        /** A field that is empty at first. */
        public static Field empty(String key, String words, String hint) {
            return new Field(key, words, List.of(), "", hint, false, Optional.empty());
        }

        /** A track that stands at zero at first. */
        public static Field sliding(String key, String words, Slide slide) {
            return new Field(key, words, List.of(), slide.text(0), "", false, Optional.of(slide));
        }

        public Field beginningALine() {
            return new Field(key, words, choices, start, hint, true, slide);
        }

        /** The same with another hint. */
        public Field hinting(String other) {
            return new Field(key, words, choices, start, other, onNewLine, slide);
        }
    }

    /**
     * A track with a handle, in a unit.
     *
     * @param step of one key
     * @param digits that the value is shown with
     */
    record Slide(double low, double high, double step, Unit unit, int digits) {
        /** What stands in the field where the handle is at a number: "12.5 mm". */
        public String text(double number) {
            return Quantity.of(unit.toSi(Math.round(number * 1e6) / 1e6), unit).text();
        }

        /** The number of a text, within the track; zero where it is none. */
        public double number(String text) {
            try {
                double number =
                        unit.fromSi(Quantity.parse(text, unit.dimension()).si());
                return Math.max(low, Math.min(high, number));
            } catch (QuantityException none) {
                return 0;
            }
        }

        /** A text as it is shown beside the track. */
        public String shown(String text) {
            return Numbers.signed(number(text), digits) + " " + unit.symbol();
        }
    }

    /**
     * What is known when a question is answered.
     *
     * @param asking as it came from the desk
     * @param work the job, its car as it is asked: as road tests have corrected it, where that is wanted
     * @param turns of the set-ups that are shown, and of the base
     * @param balances those that are known from before
     */
    record Asked(Asking asking, Work work, Map<String, TurnedSetup> turns, Balances balances) {
        /** Of the car as it stands in the file, with no balance that would be known from before. */
        public Asked(Asking asking, Map<String, TurnedSetup> turns) {
            this(asking, asking.work(), turns, new Balances());
        }

        public Units units() {
            return asking.units();
        }

        /** The set-ups that are shown, in the order of the file. */
        public List<TurnedSetup> shown() {
            return work().shown().stream()
                    .flatMap(setup -> Optional.ofNullable(turns.get(setup.name())).stream())
                    .toList();
        }

        public TurnedSetup active() {
            return java.util.Objects.requireNonNull(turns.get(work().active()));
        }

        public TurnedSetup base() {
            return java.util.Objects.requireNonNull(turns.get(work().base()));
        }

        /** How a set-up turns the other way, as far as its limit. */
        public TurnAnswer turnedBack(TurnedSetup one) {
            Direction back = work().direction().other();
            return balances.of(one.standing(), List.of(), work().radius(), back).turn();
        }

        /** What stands in a field. */
        public String wish(Field field) {
            return asking.wish(field.key()).orElse(field.start());
        }
    }
}
