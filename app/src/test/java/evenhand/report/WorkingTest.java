package evenhand.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Weights;
import evenhand.handsums.HandSums;
import evenhand.scenario.Demo;
import evenhand.scenario.Setup;
import evenhand.words.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WorkingTest {
    static java.util.stream.Stream<String> demos() {
        return Demo.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void aPocketCalculatorComesToTheSameResults(String demo) {
        for (Setup setup : Demo.read(demo).setups()) {
            Car car = setup.car().settled();
            if (HandSums.of(car, Weights.GRAVITY) instanceof HandSums.Found found) {
                calculate(Working.of(car, found.sums()), demo + ", " + setup.name());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void nothingIsLeftOverAtAnyPaceAndFrequenciesAreThoseOfTheAnswers(String demo) {
        Findings findings = Reports.demo(demo, Units.IMPERIAL);
        HandSums sums = findings.chosen().sums().orElseThrow();
        List<Working.Part> parts = WorkingPages.parts(findings, sums);
        calculate(parts, demo);
        List<Working.Part> left = parts.stream()
                .filter(part -> part.title().startsWith("What is left over"))
                .toList();
        assertThat(left).hasSize(3);
        assertThat(left.get(2).title()).startsWith("What is left over at the limit, ");
        assertThat(left)
                .flatExtracting(Working.Part::steps)
                .hasSize(15)
                .allSatisfy(step ->
                        assertThat(step.value()).as("%s: %s", demo, step.what()).isZero());
        for (End end : End.values()) {
            assertThat(parts.stream()
                            .filter(part -> part.title().startsWith("Frequencies and damping, " + end.key()))
                            .flatMap(part -> part.steps().stream())
                            .filter(step -> step.what().equals("frequency of the body")))
                    .extracting(Working.Step::value)
                    .containsExactly(findings.chosen().ride().orElseThrow().frequency(end));
        }
    }

    private static void calculate(List<Working.Part> parts, String whose) {
        for (Working.Part part : parts) {
            for (Working.Step step : part.steps()) {
                Calculator calculator = new Calculator(step.numbers());
                double result = calculator.result();
                // what is put in has seven digits: a difference of large terms loses some of them
                assertThat(result)
                        .as("%s: %s: %s = %s", whose, step.what(), step.formula(), step.numbers())
                        .isCloseTo(step.value(), within(1e-5 * calculator.largest + 1e-9));
            }
        }
        Working.Part proof = parts.stream()
                .filter(part -> part.title().equals("Proof"))
                .findFirst()
                .orElseThrow();
        assertThat(proof.steps().get(0).result())
                .as(whose)
                .isEqualTo(proof.steps().get(1).result());
    }

    @Test
    void stopsArePartOfTheWorkingOnlyWhereACarStandsOnThem() {
        for (String demo : Demo.names().toList()) {
            for (Setup setup : Demo.read(demo).setups()) {
                Car car = setup.car().settled();
                boolean stands = List.of(car.front(), car.rear()).stream()
                        .flatMap(axle -> axle.stops().bump().stream())
                        .anyMatch(stop -> stop.gap() < 0);
                if (HandSums.of(car, Weights.GRAVITY) instanceof HandSums.Found found) {
                    boolean told = Working.of(car, found.sums()).stream()
                            .flatMap(part -> part.steps().stream())
                            .anyMatch(step -> step.what().contains("stops that it stands on"));
                    assertThat(told).as("%s, %s", demo, setup.name()).isEqualTo(stands);
                }
            }
        }
    }

    /** Reads an expression of + − × ÷ √ and brackets, and remembers the largest number on the way. */
    private static final class Calculator {
        private final String text;
        private int at;
        private double largest;

        Calculator(String text) {
            this.text = text.replace(" ", "");
        }

        double result() {
            double sum = sum();
            assertThat(at).as(text).isEqualTo(text.length());
            return sum;
        }

        private double sum() {
            double sum = product();
            while (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '−')) {
                double sign = text.charAt(at++) == '+' ? 1 : -1;
                sum += sign * product();
            }
            largest = Math.max(largest, Math.abs(sum));
            return sum;
        }

        private double product() {
            double product = factor();
            while (at < text.length() && (text.charAt(at) == '×' || text.charAt(at) == '÷')) {
                boolean times = text.charAt(at++) == '×';
                double next = factor();
                product = times ? product * next : product / next;
            }
            largest = Math.max(largest, Math.abs(product));
            return product;
        }

        private double factor() {
            if (text.charAt(at) == '(') {
                at++;
                double sum = sum();
                at++;
                return sum;
            }
            if (text.charAt(at) == '−') {
                at++;
                return -factor();
            }
            if (text.charAt(at) == '√') {
                at++;
                return Math.sqrt(factor());
            }
            int from = at;
            while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
            return Double.parseDouble(text.substring(from, at));
        }
    }
}
