package evenhand.catalogue;

import evenhand.car.Car;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A car to be built again and again with one number changed: for slopes and steps of many numbers. Parts of the car that do not
 * hold the number are built once; what is estimated from it, is estimated anew. May be asked by several threads at once.
 */
public final class OneNumber {
    private final Entries car;
    private final Built<Car> asGiven;
    private final Map<String, Object> parts = new HashMap<>(); // written while it is made alone

    public OneNumber(Entries car) {
        this.car = car;
        asGiven = Building.build(Catalogue.CAR, car, car.off(), new Building.Parts() {
            @Override
            public Optional<Object> at(String path) {
                return Optional.empty();
            }

            @Override
            public void built(String path, Object object) {
                parts.put(path, object);
            }
        });
    }

    /** The car without a change. */
    public Optional<Car> asGiven() {
        return asGiven.value();
    }

    /** The number at a path. */
    public Optional<Adjustable> number(String path) {
        return asGiven.at(path);
    }

    /** Every number that this car has. */
    public List<Adjustable> numbers() {
        return asGiven.values();
    }

    /**
     * The car with another number at a path.
     *
     * @param change from the value that it has to the one it is to have, SI
     * @return none where there is no such car, or the number lies out of its bounds
     */
    public Optional<Car> with(String path, DoubleUnaryOperator change) {
        Changed changed = new Changed(path, change);
        Optional<Car> built =
                Building.build(Catalogue.CAR, car, changed, changed).value();
        return changed.possible ? built : Optional.empty();
    }

    /** One number changed, and all parts that do not hold it. */
    private final class Changed implements Deviation, Building.Parts {
        private final String path;
        private final DoubleUnaryOperator change;
        private boolean possible = true;

        Changed(String path, DoubleUnaryOperator change) {
            this.path = path;
            this.change = change;
        }

        @Override
        public double of(Adjustable number) {
            double asItIs = car.off().of(number);
            if (!number.path().equals(path)) {
                return asItIs;
            }
            double value = change.applyAsDouble(asItIs);
            Range bounds = number.slot().bounds();
            possible = bounds.holds(value);
            return bounds.cut(value);
        }

        @Override
        public Optional<Object> at(String part) {
            boolean holds = part.isEmpty() || path.startsWith(part + ".") || path.startsWith(part + "[");
            return holds ? Optional.empty() : Optional.ofNullable(parts.get(part));
        }

        @Override
        public void built(String part, Object object) {}
    }
}
