package evenhand.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.catalogue.Catalogue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MergePatchTest {
    /** Source: RFC 7396 (Hoffman and Snell 2014), appendix A, all test cases. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"a\":\"b\"} | {\"a\":\"c\"} | {\"a\":\"c\"}",
                "{\"a\":\"b\"} | {\"b\":\"c\"} | {\"a\":\"b\",\"b\":\"c\"}",
                "{\"a\":\"b\"} | {\"a\":null} | {}",
                "{\"a\":\"b\",\"b\":\"c\"} | {\"a\":null} | {\"b\":\"c\"}",
                "{\"a\":[\"b\"]} | {\"a\":\"c\"} | {\"a\":\"c\"}",
                "{\"a\":\"c\"} | {\"a\":[\"b\"]} | {\"a\":[\"b\"]}",
                "{\"a\":{\"b\":\"c\"}} | {\"a\":{\"b\":\"d\",\"c\":null}} | {\"a\":{\"b\":\"d\"}}",
                "{\"a\":[{\"b\":\"c\"}]} | {\"a\":[1]} | {\"a\":[1]}",
                "[\"a\",\"b\"] | [\"c\",\"d\"] | [\"c\",\"d\"]",
                "{\"a\":\"b\"} | [\"c\"] | [\"c\"]",
                "{\"a\":\"foo\"} | null | null",
                "{\"a\":\"foo\"} | \"bar\" | \"bar\"",
                "{\"e\":null} | {\"a\":1} | {\"e\":null,\"a\":1}",
                "[1,2] | {\"a\":\"b\",\"c\":null} | {\"a\":\"b\"}",
                "{} | {\"a\":{\"bb\":{\"ccc\":null}}} | {\"a\":{\"bb\":{}}}"
            })
    void mergesAsTheStandardSays(String base, String patch, String result) {
        assertThat(merged(base, patch)).isEqualTo(result);
    }

    @Test
    void aChangedKindReplacesTheObjectWhole() {
        assertThat(merged("{\"l\":{\"kind\":\"watt\",\"height\":1}}", "{\"l\":{\"kind\":\"panhard\"}}"))
                .isEqualTo("{\"l\":{\"kind\":\"panhard\"}}");
        assertThat(merged("{\"l\":{\"kind\":\"watt\",\"height\":1}}", "{\"l\":{\"kind\":\"watt\",\"x\":2}}"))
                .isEqualTo("{\"l\":{\"kind\":\"watt\",\"height\":1,\"x\":2}}");
    }

    @Test
    void everyKeyThatTheCatalogueDeclaresAsAKindReplacesTheObjectWhole() {
        assertThat(Catalogue.KIND_KEYS).contains("layout");
        for (String key : Catalogue.KIND_KEYS) {
            assertThat(merged("{\"" + key + "\":\"a\",\"x\":1}", "{\"" + key + "\":\"b\"}"))
                    .isEqualTo("{\"" + key + "\":\"b\"}");
        }
        assertThat(merged("{\"name\":\"a\",\"x\":1}", "{\"name\":\"b\"}")).isEqualTo("{\"name\":\"b\",\"x\":1}");
    }

    private static String merged(String base, String patch) {
        return ScenarioWriter.onOneLine(MergePatch.merge(json(base), json(patch)))
                .replace(", ", ",")
                .replace(": ", ":");
    }

    private static Json json(String text) {
        return JsonReader.read(new Source(text), new Problems("")).orElseThrow();
    }
}
