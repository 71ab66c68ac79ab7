package evenhand.report;

import static evenhand.report.Pencil.n;

import evenhand.car.Car;
import evenhand.handsums.HandSums;

/** Masses, their centres and the roll arm, worked through. */
final class WorkedMasses {
    private WorkedMasses() {}

    static Working.Part of(Pencil pencil) {
        Car car = pencil.car();
        HandSums sums = pencil.sums();
        double m = car.weights().mass();
        double front = car.weights().frontFraction();
        double l = car.wheelbase();
        double muf = car.front().unsprung().mass();
        double mur = car.rear().unsprung().mass();
        Car.Sprung sprung = sums.sprung();
        pencil.step(
                "centre of gravity behind the front axle",
                "a = L·(1 − front share)",
                n(l) + " × (1 − " + n(front) + ")",
                car.cgBehindFront(),
                "m");
        pencil.step("sprung mass", "ms = m − mu_f − mu_r", n(m) + " − " + n(muf) + " − " + n(mur), sprung.mass(), "kg");
        pencil.step(
                "its centre behind the front axle",
                "as = (m·a − mu_r·L) ÷ ms",
                "(" + n(m) + " × " + n(car.cgBehindFront()) + " − " + n(mur) + " × " + n(l) + ") ÷ " + n(sprung.mass()),
                sprung.behindFront(),
                "m");
        pencil.step(
                "its height",
                "hs = (m·h − mu_f·hu_f − mu_r·hu_r) ÷ ms",
                "(" + n(m) + " × " + n(car.cgHeight()) + " − " + n(muf) + " × "
                        + n(car.front().unsprung().height()) + " − " + n(mur) + " × "
                        + n(car.rear().unsprung().height()) + ") ÷ " + n(sprung.mass()),
                sprung.height(),
                "m");
        pencil.step(
                "share over the rear axle",
                "s_r = as ÷ L",
                n(sprung.behindFront()) + " ÷ " + n(l),
                sprung.rearShare(),
                "");
        pencil.step(
                "share over the front axle", "s_f = 1 − s_r", "1 − " + n(sprung.rearShare()), sprung.frontShare(), "");
        pencil.step(
                "roll arm",
                "H = hs − (z_f·s_f + z_r·s_r)",
                n(sprung.height()) + " − (" + n(car.front().geometry().rollCentreHeight()) + " × "
                        + n(sprung.frontShare()) + " + "
                        + n(car.rear().geometry().rollCentreHeight()) + " × " + n(sprung.rearShare()) + ")",
                sums.rollArm(),
                "m");
        return pencil.part("Masses", "moments of mass about front axle and ground; Milliken & Milliken 1995 ch. 18");
    }
}
