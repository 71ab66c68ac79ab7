package evenhand.roadtest;

import evenhand.car.Car;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Deviation;
import evenhand.catalogue.Entries;
import evenhand.catalogue.OneNumber;
import evenhand.turn.Direction;
import evenhand.turn.TurnNearby;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** All readings of some tests, as misses of what the moved cars show. Slopes by small steps of one unknown each. */
final class OnTheRoad implements Misses {
    /** A step of an unknown, in its standard deviations: far above the solver's rounding, and straight. */
    private static final double STEP = 1e-4;
    /** The same where a turn is followed to its limit, which is known to some 1e-8 g: to both sides. */
    private static final double STEP_TO_LIMIT = 0.02;

    private final List<RoadTest> tests;
    private final Unknowns unknowns;
    private final int[] firsts; // place of each test's first reading
    private final int count;

    OnTheRoad(List<RoadTest> tests, Unknowns unknowns) {
        this.tests = tests;
        this.unknowns = unknowns;
        firsts = new int[tests.size()];
        int sum = 0;
        for (int test = 0; test < tests.size(); test++) {
            firsts[test] = sum;
            sum += tests.get(test).observations().size();
        }
        count = sum;
    }

    @Override
    public int unknowns() {
        return unknowns.count();
    }

    int count() {
        return count;
    }

    /** What each test shows, test by test; none where a car neither stands nor turns. */
    Optional<List<Predicted>> predicted(double[] z) {
        List<Predicted> all = new ArrayList<>();
        for (int test = 0; test < tests.size(); test++) {
            Optional<List<Predicted>> own = predicted(test, z);
            if (own.isEmpty()) {
                return Optional.empty();
            }
            all.addAll(own.get());
        }
        return Optional.of(all);
    }

    private Optional<List<Predicted>> predicted(int test, double[] z) {
        return Catalogue.build(moved(test, z)).value().flatMap(car -> shown(test, z, car));
    }

    private Entries moved(int test, double[] z) {
        Deviation off = unknowns.car(z, unknowns.own(test, Unknowns.OfTest.GRIP, z));
        return tests.get(test).car().off(off);
    }

    private Optional<List<Predicted>> shown(int test, double[] z, Car car) {
        return prediction(test, z, Map.of()).of(car);
    }

    private Prediction prediction(int test, double[] z, Map<Direction, TurnNearby> turns) {
        return new Prediction(
                tests.get(test),
                unknowns.own(test, Unknowns.OfTest.RADIUS, z),
                unknowns.own(test, Unknowns.OfTest.STRAIGHT_AHEAD, z),
                turns);
    }

    @Override
    public Optional<At> at(double[] z) {
        return predicted(z).map(OnTheRoad::misses);
    }

    private static At misses(List<Predicted> all) {
        return new At(
                all.stream().mapToDouble(Predicted::miss).toArray(),
                all.stream().mapToDouble(Predicted::sigma).toArray());
    }

    @Override
    public double[][] slopes(double[] z, At here) {
        List<Here> cars = IntStream.range(0, tests.size())
                .parallel()
                .mapToObj(test -> here(test, z))
                .toList();
        double[][] slopes = new double[count][unknowns.count()];
        IntStream.range(0, unknowns.count()).parallel().forEach(k -> column(k, z, here, cars, slopes));
        return slopes;
    }

    /** A test's car where slopes are taken, and its turns. */
    private record Here(OneNumber car, Map<Direction, TurnNearby> turns) {}

    private Here here(int test, double[] z) {
        OneNumber car = new OneNumber(moved(test, z));
        return new Here(
                car, car.asGiven().map(prediction(test, z, Map.of())::nearby).orElse(Map.of()));
    }

    private void column(int k, double[] z, At here, List<Here> cars, double[][] slopes) {
        OptionalInt only = unknowns.testOf(k);
        for (int test = 0; test < tests.size(); test++) {
            if (only.isEmpty() || only.getAsInt() == test) {
                double step = tests.get(test).isFollowed() ? STEP_TO_LIMIT : STEP;
                Optional<List<Predicted>> above = beside(k, test, z, step, cars);
                Optional<List<Predicted>> below =
                        above.isEmpty() || step == STEP_TO_LIMIT ? beside(k, test, z, -step, cars) : Optional.empty();
                double apart = (above.isPresent() ? step : 0) + (below.isPresent() ? step : 0);
                int first = firsts[test];
                for (int i = 0; apart > 0 && i < tests.get(test).observations().size(); i++) {
                    double up = above.isPresent() ? above.get().get(i).miss() : here.misses()[first + i];
                    double down = below.isPresent() ? below.get().get(i).miss() : here.misses()[first + i];
                    slopes[first + i][k] = (down - up) / apart;
                }
            }
        }
    }

    /** What a test shows with one unknown a little further off. */
    private Optional<List<Predicted>> beside(int k, int test, double[] z, double step, List<Here> cars) {
        double[] beside = z.clone();
        beside[k] += step;
        Here here = cars.get(test);
        double grip = unknowns.own(test, Unknowns.OfTest.GRIP, beside);
        Optional<Car> car;
        if (unknowns.testOf(k).isPresent()) {
            car = unknowns.whatOf(k) == Unknowns.OfTest.GRIP
                    ? Catalogue.build(moved(test, beside)).value()
                    : here.car().asGiven();
        } else {
            String path = unknowns.numbers().get(k).path(); // one of comfort, or of other set-ups, is not on this car
            car = here.car().number(path).flatMap(number -> {
                double value = unknowns.car(beside, grip).of(number);
                return here.car().with(path, si -> value);
            });
        }
        return car.flatMap(found -> prediction(test, beside, here.turns()).of(found));
    }
}
