package evenhand.window.desk;

import evenhand.answers.Balance;
import evenhand.car.Car;
import evenhand.turn.Direction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Balances of cars, each worked out once as long as it is remembered: while one set-up is adjusted the others stand still. */
final class Balances {
    private static final int REMEMBERED = 64;

    private record CarOnCircle(Car car, List<Double> paces, double radius, Direction direction) {}

    private final Map<CarOnCircle, Balance> known = new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<CarOnCircle, Balance> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** As {@link Balance#of}. May be asked from several threads. */
    Balance of(Car car, List<Double> paces, double radius, Direction direction) {
        CarOnCircle asked = new CarOnCircle(car, paces, radius, direction);
        Balance before;
        synchronized (known) {
            before = known.get(asked);
        }
        if (before != null) {
            return before;
        }
        Balance balance = Balance.of(car, paces, radius, direction);
        synchronized (known) {
            known.put(asked, balance);
        }
        return balance;
    }
}
