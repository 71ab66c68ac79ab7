package evenhand.choice;

import static evenhand.answers.Trials.aim;
import static evenhand.answers.Trials.judged;

import evenhand.answers.Aim;
import evenhand.answers.Criterion;
import evenhand.answers.Impatient;
import evenhand.answers.Trial;
import evenhand.answers.Trials;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.CatalogueTest;
import evenhand.catalogue.Entries;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Comparing and searching can be watched and stopped. */
class StoppingTest {
    private static final Trial TRIAL = Trials.at(0.5);
    private static final Entries CAR = CatalogueTest.car();
    private static final Span PIVOT = Span.of(CAR, "rear.lateralLocator.height", 0.2, 0.34);
    private static final Span SPRING = Span.of(CAR, "front.spring.rate", 40_000, 90_000);
    private static final Aim AIM = aim(judged(Criterion.ROLL_GRADIENT, 0.5), Aim.Sense.AT_MOST, 4.5);

    @Test
    void comparingMayStop() throws InterruptedException {
        Entries other = Catalogue.with(Catalogue.with(CAR, PIVOT.path(), 0.28), SPRING.path(), 70_000);
        Impatient.mayStop(progress -> Comparison.of(CAR, other, TRIAL, progress));
    }

    @Test
    void searchingByOneChangeMayStop() throws InterruptedException {
        Impatient.mayStop(
                progress -> OneChange.find(CAR, SPRING, AIM, List.of(), OptionalDouble.of(1000), TRIAL, progress));
    }

    @Test
    void searchingBySeveralChangesMayStop() throws InterruptedException {
        List<OptionalDouble> steps = List.of(OptionalDouble.of(0.005), OptionalDouble.empty());
        Impatient.mayStop(
                progress -> SeveralChanges.find(CAR, List.of(PIVOT, SPRING), AIM, List.of(), steps, TRIAL, progress));
    }
}
