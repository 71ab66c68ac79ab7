package evenhand.window.question;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.links.LinkedAxle;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleLines;
import evenhand.linkage.AxleLinkage;
import evenhand.linkage.AxleMotion;
import evenhand.linkage.AxleState;
import evenhand.linkage.Ranges;
import evenhand.linkage.Travel;
import evenhand.linkage.TravelAnswer;
import evenhand.linkage.TravelLimit;
import evenhand.scenario.Setup;
import evenhand.straight.Braking;
import evenhand.window.desk.Question.Asked;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.travel.AxleTravel;
import java.util.List;

/**
 * A set-up whose axle was followed, and where it stands now.
 *
 * @param place as far as the links reach, SI
 */
record Posed(TurnedSetup turned, AxleTravel travel, double place, AxleState state, AxleLines rest, AxleLines lines) {
    /** Rows of a curve, m. */
    private static final double STEP = 0.005;

    Setup setup() {
        return turned.setup();
    }

    boolean is(Posed other) {
        return setup().name().equals(other.setup().name());
    }

    List<TravelLimit> passed(AxleMotion motion) {
        return motion.passed(travel.followed(), place);
    }

    /** The car that is asked about: as it was measured, or let down by what is aboard. */
    static Car car(Asked asked, TurnedSetup one) {
        Car car = asked.work().trial().load().isEmpty() ? one.setup().car() : one.standing();
        return Braking.shared(car, one.standing());
    }

    /** A set-up with its axle moved to a place, as far as the links reach. */
    static Posed at(Asked asked, TurnedSetup turned, LinkedAxle linked, AxleMotion motion, double wanted) {
        Car car = car(asked, turned);
        End end = linked.stance().end();
        Ranges own = Ranges.of(car.settled().axle(end).stops());
        Ranges range = new Ranges(own.bump(), own.droop(), own.roll(), own.steer(), STEP);
        if (!(Travel.of(linked, range) instanceof TravelAnswer.Followed followed)
                || !(Assembly.of(linked) instanceof Assembly.Standing standing)) {
            throw new IllegalStateException("an axle that was built stands no longer");
        }
        AxleLinkage axle = standing.linkage();
        axle.rest();
        AxleLines rest = axle.lines();
        double place = wanted;
        if (!motion.moveTo(axle, wanted)) {
            List<AxleState> rows = motion.rows(followed);
            AxleState last = rows.get(wanted > 0 ? rows.size() - 1 : 0);
            place = motion.place(last, linked.stance().track());
            axle.rest();
            motion.moveTo(axle, place);
        }
        return new Posed(turned, new AxleTravel(end, linked, followed), place, axle.state(), rest, axle.lines());
    }
}
