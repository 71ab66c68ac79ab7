package evenhand.window.question;

import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.catalogue.Adjustable;
import evenhand.scenario.Setup;
import java.util.List;
import java.util.stream.Stream;

/** Paths of what a shop adjusts, as far as a car has it. */
final class Knobs {
    /** What is said behind the name of a bar that a car has not. */
    static final String NOT_FITTED = ", not fitted";

    private Knobs() {}

    /** What the body or the two wheels of an axle roll about: a locator's height, its pivot's, or the roll centre's. */
    static String rollCentre(Setup setup, End end) {
        String axle = end.key();
        if (!(setup.car().axle(end) instanceof Axle.Live)) {
            return axle + ".rollCentre.height";
        }
        List<String> pivot = here(setup, Stream.of(axle + ".lateralLocator.pivot.up"));
        return pivot.isEmpty() ? axle + ".lateralLocator.height" : pivot.get(0);
    }

    /** Both roll centres, that of a live axle first. */
    static List<String> rollCentres(Setup setup) {
        String front = rollCentre(setup, End.FRONT);
        String rear = rollCentre(setup, End.REAR);
        return setup.car().axle(End.FRONT) instanceof Axle.Live && !(setup.car().rear() instanceof Axle.Live)
                ? List.of(front, rear)
                : List.of(rear, front);
    }

    static List<String> springsAndBars(Setup setup) {
        return here(
                setup,
                Stream.of(
                        "front.bar.rollStiffness",
                        "front.bar.diameter",
                        "rear.bar.rollStiffness",
                        "rear.bar.diameter",
                        "front.spring.rate",
                        "rear.spring.rate"));
    }

    /** Stiffnesses of bars that this car has not, and could have. */
    static List<String> barsNotFitted(Setup setup) {
        return Stream.of(End.values())
                .filter(end -> setup.car().axle(end).bar().isEmpty())
                .map(end -> end.key() + ".bar.rollStiffness")
                .toList();
    }

    static List<String> heights() {
        return List.of("front.lowered", "rear.lowered");
    }

    /** What is set on links and dampers that have points: lengths of rods, shims. */
    static List<String> linkSettings(Setup setup) {
        return setup.values().stream()
                .map(Adjustable::path)
                .filter(path -> path.endsWith(".longer") || path.endsWith(".shim"))
                .toList();
    }

    /** What is set by hand on links: pivots, lengths of rods, and how far the body is let down. */
    static List<String> ofLinks(Setup setup) {
        return here(
                setup,
                Stream.of(
                        "rear.lateralLocator.pivot.up",
                        "rear.lateralLocator.longer",
                        "rear.links.torqueArm.longer",
                        "rear.links.middleLink.longer",
                        "rear.links.lowerLink.longer",
                        "rear.links.tieRod.longer",
                        "front.links.tieRod.longer",
                        "front.lowered",
                        "rear.lowered"));
    }

    /** Those of the paths that name a number of this car. */
    static List<String> here(Setup setup, Stream<String> paths) {
        List<String> known = setup.values().stream().map(Adjustable::path).toList();
        return paths.filter(known::contains).toList();
    }

    static List<String> joined(Setup setup, List<String> first, List<String> then) {
        return here(setup, Stream.concat(first.stream(), then.stream()).distinct());
    }
}
