package evenhand.roadtest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * What repeated tests say of the spread from day to day, and which differences of set-ups are more than that. Gradients in rad per
 * m/s².
 *
 * <p>The spread is pooled over set-ups, {@code s² = Σ(x − mean)²/Σ(n − 1)}. The difference of two set-ups has the standard error
 * <pre>  √( Σ over both (s²/n + Σ sᵢ²/n²) )  </pre>
 * n tests of each, sᵢ the standard error of each test's line. It is called real where it exceeds Student's t at 95 % with the
 * spread's degrees of freedom times that; without repeats nothing is.
 *
 * <p>Where the first set-up was driven again at the end, the mean of both stands against what was driven between, and their
 * difference is drift: of tyres, fuel, road or driver.
 *
 * <p>Source: Student's t with a pooled variance, any textbook of statistics; the repeated first run is common practice.
 */
public record Repeats(List<Spread> spreads, List<Difference> differences, List<Drift> drifts) {
    private static final double SURE = 0.975;

    /** A test's gradient. */
    record Seen(String test, String setup, Gradient gradient) {}

    /** The spread of one gradient, and the tests of one set-up that count in it. */
    public record Spread(String setup, Gradient.Figure figure, List<String> tests, double spread, int degrees) {
        public Spread {
            tests = List.copyOf(tests);
        }
    }

    /**
     * How a set-up differs from the first that was tested.
     *
     * @param needed what a difference has to exceed to be real; none without repeats
     */
    public record Difference(
            String setup,
            String from,
            Gradient.Figure figure,
            double difference,
            double standardError,
            OptionalDouble needed) {
        public boolean isReal() {
            return needed.isPresent() && Math.abs(difference) > needed.getAsDouble();
        }
    }

    /** How the first set-up came out at the end, less how it did at the beginning. */
    public record Drift(String setup, Gradient.Figure figure, String first, String last, double drift) {}

    public Repeats {
        spreads = List.copyOf(spreads);
        differences = List.copyOf(differences);
        drifts = List.copyOf(drifts);
    }

    static Repeats of(List<Seen> all) {
        List<Spread> spreads = new ArrayList<>();
        List<Difference> differences = new ArrayList<>();
        List<Drift> drifts = new ArrayList<>();
        for (Gradient.Figure figure : Gradient.Figure.values()) {
            Map<String, List<Seen>> bySetup = new LinkedHashMap<>();
            for (Seen one : all) {
                if (one.gradient().figure() == figure) {
                    bySetup.computeIfAbsent(one.setup(), key -> new ArrayList<>())
                            .add(one);
                }
            }
            OneFigure own = new OneFigure(figure, bySetup);
            own.spreads(spreads);
            own.differences(differences);
            own.drift(all).ifPresent(drifts::add);
        }
        return new Repeats(spreads, differences, drifts);
    }

    /** What is known of one figure. */
    private record OneFigure(Gradient.Figure figure, Map<String, List<Seen>> bySetup) {
        private static double mean(List<Seen> tests) {
            return tests.stream()
                    .mapToDouble(one -> one.gradient().measured())
                    .average()
                    .orElse(0);
        }

        private int degrees() {
            return bySetup.values().stream().mapToInt(tests -> tests.size() - 1).sum();
        }

        private double variance() {
            double sum = 0;
            for (List<Seen> tests : bySetup.values()) {
                double mean = mean(tests);
                for (Seen one : tests) {
                    sum += Math.pow(one.gradient().measured() - mean, 2);
                }
            }
            return degrees() == 0 ? 0 : sum / degrees();
        }

        void spreads(List<Spread> into) {
            bySetup.forEach((setup, tests) -> {
                if (tests.size() > 1) {
                    into.add(new Spread(
                            setup, figure, tests.stream().map(Seen::test).toList(), Math.sqrt(variance()), degrees()));
                }
            });
        }

        void differences(List<Difference> into) {
            if (bySetup.isEmpty()) {
                return;
            }
            String first = bySetup.keySet().iterator().next();
            bySetup.forEach((setup, tests) -> {
                if (!setup.equals(first)) {
                    List<Seen> base = bySetup.getOrDefault(first, List.of());
                    double error = Math.sqrt(squareError(tests) + squareError(base));
                    into.add(new Difference(
                            setup,
                            first,
                            figure,
                            mean(tests) - mean(base),
                            error,
                            degrees() == 0
                                    ? OptionalDouble.empty()
                                    : OptionalDouble.of(error
                                            * new TDistribution(null, degrees()).inverseCumulativeProbability(SURE))));
                }
            });
        }

        private double squareError(List<Seen> tests) {
            double n = tests.size();
            double own = tests.stream()
                    .mapToDouble(one -> Math.pow(one.gradient().standardError(), 2))
                    .sum();
            return variance() / n + own / (n * n);
        }

        Optional<Drift> drift(List<Seen> all) {
            List<Seen> inOrder = all.stream()
                    .filter(one -> one.gradient().figure() == figure)
                    .toList();
            if (inOrder.size() < 3) {
                return Optional.empty();
            }
            Seen first = inOrder.get(0);
            Seen last = inOrder.get(inOrder.size() - 1);
            boolean between = inOrder.stream().anyMatch(one -> !one.setup().equals(first.setup()));
            return between && last.setup().equals(first.setup())
                    ? Optional.of(new Drift(
                            first.setup(),
                            figure,
                            first.test(),
                            last.test(),
                            last.gradient().measured() - first.gradient().measured()))
                    : Optional.empty();
        }
    }
}
