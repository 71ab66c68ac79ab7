package evenhand.answers;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FigureTest {
    private static Figure<Double> figure(Dimension dimension, String unit) {
        return Figure.of("x", "an x", dimension, unit, 0, value -> value);
    }

    @Test
    void theKeyIsTheNameWithTheUnit() {
        assertThat(figure(Dimension.ANGLE, "deg").key()).isEqualTo("x_deg");
        assertThat(figure(Dimension.UNDERSTEER_GRADIENT, "deg/g").key()).isEqualTo("x_deg_per_g");
        assertThat(figure(Dimension.SPEED, "m/s").key()).isEqualTo("x_m_per_s");
        assertThat(figure(Dimension.MOMENT, "N*m").key()).isEqualTo("x_Nm");
        assertThat(figure(Dimension.ROLL_STIFFNESS, "N*m/deg").key()).isEqualTo("x_Nm_per_deg");
        assertThat(figure(Dimension.MOMENT, "N*m").perEachG().key()).isEqualTo("x_Nm_per_g");
        assertThat(figure(Dimension.MOMENT, "N*m").key(Unit.of("lbf*ft"))).isEqualTo("x_lbf_ft");
        assertThat(figure(Dimension.AREA, "m^2").key()).isEqualTo("x_m2");
        assertThat(figure(Dimension.RATIO, "").key()).isEqualTo("x");
        assertThat(figure(Dimension.RATIO, "").key(Unit.of("%"))).isEqualTo("x");
    }

    @Test
    void theValueIsInTheUnitOfTheKey() {
        assertThat(figure(Dimension.ANGLE, "deg").value(Math.PI)).hasValue(180);
        assertThat(figure(Dimension.LENGTH, "m").in(Unit.of("mm"), 0.255)).hasValue(255);
        assertThat(figure(Dimension.ANGLE, "deg").si(Math.PI)).hasValue(Math.PI);
    }

    @Test
    void whatIsNotFiniteDoesNotExist() {
        assertThat(figure(Dimension.RATIO, "").value(0.0 / 0)).isEmpty();
        assertThat(figure(Dimension.RATIO, "").value(1.0 / 0)).isEmpty();
    }

    @Test
    void noTwoFiguresOfAListShareAKey() {
        for (List<? extends Figure<?>> figures : List.of(
                TurnFigures.ROW, TurnFigures.WHEEL, TurnFigures.BUDGET, HandSumFigures.ALL, HandSumFigures.BUDGET)) {
            Set<String> keys = new HashSet<>();
            assertThat(figures).allMatch(figure -> keys.add(figure.name()));
        }
    }
}
