package evenhand.turn;

import evenhand.car.*;
import java.util.*;
import org.junit.jupiter.api.Test;

class Scratch2Test {
    static final double g = Weights.GRAVITY;

    void show(long seed, double radius, double step, double from, double to) {
        Car car = RoadCars.any(seed).settled();
        Equilibrium eq = new Equilibrium(car, radius);
        Branch b = new Branch(eq, step);
        Branch.End end = b.follow(Branch.Until.FOLD);
        System.out.printf(
                "seed %d R %.0f end %s count %d limitAt %d limit %.6f end %.6f drive %s %s%n",
                seed,
                radius,
                end,
                b.count(),
                b.limitAt(),
                b.limit() / g,
                b.end() / g,
                car.drive().axle(),
                car.drive().differential());
        for (int k = 0; k < b.count(); k++) {
            b.atState(k);
            if (b.acceleration(k) < from * g || b.acceleration(k) > to * g) continue;
            System.out.printf(
                    "  k %d ac %.9f rise %.3e hold %.3e len %.3e pieces %x steer %.4f beta %.4f P %.1f loads %.0f %.0f %.0f %.0f e %.3f %.3f %.3f %.3f grip %.3f %.3f worst %.1e%n",
                    k,
                    b.acceleration(k) / g,
                    b.rise(k),
                    b.hold(k),
                    b.length(k),
                    eq.pieces(),
                    b.state[0],
                    b.state[1],
                    b.state[2],
                    eq.front.left.load,
                    eq.front.right.load,
                    eq.rear.left.load,
                    eq.rear.right.load,
                    eq.front.left.sideLeft,
                    eq.front.right.sideLeft,
                    eq.rear.left.sideLeft,
                    eq.rear.right.sideLeft,
                    eq.front.gripUsed(),
                    eq.rear.gripUsed(),
                    eq.worst());
        }
    }

    @Test
    void look() {
        show(1130, 40, 0.6, 0.62, 0.72);
        show(1130, 40, 0.06, 0.65, 0.68);
        for (double radius : new double[] {10, 40, 200})
            for (long seed = 0; seed < 1500; seed++) {
                Car car = RoadCars.any(seed).settled();
                Branch large = new Branch(new Equilibrium(car, radius));
                Branch small = new Branch(new Equilibrium(car, radius), 0.06);
                Branch.End l = large.follow(Branch.Until.FOLD), s = small.follow(Branch.Until.FOLD);
                if (large.count() == 0 || small.count() == 0) {
                    System.out.println("none " + seed + " " + radius);
                    continue;
                }
                if (Math.abs(large.limit() - small.limit()) > 2e-6 * g
                        || Math.abs(large.end() - small.end()) > 2e-6 * g)
                    System.out.printf(
                            "R %.0f seed %d limit %.7f %.7f end %.7f %.7f %s %s %s%n",
                            radius,
                            seed,
                            large.limit() / g,
                            small.limit() / g,
                            large.end() / g,
                            small.end() / g,
                            l,
                            s,
                            car.drive().differential());
            }
    }
}
