package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.chart.EffectCharts;
import evenhand.chart.TurnCharts;
import evenhand.choice.Effect;
import evenhand.look.SetupStyle;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Figures;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.ChangeWords;
import evenhand.words.Complaint;
import evenhand.words.EffectWords;
import java.util.List;

/** Which single change helps against what the driver complains of. */
final class SpringsOrBars implements Question {
    private static final List<String> COMPLAINTS = List.of(
            "pushes gently",
            "pushes briskly",
            "pushes at the limit",
            "slides gently",
            "slides briskly",
            "slides at the limit",
            "leans",
            "spins the inside wheel",
            "rides hard",
            "wallows");

    private static final Field COMPLAINT = new Field("complaint", "it", COMPLAINTS, "pushes at the limit");
    private static final int MOST_BARS = 10;
    private static final int MOST_NEXT = 4;

    @Override
    public String key() {
        return "effects";
    }

    @Override
    public String words() {
        return "Springs or bars?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return List.of(COMPLAINT);
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.joined(active, Knobs.springsAndBars(active), Knobs.rollCentres(active));
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        TurnedSetup active = asked.active();
        String wish = asked.wish(COMPLAINT);
        Trial trial = asked.work().usualTrial();
        Complaint complaint = Remedies.complaint(COMPLAINTS.contains(wish) ? wish : COMPLAINT.start(), active, trial);
        List<Effect> helping = Remedies.helping(active, trial, complaint);
        SetupStyle style = new SetupStyle(SideBySide.index(asked, active.setup().name()));
        List<String> sentences = EffectWords.help(complaint, helping, asked.units());
        return new Reply(
                sentences.stream()
                        .map(said -> sentences.indexOf(said) == 0 ? Said.named(active.setup()) + ": " + said : said)
                        .toList(),
                List.of(),
                List.of(
                        EffectCharts.effects(
                                active.setup().name(), style, helping, complaint.judged(), MOST_BARS, asked.units()),
                        TurnCharts.understeerGradient(SideBySide.cars(asked), asked.units())),
                table(helping, complaint, asked),
                helping.stream()
                        .limit(MOST_NEXT)
                        .map(effect -> Remedies.next(active, asked, complaint, effect))
                        .toList());
    }

    private static Figures table(List<Effect> helping, Complaint complaint, Asked asked) {
        Figures.Builder table = new Figures.Builder(List.of("one step", "moves it by"));
        table.heading("What helps, best first");
        for (Effect effect : helping) {
            table.row(
                    ChangeWords.name(effect.step().path()),
                    "",
                    List.of(
                            EffectWords.step(effect, asked.units()),
                            effect.move(complaint.judged())
                                    .map(move -> EffectWords.difference(move, asked.units()))
                                    .orElse("–")));
        }
        return table.build();
    }
}
