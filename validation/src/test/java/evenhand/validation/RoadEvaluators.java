package evenhand.validation;

import evenhand.road.MeasuredProfile;
import evenhand.road.Piece;
import evenhand.road.Profile;
import evenhand.road.RandomRoad;
import evenhand.road.ReferenceCar;
import evenhand.road.RoughnessIndex;
import evenhand.scenario.RoadFile;
import evenhand.scenario.RoadReading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** Roads and their roughness. */
final class RoadEvaluators {
    private static final int LOOKS = 500;

    private RoadEvaluators() {}

    /** The reference car over one step of road: what the state does to the next, and what the slope does. */
    static Computed step(Inputs in) {
        double[][] transition = ReferenceCar.transition(in.number("spacing_m"));
        List<double[]> states = new ArrayList<>();
        double[] road = new double[4];
        for (int i = 0; i < 4; i++) {
            states.add(Arrays.copyOf(transition[i], 4));
            road[i] = transition[i][4];
        }
        return new Computed().with("ST", states).with("PR", road);
    }

    /** A road of straight lines through corners, cut at several lengths. */
    static Computed ofPoints(Inputs in) {
        List<double[]> corners = in.lists("corners_m");
        double spacing = in.number("spacing_m");
        double[] sums = Arrays.stream(in.numbers("lengths_m"))
                .map(length -> {
                    List<Double> heights = new ArrayList<>();
                    for (int i = 0; i * spacing <= length; i++) {
                        heights.add(between(corners, i * spacing));
                    }
                    return RoughnessIndex.of(new MeasuredProfile(0, spacing, heights))
                                    .whole()
                            * length;
                })
                .toArray();
        return new Computed().with("index_times_length_m", sums);
    }

    private static double between(List<double[]> corners, double x) {
        int i = 1;
        while (x > corners.get(i)[0]) {
            i++;
        }
        double[] low = corners.get(i - 1);
        double[] high = corners.get(i);
        return low[1] + (high[1] - low[1]) * (x - low[0]) / (high[0] - low[0]);
    }

    static Computed gain(Inputs in) {
        return new Computed()
                .with(
                        "gain",
                        Arrays.stream(in.numbers("wavelengths_m"))
                                .map(ReferenceCar::gain)
                                .toArray());
    }

    static Computed gainPeaks(Inputs in) {
        double[] peaks = in.lists("between_m").stream()
                .mapToDouble(ends -> new BrentOptimizer(1e-10, 1e-12)
                        .optimize(
                                new MaxEval(LOOKS),
                                new UnivariateObjectiveFunction(ReferenceCar::gain),
                                GoalType.MAXIMIZE,
                                new SearchInterval(ends[0], ends[1]))
                        .getPoint())
                .toArray();
        return new Computed()
                .with("peak_m", peaks)
                .with("gain", Arrays.stream(peaks).map(ReferenceCar::gain).toArray());
    }

    static Computed ofClass(Inputs in) {
        double[] indices = Arrays.stream(in.numbers("Gd_n0_1e_6_m3"))
                .map(million -> 1e3 * RoughnessIndex.expected(1e-6 * million))
                .toArray();
        return new Computed().with("index_m_per_km", indices).with("recalled_m_per_km", indices);
    }

    static Computed ofFile(Inputs in) {
        RoadReading reading = RoadFile.read(Path.of(in.text("file")));
        RoughnessIndex found = RoughnessIndex.of(reading.profile().orElseThrow());
        return new Computed()
                .with("whole_m_per_km", 1e3 * found.whole())
                .with(
                        "segments_m_per_km",
                        found.segments().stream()
                                .mapToDouble(segment -> 1e3 * segment.index())
                                .toArray());
    }

    /** Root mean squares of made-up roads. */
    static Computed madeUp(Inputs in) {
        double[] classes = in.numbers("Gd_n0_1e_6_m3");
        double[] heights = new double[classes.length];
        double[] slopes = new double[classes.length];
        for (int i = 0; i < classes.length; i++) {
            Profile road = RandomRoad.of(1e-6 * classes[i], (long) in.number("seed"), in.number("length_m"));
            double sum = 0;
            double squares = 0;
            double steep = 0;
            for (Piece piece : road.pieces()) {
                double x = (piece.from() + piece.to()) / 2;
                sum += piece.height(x);
                squares += piece.height(x) * piece.height(x);
                steep += piece.slope(x) * piece.slope(x);
            }
            int count = road.pieces().size();
            heights[i] = 1e3 * Math.sqrt(squares / count - sum / count * (sum / count));
            slopes[i] = Math.sqrt(steep / count);
        }
        return new Computed().with("rms_height_mm", heights).with("rms_slope", slopes);
    }

    static Computed kerb(Inputs in) {
        List<Profile> kerbs = Arrays.stream(in.numbers("heights_m"))
                .mapToObj(height -> Profile.kerb(height, in.number("radius_m")))
                .toList();
        return new Computed()
                .with("reach_m", kerbs.stream().mapToDouble(Profile::length).toArray())
                .with(
                        "first_slope",
                        kerbs.stream()
                                .mapToDouble(kerb -> kerb.pieces().get(0).slope(0))
                                .toArray());
    }
}
