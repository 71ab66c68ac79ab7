package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.chart.Chart;
import evenhand.chart.RoadTestCharts;
import evenhand.doubt.Tolerance;
import evenhand.forms.RoadTestTable;
import evenhand.forms.Table;
import evenhand.roadtest.Channel;
import evenhand.roadtest.Findings;
import evenhand.roadtest.Observation;
import evenhand.roadtest.SteadyPieces;
import evenhand.roadtest.Study;
import evenhand.roadtest.Trace;
import evenhand.scenario.RoadTests;
import evenhand.scenario.Scenario;
import evenhand.scenario.Setup;
import evenhand.scenario.TestGiven;
import evenhand.window.desk.Asking;
import evenhand.window.desk.EditAct;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TrialAct;
import evenhand.window.desk.WhichCar;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.roadtest.RoadTestWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was read on the road beside what the file expects: whether both agree, what moved, what to read next. */
final class WhatTheRoadSaid implements Question {
    private static final String ALL = "all of the file";

    /** Cars that are sampled: enough for intervals that are read with two digits. */
    private static final int SAMPLES = 128;

    private static final long SEED = 1;

    /** So many warnings are read first. */
    private static final int MOST_LARGE = 2;

    /** Of a log, so many steady pieces are offered to be left out. */
    private static final int MOST_PIECES = 12;

    private static final Reply.Next WRITE_DOWN = new Reply.Next(
            "write down readings at the side of the circle", Optional.of(new LookAct.TurnTo(Look.Page.CIRCLE)));

    @Override
    public String key() {
        return ROAD;
    }

    @Override
    public Group group() {
        return Group.ROAD;
    }

    @Override
    public String words() {
        return "What did the road say?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        List<TestGiven> tests = asking.work().scenario().roadTests();
        return tests.size() < 2 ? List.of() : List.of(testField(tests));
    }

    private static Field testField(List<TestGiven> tests) {
        return new Field(
                "test",
                "tests",
                Stream.concat(Stream.of(ALL), tests.stream().map(TestGiven::name))
                        .toList(),
                ALL);
    }

    @Override
    public List<String> adjustments(Setup active) {
        return List.of();
    }

    @Override
    public boolean asksTheFile() {
        return true;
    }

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        Scenario scenario = asked.work().scenario();
        List<TestGiven> given = scenario.roadTests();
        if (given.isEmpty()) {
            return noTests();
        }
        String chosen = given.size() < 2 ? ALL : asked.wish(testField(given));
        RoadTests tests = RoadTests.of(scenario, chosen.equals(ALL) ? List.of() : List.of(chosen));
        if (!tests.problems().isEmpty()) {
            return Reply.only(tests.problems().get(0) + ".");
        }
        if (tests.tests().isEmpty()) {
            return Reply.only("No road test has a reading: " + String.join("; ", tests.silent()) + ".");
        }
        Optional<Findings> found = Study.of(tests.asked(
                scenario.setups(), Optional.empty(), SAMPLES, SEED, Tolerance.Unsaid.AS_A_WORKSHOP_MEASURES, progress));
        return found.isEmpty()
                ? Reply.only("A set-up that was driven does not turn by the file, or its bounced end does not swing.")
                : reply(asked, tests, found.get());
    }

    private static Reply noTests() {
        return new Reply(
                List.of("The file has no road test yet: drive a circle, and type what was read."),
                List.of(
                        new Reply.Paragraph(
                                "What to read",
                                List.of(
                                        "On a circle of known radius, both ways round, from gentle to brisk: the time of three laps, the angle"
                                                + " at the steering wheel from a mark on its rim, the lean by heights at the sills.",
                                        "Then the pace at which an end goes, and how often a pressed corner swings.",
                                        "Ctrl+T opens the page to write it down at the side of the circle; `evenhand roadtest FILE --card` writes a sheet to take along."))),
                List.of(),
                Table.NONE,
                List.of(WRITE_DOWN));
    }

    private static Reply reply(Asked asked, RoadTests tests, Findings found) {
        RoadTestWords words = new RoadTestWords(asked.units());
        List<String> said = words.all(found);
        List<Reply.Paragraph> more = new ArrayList<>();
        // what nobody may miss stands behind the verdict, and large
        int large = 1 + Math.min(MOST_LARGE, words.warnings(found).size());
        more.add(new Reply.Paragraph("", said.subList(large, said.size())));
        more.add(new Reply.Paragraph(Straight.MIND, List.of(RoadTestWords.CAUTION)));
        if (!tests.silent().isEmpty()) {
            more.add(new Reply.Paragraph(
                    "Left out", tests.silent().stream().map(why -> why + ".").toList()));
        }
        RoadTestTable tables = new RoadTestTable(found, asked.units());
        List<Chart> charts = charts(found);
        tests.traces().values().stream().map(RoadTestCharts::trace).forEach(charts::add);
        return new Reply(
                said.subList(0, large), more, charts, List.of(), tables.inputs(), next(asked, words, tests, found));
    }

    private static List<Reply.Next> next(Asked asked, RoadTestWords words, RoadTests tests, Findings found) {
        List<Reply.Next> all = new ArrayList<>();
        words.next(found).ifPresent(next -> all.add(new Reply.Next(next, Optional.empty())));
        if (found.agreement().agrees() && !asked.work().which().isTested()) {
            all.add(new Reply.Next(
                    "ask every question of the corrected car",
                    Optional.of(new TrialAct.ChooseCar(WhichCar.AS_TESTED))));
        }
        all.add(WRITE_DOWN);
        tests.traces()
                .forEach((path, trace) -> trace.pieces().stream()
                        .limit(MOST_PIECES)
                        .forEach(piece -> all.add(takingOrLeaving(path, trace, piece))));
        return all;
    }

    /** A steady piece of a log is left out, or taken in again. */
    private static Reply.Next takingOrLeaving(String path, Trace trace, SteadyPieces.Steady piece) {
        String where = trace.file() + " from " + Numbers.fixed(piece.from(), 1) + " s to "
                + Numbers.fixed(piece.to(), 1) + " s, "
                + Units.exactPace(Math.abs(piece.lateralAcceleration()))
                + (piece.lateralAcceleration() > 0 ? " left" : " right");
        List<Double> others =
                trace.leftOut().stream().filter(time -> !piece.holds(time)).toList();
        List<Double> wanted = new ArrayList<>(others);
        boolean out = trace.leavesOut(piece);
        if (!out) {
            wanted.add((piece.from() + piece.to()) / 2);
        }
        Optional<String> json = wanted.isEmpty()
                ? Optional.empty()
                : Optional.of(wanted.stream()
                        .sorted()
                        .map(time -> "\"" + Numbers.plain(time, 2) + " s\"")
                        .collect(Collectors.joining(", ", "[", "]")));
        return new Reply.Next(
                (out ? "take in again " : "leave out ") + where,
                Optional.of(new EditAct.SetInFile(path + ".leftOut", json)));
    }

    private static List<Chart> charts(Findings found) {
        List<Chart> charts = new ArrayList<>();
        for (Findings.OfTest test : found.tests()) {
            for (Channel channel : Channel.values()) {
                boolean read = test.seen().stream()
                        .anyMatch(one -> one.observation() instanceof Observation.Reading reading
                                && reading.channel() == channel);
                if (read) {
                    charts.add(RoadTestCharts.readings(test, channel));
                }
            }
        }
        charts.add(RoadTestCharts.moved(found));
        return charts;
    }
}
