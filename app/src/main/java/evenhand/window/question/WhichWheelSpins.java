package evenhand.window.question;

import evenhand.answers.DriveFigures;
import evenhand.answers.Progress;
import evenhand.chart.Chart;
import evenhand.chart.LaunchCharts;
import evenhand.chart.LaunchCharts.Launching;
import evenhand.forms.DriveTable;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.scenario.Setup;
import evenhand.straight.Driving;
import evenhand.turn.Wheel;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.window.desk.Verdict;
import evenhand.words.Alike;
import evenhand.words.Units;
import evenhand.words.drive.DriveToGive;
import evenhand.words.drive.DriveWords;
import evenhand.words.drive.DrivenSetup;
import evenhand.words.drive.DrivenSetup.Driven;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Off the line: which wheel spins first, what grip, differential and gears give, what another axle ratio or tyre does. */
final class WhichWheelSpins implements Question {
    private static final Field SPEED = new Field("speed", "engine speeds at", List.of(), "100 km/h");

    @Override
    public String key() {
        return "drive";
    }

    @Override
    public String words() {
        return "Which wheel spins first?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return asking.work().activeSetup().car().drive().gears().isEmpty() ? List.of() : List.of(SPEED);
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.here(
                active,
                Stream.of(
                        "drive.finalDrive",
                        "drive.differential.biasRatio",
                        "rear.spring.rate",
                        "front.spring.rate",
                        "rear.bar.rollStiffness",
                        "front.bar.rollStiffness",
                        "rear.sideView.swingCentreHeight",
                        "rear.tyre.rollingRadius",
                        "rear.lowered",
                        "front.lowered"));
    }

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        Optional<String> noSpeed = SpeedField.refusal(asked.wish(SPEED));
        if (noSpeed.isPresent()) {
            return Reply.only(noSpeed.get());
        }
        double speed = SpeedField.speed(asked.wish(SPEED));
        List<TurnedSetup> shown = asked.shown();
        Setup first = asked.work().baseSetup();
        Map<String, List<String>> said = new LinkedHashMap<>();
        List<Driven> driven = new ArrayList<>();
        for (TurnedSetup one : shown) {
            progress.goOn();
            progress.at((double) said.size() / shown.size());
            DrivenSetup answer =
                    DrivenSetup.of(one.setup(), asked.work().trial().load(), speed, first);
            if (answer instanceof Driven drives) {
                driven.add(drives);
                said.put(one.setup().name(), drives.words(asked.units()));
            } else if (answer instanceof DrivenSetup.NoAnswer none) {
                said.put(one.setup().name(), List.of("No answer: " + none.text() + "."));
            }
        }
        List<Alike> alike = Alike.of(said);
        List<Reply.Paragraph> more = new ArrayList<>(Straight.below(asked, alike));
        boolean engineMissing =
                shown.stream().noneMatch(one -> DriveToGive.given(one.setup().car()));
        if (engineMissing) {
            more.add(0, new Reply.Paragraph("What to give first", DriveToGive.WHAT));
        }
        more.add(new Reply.Paragraph(Straight.MIND, DriveWords.CAUTIONS));
        return new Reply(
                        Straight.large(asked, alike),
                        more,
                        charts(asked, driven),
                        driven.isEmpty() ? Table.NONE : DriveTable.withGears(driven, speed, asked.units()),
                        engineMissing
                                ? List.of(Straight.toTheForm("give engine and gears under \"The car itself\""))
                                : List.of())
                .with(verdict(driven, asked.units()));
    }

    private static List<Chart> charts(Asked asked, List<Driven> driven) {
        List<Launching> launching = driven.stream()
                .map(one -> new Launching(
                        one.setup().name(),
                        new SetupStyle(SideBySide.look(asked, one.setup().name())),
                        one.rest().car(),
                        one.answer()))
                .toList();
        return Stream.of(
                        LaunchCharts.grip(launching),
                        LaunchCharts.wheelLoads(launching, asked.units()),
                        LaunchCharts.gears(launching))
                .filter(chart -> !chart.isEmpty())
                .toList();
    }

    private static Optional<Verdict> verdict(List<Driven> driven, Units units) {
        return new Lines<>(driven, Driven::setup, units, units::ofRide)
                .words(
                        "spins first",
                        "The wheel that spins first as the car pulls away harder.",
                        one -> one.answer()
                                .launch()
                                .flatMap(Driving.Launch::firstWheel)
                                .map(Wheel::words)
                                .orElse("none"),
                        one -> false)
                .figure(
                        "grip allows",
                        "How hard the car can pull away before that wheel spins.",
                        DriveFigures.GRIP,
                        one -> one.answer().launch())
                .figure(
                        "engine allows",
                        "How hard the engine can push in first gear.",
                        DriveFigures.ENGINE,
                        one -> one.answer().launch())
                .verdict();
    }
}
