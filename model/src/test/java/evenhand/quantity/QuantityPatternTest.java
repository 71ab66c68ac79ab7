package evenhand.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityPatternTest {
    private static final long SEED = 20_261_129L;
    private static final List<String> NUMBERS =
            List.of("1", "1420", "12.5", ".5", "3.", "1e-2", "2.5E+1", "0", "29/32", "55 29/32", "1/0", "1,5", "1 420");
    private static final List<String> TOLERANCES = List.of(
            "",
            "",
            " ± 5 %",
            "±0.5",
            " +/- 1 UNIT",
            "+-1UNIT",
            " ± 1/32 in",
            " ± ",
            " ± -1 UNIT",
            " ± + 2 UNIT",
            " ± 1 ± 1");
    private static final String LETTERS = "0159 .,/±+-−–*·^2²°degNmklbfints%()\u00a0\u202f";

    /** Whether it is read; nothing where only its magnitude is wrong, which a pattern cannot tell. */
    private static Optional<Boolean> reads(String text, Dimension dimension) {
        try {
            Quantity.parse(text, dimension, Double.MAX_VALUE);
            return Optional.of(true);
        } catch (QuantityException refused) {
            return String.valueOf(refused.getMessage()).contains("finite") ? Optional.empty() : Optional.of(false);
        }
    }

    private static <T> T anyOf(List<T> all, Random random) {
        return all.get(random.nextInt(all.size()));
    }

    private static String slip(String text, Random random) {
        int at = random.nextInt(text.length() + 1);
        int end = Math.min(text.length(), at + random.nextInt(2));
        String put = random.nextBoolean() ? "" : String.valueOf(LETTERS.charAt(random.nextInt(LETTERS.length())));
        return text.substring(0, at) + put + text.substring(end);
    }

    /** Right, wrong and nearly right: number, unit in any spelling, tolerance, and up to two slips of the pen. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void theyAdmitJustWhatIsRead(Dimension dimension) {
        Pattern pattern = Pattern.compile(QuantityPattern.of(dimension));
        List<String> units = dimension.units().stream()
                .flatMap(unit -> Stream.concat(Stream.of(unit.symbol()), unit.variants()))
                .toList();
        Random random = new Random(SEED);
        int read = 0;
        int tried = 20_000;
        for (int i = 0; i < tried; i++) {
            String unit = anyOf(units, random);
            String text = anyOf(List.of("", "", "-", "+", "− "), random)
                    + anyOf(NUMBERS, random)
                    + anyOf(List.of(" ", "", "\u00a0"), random)
                    + (dimension == Dimension.LENGTH && random.nextInt(4) == 0
                            ? "ft " + anyOf(NUMBERS, random) + " in"
                            : unit)
                    + anyOf(TOLERANCES, random).replace("UNIT", anyOf(units, random));
            for (int slips = random.nextInt(3); slips > 0; slips--) {
                text = slip(text, random);
            }
            Optional<Boolean> reads = reads(text, dimension);
            if (reads.isPresent()) {
                assertThat(pattern.matcher(text).find())
                        .as("\"%s\" as %s, seed %d, %d", text, dimension.words(), SEED, i)
                        .isEqualTo(reads.get());
                read += reads.get() ? 1 : 0;
            }
        }
        assertThat(read).isBetween(tried / 20, tried * 19 / 20);
    }
}
