package evenhand.words.level;

import evenhand.answers.Answers;
import evenhand.answers.Trial;
import evenhand.car.Axle;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.LoadCase;
import evenhand.car.Perches;
import evenhand.car.Side;
import evenhand.car.Weights;
import evenhand.catalogue.Catalogue;
import evenhand.catalogue.Entries;
import evenhand.level.Levelling;
import evenhand.load.Laden;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.scenario.Setup;
import evenhand.turn.SteadyTurn;
import evenhand.turn.TurnAnswer;
import evenhand.turn.Wheel;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A set-up whose perches are turned, with what is aboard, or why nobody can say by how much. */
public sealed interface LevelledSetup {
    /**
     * Turns were found.
     *
     * @param turns how it turns in corners now and with the perches turned, where the corners were weighed
     */
    record Levelled(
            Setup setup,
            Optional<LoadCase> load,
            Laden.AtRest rest,
            Wanted wanted,
            Levelling levelling,
            Optional<Turned> turns)
            implements LevelledSetup {
        /** Whether the corners were weighed, so that loads are more than halves. */
        public boolean weighed() {
            return isWeighed(setup);
        }

        /** Height of a corner with what is aboard, m: as it is now, where it was measured. */
        public OptionalDouble height(Wheel wheel) {
            Quantity measured = wanted.measured().get(wheel);
            return measured == null ? OptionalDouble.empty() : OptionalDouble.of(measured.si() - sunk(wheel));
        }

        /** The height that is asked for, with what is aboard, m. */
        public OptionalDouble wantedHeight(Wheel wheel) {
            Quantity asked = wanted.asked().get(wheel);
            return asked == null ? OptionalDouble.empty() : OptionalDouble.of(asked.si() - sunk(wheel));
        }

        /** Its height with the perches turned, m. */
        public OptionalDouble heightAfter(Wheel wheel) {
            OptionalDouble now = height(wheel);
            return now.isPresent()
                    ? OptionalDouble.of(
                            now.getAsDouble() + levelling.after().corner(wheel).rise())
                    : now;
        }

        /** By how much the springs of an axle are pressed by what is aboard, m at the wheel. */
        private double sunk(Wheel wheel) {
            return (wheel.end() == End.FRONT ? rest.front() : rest.rear()).travel();
        }

        /** Turns that a perch's thread leaves up or down when it is done, where somebody measured it. */
        public OptionalDouble threadLeft(Wheel wheel, boolean up) {
            Axle axle = setup.car().axle(wheel.end());
            Optional<Perches> perches = axle.spring().lengths().perches();
            if (perches.isEmpty()) {
                return OptionalDouble.empty();
            }
            Perches.Room room = perches.get().room(wheel.side());
            OptionalDouble was = up ? room.raises() : room.lowers();
            double pitch = perches.get().pitch();
            double downBy = axle.lowered() * axle.geometry().springs().ratio() / pitch - levelling.turns(wheel);
            return was.isPresent() ? OptionalDouble.of(was.getAsDouble() / pitch + (up ? downBy : -downBy)) : was;
        }

        public List<String> words(Units units) {
            return LevelWords.of(this, units);
        }
    }

    /** Answers of the car before and after. */
    record Turned(Answers before, Answers after) {}

    /** It has no answer. */
    record NoAnswer(TurnAnswer.Reason reason, String text) implements LevelledSetup {}

    /** Whether what each corner carries was weighed. */
    static boolean isWeighed(Setup setup) {
        return setup.car().weights() instanceof Weights.Corners;
    }

    /** @param trial in which the balance is asked before and after; its load is the one that is aboard */
    static LevelledSetup of(Setup setup, Wanted wanted, Trial trial) {
        Optional<Levelling.Spent> spent = Levelling.spent(setup.car());
        if (spent.isPresent()) {
            return none(LevelWords.spent(spent.get()));
        }
        Laden laden = Laden.of(setup.car(), trial.load());
        if (!(laden instanceof Laden.AtRest rest)) {
            return none(((Laden.NoRest) laden).text());
        }
        Optional<String> falls = SteadyTurn.fallsOver(rest.car());
        if (falls.isPresent()) {
            return new NoAnswer(TurnAnswer.Reason.FALLS_OVER, falls.get());
        }
        Optional<Levelling> found = Levelling.of(setup.car(), rest.car(), wanted.toAsk());
        if (found.isEmpty()) {
            return none("it finds no rest on all four wheels: a wheel hangs, or springs and stops do not carry it");
        }
        Optional<Turned> turned = Optional.empty();
        if (isWeighed(setup)) {
            Answers before = trial.ask(setup.car(), trial.judged());
            turned = after(setup, found.get()).map(car -> new Turned(before, trial.ask(car, trial.judged())));
        }
        return new Levelled(setup, trial.load(), rest, wanted, found.get(), turned);
    }

    private static NoAnswer none(String text) {
        return new NoAnswer(TurnAnswer.Reason.NO_EQUILIBRIUM, text);
    }

    /** The car as read with the perches turned: other corner weights, let down or up by the mean of each end. */
    private static Optional<Car> after(Setup setup, Levelling levelling) {
        Entries car = setup.entries();
        for (Wheel wheel : Wheel.values()) {
            double gained = levelling.after().corner(wheel).load()
                    - levelling.now().corner(wheel).load();
            double now = setup.car().staticLoad(wheel.end(), wheel.side());
            car = Catalogue.with(car, "cornerWeights." + wheel.key(), (now + gained) / Weights.GRAVITY);
        }
        for (End end : End.values()) {
            double lowered = setup.car().axle(end).lowered() - levelling.after().rise(end);
            car = Catalogue.with(car, end.key() + ".lowered", Quantity.of(lowered, Dimension.LENGTH.metric()));
        }
        return Catalogue.build(car).value();
    }

    /** Part of the weight that an axle's two tyres carry. */
    static double share(Car car, End end) {
        return (car.staticLoad(end, Side.LEFT) + car.staticLoad(end, Side.RIGHT))
                / (car.weights().mass() * Weights.GRAVITY);
    }
}
