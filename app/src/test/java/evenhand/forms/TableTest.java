package evenhand.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {
    private static final Table FIGURES = new Table.Builder(List.of("Low", "As bought"))
            .heading("At 0.5 g")
            .row("understeer", "deg/g", List.of("−0.12", "0.30"))
            .row("front grip used", "%", List.of("98.8", "98.8"))
            .row("lets go first", "", List.of("front", "front"))
            .row("stop", "", List.of("12 mm", "9.5 mm"))
            .row("roll", "deg", List.of("–", "3.1"))
            .row("locks first", "", List.of("rear", "front"))
            .build();

    @Test
    void differencesFromTheBaseStandBesideTheOthersInTheSameDigits() {
        Table wide = FIGURES.withDifferences("As bought");
        assertThat(wide.columns()).containsExactly("Low", Table.DIFFERENCE, "As bought");
        assertThat(wide.lines().get(0)).isEqualTo(new Table.Heading("At 0.5 g"));
        assertThat(wide.lines().stream()
                        .filter(Table.Row.class::isInstance)
                        .map(line -> ((Table.Row) line).cells().get(1)))
                .containsExactly("−0.42", "0.0", "same", "+2.5 mm", "", "");
    }

    @Test
    void nothingIsComparedWhereTheBaseIsNotAmongThemOrAlone() {
        assertThat(FIGURES.compares("As bought")).isTrue();
        assertThat(FIGURES.compares("Pivot low")).isFalse();
        assertThat(new Table(List.of("As bought"), List.of()).compares("As bought"))
                .isFalse();
    }
}
