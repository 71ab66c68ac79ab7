package evenhand.scenario;

import evenhand.answers.Aim;
import evenhand.answers.Progress;
import evenhand.car.LoadCase;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Deviation;
import evenhand.doubt.Tolerance;
import evenhand.roadtest.Decay;
import evenhand.roadtest.Log;
import evenhand.roadtest.Measured;
import evenhand.roadtest.Observation;
import evenhand.roadtest.RoadTest;
import evenhand.roadtest.SteadyPieces;
import evenhand.roadtest.Study;
import evenhand.roadtest.Trace;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The road tests of a scenario with all that was read, that of their logs with it.
 *
 * @param tests those that were asked for and have a reading, in the order of the file
 * @param problems of logs, each of its own file
 * @param silent what was left out, and why, a clause each
 * @param traces logs that say how fast the car went, by where they stand in the file
 */
public record RoadTests(List<RoadTest> tests, List<Problem> problems, List<String> silent, Map<String, Trace> traces) {
    private static final String DOES_NOT_SWING =
            "shows no swing that dies out: it needs height or acceleration from before the corner is let go until it rests,"
                    + " and a damper that lets it swing";

    public RoadTests {
        tests = List.copyOf(tests);
        problems = List.copyOf(problems);
        silent = List.copyOf(silent);
        traces = Collections.unmodifiableMap(new LinkedHashMap<>(traces));
    }

    /** Reads the tests of these names, all where none is named, of the car as it stands in the file. */
    public static RoadTests of(Scenario scenario, List<String> names) {
        List<RoadTest> tests = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        Map<String, Trace> traces = new LinkedHashMap<>();
        for (int place = 0; place < scenario.roadTests().size(); place++) {
            TestGiven given = scenario.roadTests().get(place);
            if (names.isEmpty() || names.contains(given.name())) {
                RoadTest test = read(scenario, place, given, problems, silent, traces);
                if (!test.observations().isEmpty()) {
                    tests.add(test);
                }
            }
        }
        return new RoadTests(tests, problems, silent, traces);
    }

    /**
     * What is asked of the tests: what they say of some set-ups of the file, each as it stands there.
     *
     * @param aim what next readings are to narrow
     */
    public Study.Question asked(
            List<Setup> setups, Optional<Aim> aim, int samples, long seed, Tolerance.Unsaid unsaid, Progress progress) {
        return new Study.Question(
                setups.stream().map(Setup::name).toList(),
                setups.stream()
                        .map(setup -> setup.entries().off(Deviation.NONE))
                        .toList(),
                tests,
                aim,
                samples,
                seed,
                unsaid,
                progress);
    }

    private static RoadTest read(
            Scenario scenario,
            int place,
            TestGiven given,
            List<Problem> problems,
            List<String> silent,
            Map<String, Trace> traces) {
        Setup setup = scenario.setup(given.setup()).orElseThrow();
        Optional<LoadCase> load = given.load().flatMap(scenario::loadCase);
        List<Observation> all = new ArrayList<>(given.observations());
        boolean hasRatio = Catalogue.entry(setup.entries(), "steering.ratio").isPresent();
        Optional<Double> radius = given.circle().map(Measured::value);
        for (int i = 0; i < given.logs().size(); i++) {
            TestGiven.LogGiven one = given.logs().get(i);
            Optional<Log> log = LogFile.read(Path.of(scenario.file()), one, problems);
            if (log.isPresent()) {
                List<SteadyPieces.Steady> pieces = SteadyPieces.all(log.get(), radius);
                String name = "\"" + one.file() + "\" of \"" + given.name() + "\" ";
                if (SteadyPieces.tellsPace(log.get(), radius)) {
                    Trace trace = new Trace(
                            given.name(),
                            one.file(),
                            log.get().times(),
                            SteadyPieces.lateralAcceleration(log.get(), radius),
                            pieces,
                            one.leftOut());
                    traces.put("roadTests[" + place + "].logs[" + i + "]", trace);
                    pieces = pieces.stream()
                            .filter(piece -> !trace.leavesOut(piece))
                            .toList();
                    one.leftOut().stream()
                            .filter(time -> trace.pieces().stream().noneMatch(piece -> piece.holds(time)))
                            .forEach(time -> silent.add(name + "has no steady piece at " + time + " s to leave out"));
                }
                List<Observation.Reading> steady = pieces.stream()
                        .flatMap(piece -> piece.readings().stream())
                        .filter(reading -> !reading.channel().needsCircle() || (radius.isPresent() && hasRatio))
                        .toList();
                if (steady.isEmpty() && one.leftOut().isEmpty()) {
                    silent.add(name + why(log.get(), given));
                }
                all.addAll(steady);
            }
        }
        for (TestGiven.BounceRecord one : given.records()) {
            Optional<Log> log = LogFile.bounced(Path.of(scenario.file()), one.file(), problems);
            if (log.isPresent()) {
                Optional<Decay> decay = decay(log.get());
                decay.ifPresentOrElse(
                        own -> {
                            all.add(new Observation.Bounce(one.axle(), Observation.Swing.FREQUENCY, own.frequency()));
                            all.add(new Observation.Bounce(one.axle(), Observation.Swing.NEXT_SWING, own.nextSwing()));
                        },
                        () -> silent.add("\"" + one.file() + "\" of \"" + given.name() + "\" " + DOES_NOT_SWING));
            }
        }
        if (given.observations().isEmpty()
                && given.logs().isEmpty()
                && given.records().isEmpty()) {
            silent.add("\"" + given.name() + "\" has no readings");
        }
        return new RoadTest(
                given.name(),
                given.setup(),
                setup.entries().off(Deviation.NONE),
                load,
                given.grip(),
                given.straightAhead(),
                given.circle(),
                all);
    }

    private static Optional<Decay> decay(Log log) {
        return Log.Kind.BOUNCED.stream()
                .flatMap(kind -> log.column(kind).stream())
                .findFirst()
                .flatMap(series -> Decay.of(log.times(), series.values()));
    }

    private static String why(Log log, TestGiven given) {
        if (!SteadyPieces.tellsPace(log, given.circle().map(Measured::value))) {
            return "does not say how fast the car turned: it needs speed on a circle, speed with yaw rate, or lateral"
                    + " acceleration";
        }
        boolean channels = log.column(Log.Kind.STEERING_WHEEL).isPresent()
                || log.column(Log.Kind.ROLL).isPresent();
        return channels
                ? "has no two seconds that are steady above 0.05 g"
                : "has neither steering wheel nor lean, of which alone something is learnt";
    }
}
