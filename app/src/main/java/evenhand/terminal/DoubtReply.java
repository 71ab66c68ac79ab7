package evenhand.terminal;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Trial;
import evenhand.car.LoadCase;
import evenhand.doubt.Doubt;
import evenhand.doubt.Measurement;
import evenhand.doubt.Spread;
import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.AimText;
import evenhand.words.DoubtWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What {@code doubt} answers: set-ups and what doubt leaves of their answers.
 *
 * @param answered the set-ups that turn, in order; what is left of them stands in the same order
 * @param unanswered those that do not turn as they are given
 * @param answer nothing where none of them turns
 */
record DoubtReply(
        Scenario scenario,
        Trial trial,
        Optional<Aim> aim,
        int samples,
        long seed,
        List<Setup> answered,
        List<SetupAnswer.None> unanswered,
        Optional<Doubt.Answer> answer)
        implements Reply {
    private record Doubted(Setup setup, Optional<Aim> aim, Doubt.Left left) implements SetupAnswer {
        List<String> words() {
            return DoubtWords.alone(left, aim, Units.METRIC);
        }
    }

    /** A set-up against the first one. */
    private record Apart(Setup setup, Setup base, Doubt.Left left, Doubt.Left alone) {
        List<String> words() {
            return DoubtWords.apart(setup.name(), base.name(), left, alone, Units.METRIC);
        }
    }

    /** What is to be measured next, for the sake of a figure. */
    private record Next(Measurement measurement, Spread spread) {
        Criterion criterion() {
            return spread.judged().criterion();
        }
    }

    private static final Contents<Spread.Cause> CAUSE = Contents.of(Spread.Cause.class)
            .text("path", Spread.Cause::path)
            .number("share", Spread.Cause::share)
            .number("standardError", Spread.Cause::standardError);

    private static final Contents<Spread> FIGURE = Contents.of(Spread.class)
            .with(Spread::judged, SharedParts.JUDGED)
            .judgedIfAny("nominal", DoubtReply::criterion, Spread::nominal)
            .judged("low", DoubtReply::criterion, Spread::low)
            .judged("high", DoubtReply::criterion, Spread::high)
            .judged("median", DoubtReply::criterion, Spread::median)
            .judged("sd", DoubtReply::criterion, Spread::standardDeviation)
            .number("noAnswerShare", Spread::noAnswerShare)
            .list("causes", Spread::causes, CAUSE);

    private static final Contents<Doubt.Left> FIGURES =
            Contents.of(Doubt.Left.class).list("figures", Doubt.Left::spreads, FIGURE);

    /** An aim and the chance that it is met. */
    private record Chance(Aim aim, OptionalDouble chance) {}

    private static final Contents<Chance> CHANCE = Contents.of(Chance.class)
            .text("text", chance -> AimText.write(chance.aim(), Units.METRIC))
            .numberIfAny("chance", Chance::chance);

    private static final Contents<Doubted> DOUBTED = Contents.of(Doubted.class)
            .with(Doubted::left, FIGURES.number("noAnswerShare", Doubt.Left::noAnswerShare))
            .partIfAny(
                    "aim",
                    doubted -> doubted.aim()
                            .map(aim -> new Chance(aim, doubted.left().chance())),
                    CHANCE)
            .sentences("words", Doubted::words);

    private static final Contents<Apart> DIFFERENCE = Contents.of(Apart.class)
            .text("name", apart -> apart.setup().name())
            .text("base", apart -> apart.base().name())
            .with(Apart::left, FIGURES)
            .sentences("words", Apart::words);

    private static final Contents<Next> NEXT = Contents.of(Next.class)
            .text("path", next -> next.measurement().tolerance().path())
            .text("how", next -> next.measurement().tolerance().number().slot().how())
            .number("tolerance", next -> next.measurement().halfWidth())
            .text(
                    "toleranceUnit",
                    next -> next.measurement().tolerance().number().dimension().jsonUnit())
            .with(next -> next.spread().judged(), SharedParts.JUDGED)
            .judged("low", Next::criterion, next -> next.measurement().low())
            .judged("high", Next::criterion, next -> next.measurement().high());

    private static final Contents<DoubtReply> REPLY = Contents.of(DoubtReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .whole("samples", DoubtReply::samples)
            .whole("seed", DoubtReply::seed)
            .list(
                    "setups",
                    DoubtReply::setups,
                    SharedParts.setup(
                            SetupAnswer.class, Contents.of(SetupAnswer.class).where(Doubted.class, DOUBTED)))
            .listIfAny("differences", DoubtReply::apart, DIFFERENCE)
            .listIfKnown("measureNext", DoubtReply::measureNext, NEXT);

    /** In CSV a row per figure and cause; a difference has its base in its row. */
    private record Row(String setup, Optional<String> base, Doubt.Left left) {}

    private static final Contents<Row> ROWS = Contents.of(Row.class)
            .text("setup", Row::setup)
            .textIfAny("base", Row::base)
            .with(Row::left, FIGURES);

    DoubtReply {
        answered = List.copyOf(answered);
        unanswered = List.copyOf(unanswered);
    }

    private static Criterion criterion(Spread spread) {
        return spread.judged().criterion();
    }

    /** All that were asked, in the order of the file. */
    @Override
    public List<SetupAnswer> setups() {
        List<SetupAnswer> all = new ArrayList<>(unanswered);
        for (int i = 0; i < answered.size(); i++) {
            all.add(new Doubted(
                    answered.get(i), aim, answer.orElseThrow().cars().get(i)));
        }
        all.sort(Comparator.comparingInt(one -> scenario.setups().indexOf(one.setup())));
        return all;
    }

    private List<Apart> apart() {
        List<Apart> all = new ArrayList<>();
        List<Doubt.Left> differences = answer.map(Doubt.Answer::differences).orElse(List.of());
        for (int i = 0; i < differences.size(); i++) {
            Doubt.Left alone = answer.orElseThrow().cars().get(i + 1);
            all.add(new Apart(answered.get(i + 1), answered.get(0), differences.get(i), alone));
        }
        return all;
    }

    private Optional<List<Next>> measureNext() {
        return answer.map(known -> known.measureNext().stream()
                .map(one -> new Next(one, known.cars().get(0).spreads().get(0)))
                .toList());
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        List<Doubt.Left> cars = answer.map(Doubt.Answer::cars).orElse(List.of());
        for (int i = 0; i < cars.size(); i++) {
            rows.add(new Row(answered.get(i).name(), Optional.empty(), cars.get(i)));
        }
        for (Apart apart : apart()) {
            rows.add(new Row(apart.setup().name(), Optional.of(apart.base().name()), apart.left()));
        }
        return rows.stream().filter(row -> !row.left().spreads().isEmpty()).toList();
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    @Override
    public String command() {
        return "doubt";
    }

    @Override
    public byte[] json() {
        return JsonForm.write(command(), REPLY, this);
    }

    @Override
    public String csv(Units units) {
        return CsvForm.write(ROWS, rows(), units);
    }

    @Override
    public String text(Console console, Units units) {
        return new DoubtTables(console, units).write(this);
    }
}
