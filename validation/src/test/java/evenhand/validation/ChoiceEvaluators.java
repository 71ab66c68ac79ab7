package evenhand.validation;

import evenhand.choice.Shapley;
import evenhand.doubt.FirstOrder;
import evenhand.doubt.Samples;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/** How differences are shared out, and doubt. */
final class ChoiceEvaluators {
    /** Keeps evenly spread chances off their ends. */
    private static final double WITHIN = 1e-6;

    private ChoiceEvaluators() {}

    static Computed ishigami(Inputs in) {
        double a = in.number("a");
        double b = in.number("b");
        return shares(
                in,
                3,
                chance -> Math.PI * (2 * chance - 1),
                x -> Math.sin(x[0]) * (1 + b * Math.pow(x[2], 4)) + a * Math.pow(Math.sin(x[1]), 2));
    }

    static Computed sumOfNormals(Inputs in) {
        double[] weights = in.numbers("weights");
        return shares(in, weights.length, new NormalDistribution()::inverseCumulativeProbability, x -> {
            double sum = 0;
            for (int i = 0; i < weights.length; i++) {
                sum += weights[i] * x[i];
            }
            return sum;
        });
    }

    /** The shares of a function's inputs, from evenly spread samples. */
    private static Computed shares(
            Inputs in, int inputs, DoubleUnaryOperator ofChance, ToDoubleFunction<double[]> figure) {
        int samples = (int) in.number("samples");
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(inputs);
        sobol.nextVector(); // the corner
        double[][] input = new double[inputs][samples];
        double[] figures = new double[samples];
        for (int i = 0; i < samples; i++) {
            double[] point = sobol.nextVector();
            for (int k = 0; k < inputs; k++) {
                point[k] = ofChance.applyAsDouble(Math.max(WITHIN, Math.min(1 - WITHIN, point[k])));
                input[k][i] = point[k];
            }
            figures[i] = figure.applyAsDouble(point);
        }
        double[] shares = new double[inputs];
        for (int k = 0; k < inputs; k++) {
            shares[k] = new FirstOrder(input[k]).share(Samples.of(figures)).share();
        }
        return new Computed().with("shares", shares);
    }

    /** A game: a runway that the longest of a group pays for, or gloves that are worth something in pairs. */
    static Computed shapley(Inputs in) {
        boolean runway = in.has("runways");
        double[] players = in.numbers(runway ? "runways" : "gloves");
        IntFunction<OptionalDouble> worth = group -> {
            double longest = 0;
            int left = 0;
            for (int i = 0; i < players.length; i++) {
                if ((group >> i & 1) != 0) {
                    longest = Math.max(longest, players[i]);
                    left += (int) players[i];
                }
            }
            return OptionalDouble.of(runway ? longest : Math.min(left, Integer.bitCount(group) - left));
        };
        return new Computed()
                .with(
                        "shares",
                        Shapley.of(players.length, worth).orElseThrow().shares().stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray());
    }
}
