package evenhand.window.question;

import evenhand.answers.Aim;
import evenhand.answers.Trial;
import evenhand.catalogue.Entries;
import evenhand.choice.Span;
import evenhand.quantity.InvalidValue;
import evenhand.scenario.AimReading;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question.Field;
import evenhand.window.question.SearchChanges.Offer;
import evenhand.words.ChangeWords;
import evenhand.words.LinkAimWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The fields of a search for a balance: what may change, and what for. */
final class SearchFields {
    private static final Field AIM = new Field("aim", "so that", List.of(), "understeer near the limit 0 deg/g")
            .hinting("understeer 0.8 deg/g at 0.5 g")
            .beginningALine();
    private static final Field KEEPS = Field.empty("keeps", "keeping", "nothing, or for example: limit at least 0.8 g");

    /**
     * What is asked for.
     *
     * @param car that is searched: with a bar of no stiffness where one that is not fitted may change
     * @param steps that can be built, in the order of the changes
     */
    record Wanted(Entries car, List<Span> spans, Aim aim, List<Aim> keeps, List<OptionalDouble> steps, Trial trial) {
        /** The same of one change in another range. */
        Wanted in(Span span, OptionalDouble step) {
            return new Wanted(car, List.of(span), aim, keeps, List.of(step), trial);
        }
    }

    private final Asking asking;
    private final SearchChanges changes;

    SearchFields(Asking asking) {
        this.asking = asking;
        this.changes = new SearchChanges(asking, offer(asking.work().activeSetup()));
    }

    /** What the car has, then bars that it could have. */
    private static Offer offer(Setup setup) {
        List<String> noBars = Knobs.barsNotFitted(setup);
        List<String> paths = Stream.concat(
                        Knobs.here(
                                setup,
                                Stream.of(
                                                Knobs.springsAndBars(setup),
                                                Knobs.rollCentres(setup),
                                                Knobs.heights(),
                                                Knobs.linkSettings(setup))
                                        .flatMap(List::stream))
                                .stream(),
                        noBars.stream())
                .toList();
        String bar = "rear.bar.rollStiffness";
        return new Offer(
                Map.of("", paths),
                paths.contains(bar) && !noBars.contains(bar) ? bar : "rear.spring.rate",
                path -> ChangeWords.name(path) + (noBars.contains(path) ? Knobs.NOT_FITTED : ""));
    }

    List<Field> all() {
        List<Field> fields = new ArrayList<>(changes.fields());
        fields.addAll(List.of(AIM, KEEPS, changes.grid()));
        return fields;
    }

    /**
     * What stands in the fields.
     *
     * @throws InvalidValue if it cannot be read; the message is a sentence that names the field
     */
    Wanted read() {
        return read(asking, aim(asking, AIM, wish(asking, AIM)), KEEPS, changes);
    }

    /** The same with an aim that was put together elsewhere. */
    static Wanted read(Asking asking, Aim aim, Field keeping, SearchChanges changes) {
        List<Aim> keeps = new ArrayList<>();
        for (String text : pieces(wish(asking, keeping))) {
            Aim keep = aim(asking, keeping, text);
            if (Stream.concat(Stream.of(aim), keeps.stream()).anyMatch(keep::contradicts)) {
                throw wrong(keeping, text, "contradicts what else is asked; no car can do both");
            }
            keeps.add(keep);
        }
        Entries car = changes.car();
        List<Span> spans = changes.spans(car);
        Trial trial = asking.work().usualTrial();
        for (Aim one : Stream.concat(Stream.of(aim), keeps.stream()).toList()) {
            trial = trial.with(one.judged());
        }
        return new Wanted(car, spans, aim, keeps, changes.steps(spans), trial);
    }

    private static String wish(Asking asking, Field field) {
        return asking.wish(field.key()).orElse(field.start());
    }

    /** Apart by semicolons. */
    static List<String> pieces(String text) {
        return Arrays.stream(text.split(";", -1))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    private static Aim aim(Asking asking, Field field, String text) {
        Aim aim;
        try {
            aim = AimReading.read(text);
        } catch (InvalidValue wrong) {
            throw wrong(field, text, String.valueOf(wrong.getMessage()));
        }
        Optional<String> missing = LinkAimWords.missing(
                aim.judged().criterion(), asking.work().activeSetup().car());
        if (missing.isPresent()) {
            throw wrong(field, text, "cannot be asked: " + missing.get());
        }
        return aim;
    }

    static InvalidValue wrong(Field field, String text, String what) {
        return new InvalidValue(field.key(), "\"" + field.words() + "\": \"" + text + "\" " + what + ".");
    }
}
