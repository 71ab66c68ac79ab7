package evenhand.answers;

import evenhand.car.Car;
import evenhand.car.Side;
import evenhand.car.mounts.HardUse;
import evenhand.structure.CarLoads;
import evenhand.turn.SteadyTurn;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What a car says straight ahead and of what its parts carry, as far as it was asked: figures that exist, SI. */
public record AheadAnswers(Map<Judged, Double> values) {
    /** Of a car that nobody asked. */
    public static final AheadAnswers NONE = new AheadAnswers(Map.of());

    public AheadAnswers {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /**
     * @param standing at rest with its load, its {@code lowered} carried out
     * @param uses what it is put through
     */
    static AheadAnswers of(Car standing, Collection<Judged> figures, List<HardUse> uses) {
        List<Judged> ahead = figures.stream()
                .filter(figure -> figure.criterion().ahead().isPresent())
                .toList();
        List<Judged> loads = figures.stream()
                .filter(figure -> figure.criterion().loads().isPresent())
                .toList();
        if ((ahead.isEmpty() && loads.isEmpty())
                || SteadyTurn.fallsOver(standing).isPresent()) {
            return NONE;
        }
        AheadCriteria.Asked asked = new AheadCriteria.Asked(standing);
        Map<Judged, Double> values = new LinkedHashMap<>();
        for (Judged figure : ahead) {
            figure.criterion()
                    .ahead()
                    .orElseThrow()
                    .si()
                    .apply(asked, figure.pace().orElse(0))
                    .ifPresent(value -> values.put(figure, value));
        }
        if (!loads.isEmpty()) {
            CarLoads carried = CarLoads.of(standing, uses, Trial.USUAL_RADIUS, Set.of(Side.values()));
            for (Judged figure : loads) {
                LoadCriteria.si(figure.criterion().loads().orElseThrow(), carried)
                        .ifPresent(value -> values.put(figure, value));
            }
        }
        return new AheadAnswers(values);
    }

    /** A figure that was asked; nothing where there is none. */
    OptionalDouble si(Judged figure) {
        return Optional.ofNullable(values.get(figure)).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** What was asked and exists. */
    public List<Judged> judged() {
        return List.copyOf(values.keySet());
    }
}
