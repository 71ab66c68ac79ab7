package evenhand.scenario;

import evenhand.car.End;
import evenhand.roadtest.Log;
import evenhand.roadtest.Measured;
import evenhand.roadtest.Observation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A road test as it stands in a file, its logs not yet read.
 *
 * @param setup name of what was driven
 * @param load name of the load case that was aboard
 * @param records of bounced ends, in CSV files beside the file
 */
public record TestGiven(
        String name,
        String setup,
        Optional<String> load,
        Optional<String> date,
        Optional<String> note,
        Measured grip,
        Measured straightAhead,
        Optional<Measured> circle,
        List<Observation> observations,
        List<LogGiven> logs,
        List<BounceRecord> records) {
    /** What an end did when it was pressed down and let go. */
    public record BounceRecord(End axle, String file) {}

    /**
     * A log beside the file.
     *
     * @param tolerances of the instruments, SI, where they are given
     * @param leftOut moments, s, whose steady pieces count for nothing
     */
    public record LogGiven(String file, Map<Log.Kind, Double> tolerances, List<Double> leftOut) {
        public LogGiven {
            tolerances = Map.copyOf(tolerances);
            leftOut = List.copyOf(leftOut);
        }

        OptionalDouble tolerance(Log.Kind kind) {
            Double given = tolerances.get(kind);
            return given == null ? OptionalDouble.empty() : OptionalDouble.of(given);
        }
    }

    public TestGiven {
        observations = List.copyOf(observations);
        logs = List.copyOf(logs);
        records = List.copyOf(records);
    }
}
