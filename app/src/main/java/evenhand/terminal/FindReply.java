package evenhand.terminal;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Trial;
import evenhand.car.LoadCase;
import evenhand.choice.Finding;
import evenhand.choice.Span;
import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.quantity.Unit;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.words.AimText;
import evenhand.words.FindWords;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@code find} answers. */
record FindReply(Scenario scenario, Trial trial, Setup setup, Finding finding) implements Reply {
    /** What came of an aim, with one change or several. */
    private record Outcome(
            Aim aim,
            boolean met,
            double achieved,
            Finding.Reach reach,
            List<Finding.Kept> kept,
            List<Finding.Note> notes) {
        static Outcome of(Finding.One one) {
            return new Outcome(one.aim(), one.met(), one.achieved(), one.reach(), one.kept(), one.notes());
        }

        static Outcome of(Finding.Several all) {
            return new Outcome(all.aim(), all.met(), all.achieved(), all.reach(), all.kept(), all.notes());
        }

        Criterion criterion() {
            return aim.judged().criterion();
        }
    }

    /** One change, and what was found for it, SI. */
    private record Changed(Span change, double value) {
        static List<Changed> of(Finding.Several several) {
            List<Changed> all = new ArrayList<>();
            for (int i = 0; i < several.changes().size(); i++) {
                all.add(new Changed(several.changes().get(i), several.values().get(i)));
            }
            return all;
        }
    }

    private static final Contents<Changed> CHANGE = Contents.of(Changed.class)
            .text("change", changed -> changed.change().path());

    private static final Contents<Changed> VALUE = Contents.of(Changed.class)
            .number("value", Changed::value)
            .text(
                    "valueUnit",
                    changed -> changed.change().adjustable().dimension().jsonUnit());

    private static final Contents<Outcome> AIM = Contents.of(Outcome.class)
            .with(outcome -> outcome.aim().judged(), SharedParts.JUDGED)
            .judged("aim", Outcome::criterion, outcome -> outcome.aim().value())
            .text("status", outcome -> outcome.met() ? "met" : "nearest");

    private static final Contents<Outcome> REACH = Contents.of(Outcome.class)
            .judged("lowest", Outcome::criterion, outcome -> outcome.reach().lowest())
            .judged("highest", Outcome::criterion, outcome -> outcome.reach().highest());

    private static final Contents<Outcome> ACHIEVED =
            Contents.of(Outcome.class).judged("achieved", Outcome::criterion, Outcome::achieved);

    private static final Contents<Finding.Kept> KEPT = Contents.of(Finding.Kept.class)
            .text("keep", kept -> AimText.write(kept.keep(), Units.METRIC))
            .judgedIfAny("value", kept -> kept.keep().judged().criterion(), Finding.Kept::value)
            .text("unit", kept -> kept.keep().judged().criterion().unit().symbol())
            .flag("ok", Finding.Kept::ok);

    private static final Contents<Outcome> REST = Contents.of(Outcome.class)
            .listIfAny("kept", Outcome::kept, KEPT)
            .texts(
                    "notes",
                    outcome -> outcome.notes().stream().map(Finding.Note::key).toList());

    private static final Contents<Finding.One> ONE = Contents.of(Finding.One.class)
            .with(one -> new Changed(one.change(), one.value()), CHANGE)
            .with(Outcome::of, AIM)
            .with(one -> new Changed(one.change(), one.value()), VALUE)
            .with(Outcome::of, ACHIEVED.part("reach", outcome -> outcome, REACH))
            .numbers("solutions", Finding.One::solutions)
            .judged("slopeAtValue", one -> one.aim().judged().criterion(), Finding.One::slope)
            .curve("curve", FindReply::curve)
            .with(Outcome::of, REST);

    private static final Contents<Finding.Several> SEVERAL = Contents.of(Finding.Several.class)
            .list("changes", Changed::of, CHANGE.with(changed -> changed, VALUE))
            .with(Outcome::of, AIM.with(outcome -> outcome, ACHIEVED).part("reach", outcome -> outcome, REACH))
            .with(Outcome::of, REST);

    private static final Contents<FindReply> REPLY = Contents.of(FindReply.class)
            .with(reply -> reply, SharedParts.OPENING)
            .text("setup", reply -> reply.setup().name())
            .with(
                    FindReply::finding,
                    Contents.of(Finding.class).where(Finding.One.class, ONE).where(Finding.Several.class, SEVERAL))
            .partIfAny("noAnswer", FindReply::noAnswer, SharedParts.NO_ANSWER)
            .sentences("words", reply -> FindWords.of(reply.finding(), Units.METRIC))
            .with(FindReply::setup, SharedParts.SETUP_REMARKS);

    /** A change as CSV has it, in the unit that a person would write. */
    private record Row(Setup setup, Changed changed, Outcome outcome) {
        Unit unit(Units units) {
            return units == Units.METRIC
                    ? changed.change().adjustable().unit()
                    : units.of(changed.change().adjustable().dimension());
        }
    }

    private static final Contents<Row> ROWS = Contents.of(Row.class)
            .text("setup", row -> row.setup().name())
            .with(Row::changed, CHANGE)
            .numberIn(
                    units -> "value",
                    (row, units) -> row.unit(units).fromSi(row.changed().value()))
            .textIn("valueUnit", (row, units) -> row.unit(units).symbol())
            .with(Row::outcome, AIM.with(outcome -> outcome, ACHIEVED).with(outcome -> outcome, REACH));

    private static List<List<Double>> curve(Finding.One one) {
        Unit unit = one.aim().judged().criterion().unit();
        return one.curve().stream()
                .map(point -> List.of(point.at(), unit.fromSi(point.figure())))
                .toList();
    }

    private List<Row> rows() {
        if (finding instanceof Finding.One one) {
            return List.of(new Row(setup, new Changed(one.change(), one.value()), Outcome.of(one)));
        }
        return finding instanceof Finding.Several several
                ? Changed.of(several).stream()
                        .map(changed -> new Row(setup, changed, Outcome.of(several)))
                        .toList()
                : List.of();
    }

    @Override
    public Optional<LoadCase> load() {
        return trial.load();
    }

    @Override
    public String command() {
        return "find";
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
        return new FindTables(console, units).write(this);
    }

    @Override
    public List<SetupAnswer.None> setups() {
        return noAnswer().map(why -> new SetupAnswer.None(setup, why)).stream().toList();
    }

    private Optional<SetupAnswer.NoAnswer> noAnswer() {
        return finding instanceof Finding.NoValue none
                ? Optional.of(new SetupAnswer.NoAnswer(none.reason(), none.text()))
                : Optional.empty();
    }
}
