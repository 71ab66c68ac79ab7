package evenhand.scenario;

import evenhand.catalogue.Nearest;
import evenhand.quantity.Unit;
import evenhand.quantity.Unseen;
import evenhand.roadtest.Log;
import evenhand.roadtest.Usual;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads what instruments wrote down: a header with {@value #TIME} and any of the known columns, then a moment a line. Columns that
 * are not known say nothing, unless they look like a slip of one that is.
 */
final class LogFile {
    static final String TIME = "time_s";

    /** A column and the unit in its name. */
    private record Column(Log.Kind kind, Unit unit) {}

    private static final Map<String, Column> DRIVEN = columns(Log.Kind.DRIVEN);
    private static final Map<String, Column> BOUNCED = columns(Log.Kind.BOUNCED);
    private static final Pattern NUMBER = Pattern.compile("[-+−]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final CsvRows.Cell START = new CsvRows.Cell("", 1, 1);
    private static final int SHOWN = 30;

    /** Nobody writes down a car in a turn less often, s. */
    private static final double LONGEST_STEP = 5;

    private static final double GREATEST = 1e7;

    private static Map<String, Column> columns(List<Log.Kind> kinds) {
        Map<String, Column> all = new LinkedHashMap<>();
        all.put("speed_km_per_h", new Column(Log.Kind.SPEED, Unit.of("km/h")));
        all.put("speed_m_per_s", new Column(Log.Kind.SPEED, Unit.of("m/s")));
        all.put("lateralAcceleration_g", new Column(Log.Kind.LATERAL_ACCELERATION, Unit.of("g")));
        all.put("yawRate_deg_per_s", new Column(Log.Kind.YAW_RATE, Unit.of("deg/s")));
        all.put("steeringWheel_deg", new Column(Log.Kind.STEERING_WHEEL, Unit.of("deg")));
        all.put("roll_deg", new Column(Log.Kind.ROLL, Unit.of("deg")));
        all.put("height_mm", new Column(Log.Kind.HEIGHT, Unit.of("mm")));
        all.put("acceleration_m_per_s2", new Column(Log.Kind.ACCELERATION, Unit.of("m/s^2")));
        all.put("acceleration_g", new Column(Log.Kind.ACCELERATION, Unit.of("g")));
        all.values().removeIf(column -> !kinds.contains(column.kind()));
        return all;
    }

    private Column column(String name) {
        return Objects.requireNonNull(columns.get(name));
    }

    private final TestGiven.LogGiven given;
    private final Map<String, Column> columns;
    private final Source source;
    private final Problems problems;
    private final List<Double> times = new ArrayList<>();
    private final Map<String, List<Double>> values = new LinkedHashMap<>();
    private List<String> header = List.of();

    private LogFile(TestGiven.LogGiven given, Map<String, Column> columns, Source source, Problems problems) {
        this.given = given;
        this.columns = columns;
        this.source = source;
        this.problems = problems;
    }

    /** Reads a log that stands beside a scenario; problems are of the log's own file. */
    static Optional<Log> read(Path scenario, TestGiven.LogGiven given, List<Problem> into) {
        return read(scenario, given, "log", DRIVEN, into);
    }

    /** The same of what a corner did when it was let go. */
    static Optional<Log> bounced(Path scenario, String record, List<Problem> into) {
        return read(scenario, new TestGiven.LogGiven(record, Map.of(), List.of()), "record", BOUNCED, into);
    }

    private static Optional<Log> read(
            Path scenario, TestGiven.LogGiven given, String what, Map<String, Column> columns, List<Problem> into) {
        Path file = scenario.resolveSibling(given.file());
        Problems problems = new Problems(file.toString());
        Optional<Log> log = Source.read(file, what, problems)
                .flatMap(source -> new LogFile(given, columns, source, problems).log());
        into.addAll(problems.inOrder());
        return problems.isEmpty() ? log : Optional.empty();
    }

    private Optional<Log> log() {
        CsvRows.each(source, problems, row -> {
            if (header.isEmpty()) {
                head(row);
            } else {
                row(row);
            }
            return !problems.isFull() && !header.isEmpty();
        });
        if (header.isEmpty() && problems.isEmpty()) {
            problem(
                    START,
                    "",
                    "is empty; write the header " + TIME + " and the columns below it, and a moment on each line");
        } else if (times.isEmpty() && problems.isEmpty()) {
            problem(START, "", "has a header and no moment below it");
        }
        if (times.size() > 1 && (times.get(times.size() - 1) - times.get(0)) / (times.size() - 1) > LONGEST_STEP) {
            problem(
                    START,
                    TIME,
                    "rises by more than " + Math.round(LONGEST_STEP)
                            + " s from moment to moment; are these milliseconds? Write seconds");
        }
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        List<Log.Series> all = new ArrayList<>();
        values.forEach((name, own) -> {
            Log.Kind kind = column(name).kind();
            all.add(new Log.Series(kind, own, given.tolerance(kind).orElse(Usual.of(kind))));
        });
        return Optional.of(new Log(times, all));
    }

    private void head(List<CsvRows.Cell> row) {
        List<String> names = row.stream().map(CsvRows.Cell::text).toList();
        Optional<Character> separator = Stream.of(';', '\t')
                .filter(one -> names.get(0).indexOf(one) >= 0)
                .findFirst();
        if (separator.isPresent()) {
            problem(
                    row.get(0),
                    "header",
                    "parts its columns by " + (separator.get() == ';' ? "semicolons" : "tabs")
                            + "; write commas between them, and decimal points");
            return;
        }
        if (!names.contains(TIME)) {
            problem(
                    row.get(0),
                    "header",
                    "has no " + TIME + "; the columns are " + TIME + " and any of "
                            + String.join(", ", columns.keySet()));
            return;
        }
        for (int i = 0; i < row.size(); i++) {
            CsvRows.Cell cell = row.get(i);
            if (names.subList(0, i).contains(cell.text()) && columns.containsKey(cell.text())) {
                problem(cell, "header", "names the column " + cell.text() + " twice");
            }
            if (!columns.containsKey(cell.text()) && !cell.text().equals(TIME)) {
                String nearest = Nearest.to(cell.text(), List.copyOf(columns.keySet()));
                if (Nearest.isSlip(cell.text(), nearest)) {
                    problem(cell, "header", "has \"" + shown(cell.text()) + "\"; did you mean " + nearest + "?");
                }
            } else if (!cell.text().equals(TIME)) {
                Log.Kind kind = column(cell.text()).kind();
                if (values.keySet().stream().anyMatch(name -> column(name).kind() == kind)) {
                    problem(cell, "header", "gives the same in a second unit; leave out one of the two");
                }
                values.put(cell.text(), new ArrayList<>());
            }
        }
        header = names;
    }

    private void row(List<CsvRows.Cell> row) {
        if (row.size() != header.size()) {
            problem(
                    row.get(0),
                    "",
                    "has " + row.size() + (row.size() == 1 ? " value" : " values") + " where the header has "
                            + header.size());
            return;
        }
        for (int i = 0; i < row.size(); i++) {
            String name = header.get(i);
            if (name.equals(TIME)) {
                number(row.get(i), name).ifPresent(times::add);
                if (times.size() > 1 && !(times.get(times.size() - 1) > times.get(times.size() - 2))) {
                    problem(row.get(i), name, "does not rise; each moment must come after the one before");
                }
            } else if (values.containsKey(name)) {
                Unit unit = column(name).unit();
                number(row.get(i), name).ifPresent(value -> values.get(name).add(unit.toSi(value)));
            }
        }
    }

    private Optional<Double> number(CsvRows.Cell cell, String name) {
        if (!NUMBER.matcher(cell.text()).matches()) {
            problem(
                    cell,
                    name,
                    cell.text().isEmpty()
                            ? "is empty; leave out the whole line"
                            : "is no number: \"" + shown(cell.text())
                                    + "\"; write it with a decimal point and no unit");
            return Optional.empty();
        }
        double value = Double.parseDouble(cell.text().replace('−', '-'));
        if (Math.abs(value) > GREATEST) {
            problem(cell, name, "is " + shown(cell.text()) + ", which no instrument shows on a road");
            return Optional.empty();
        }
        return Optional.of(value);
    }

    private void problem(CsvRows.Cell at, String where, String what) {
        problems.at(new Place(where, at.line(), at.column(), 0, 0), what);
    }

    private static String shown(String text) {
        return text.codePointCount(0, text.length()) <= SHOWN
                ? Unseen.shown(text)
                : Unseen.shown(text.substring(0, text.offsetByCodePoints(0, SHOWN))) + "…";
    }
}
