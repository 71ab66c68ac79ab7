package evenhand.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.forms.Table;
import java.awt.FontMetrics;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTableTest {
    private static Table steps(int count, String cell) {
        return new Table.Builder(
                        IntStream.range(0, count).mapToObj(i -> 10 * i + " mm").toList())
                .heading("Let down by")
                .row("front roll centre", "mm", Collections.nCopies(count, "−76"))
                .row("roll gradient", "deg/g", Collections.nCopies(count, cell))
                .build();
    }

    private static JTable shown(FiguresTable pane, int width) {
        pane.setSize(width, 400);
        pane.doLayout();
        JTable table = (JTable) pane.getComponent(1);
        table.doLayout();
        return table;
    }

    private static void assertNothingIsCut(JTable table) {
        FontMetrics metrics = table.getFontMetrics(Looks.theme().plain());
        for (int column = 1; column < table.getColumnCount(); column++) {
            for (int row = 0; row < table.getRowCount(); row++) {
                int needed = metrics.stringWidth(String.valueOf(table.getValueAt(row, column)));
                assertThat(table.getColumnModel().getColumn(column).getWidth())
                        .as("row %d, column %d", row, column)
                        .isGreaterThanOrEqualTo(needed);
            }
        }
    }

    /** Widths of the answer in a window of 1024 and of 1280 px. */
    @ParameterizedTest
    @ValueSource(ints = {735, 985})
    void unitsAndNumbersAreWholeWhereManyColumnsShareLittleRoom(int width) {
        FiguresTable pane = new FiguresTable();
        pane.show(steps(9, "6.38"));
        assertNothingIsCut(shown(pane, width));
    }

    @Test
    void aNumberThatGrowsWhileItIsDraggedHasRoomAtOnce() {
        FiguresTable pane = new FiguresTable();
        pane.show(steps(9, "6.38"));
        shown(pane, 735);
        pane.show(steps(9, "−1234.56"));
        assertNothingIsCut(shown(pane, 1000));
    }

    @Test
    void aTableWithoutUnitsLeavesThemNoRoom() {
        FiguresTable pane = new FiguresTable();
        pane.show(new Table.Builder(List.of("body ratio"))
                .row("soft", "", List.of("0.31"))
                .build());
        assertThat(shown(pane, 900).getColumnModel().getColumn(1).getPreferredWidth())
                .isLessThan(Looks.em(2));
    }
}
