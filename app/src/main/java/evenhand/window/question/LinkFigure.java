package evenhand.window.question;

import evenhand.answers.Figure;
import evenhand.answers.TravelFigures;
import evenhand.linkage.AxleState;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A figure of an axle on its links that can be chosen.
 *
 * @param words as it is chosen
 * @param left of the axle, or of its left wheel
 * @param right of the right wheel, where it is a wheel's
 */
record LinkFigure(String words, Figure<AxleState> left, Optional<Figure<AxleState>> right) {
    /** What kinds of axle have figures of their own. */
    enum Guided {
        LIVE("live"),
        STEERED("steered"),
        WHEELS("wheels");

        private final String key;

        Guided(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    /** What is read off a place, and is no answer to it. */
    private static final List<Figure<AxleState>> PLACE =
            List.of(TravelFigures.LEFT_TRAVEL, TravelFigures.RIGHT_TRAVEL, TravelFigures.REFERENCE_STEER);

    /** What a ratio is declared with that is no share. */
    private static final int RATIO_DIGITS = 3;

    private static final List<String> OF_LIVE_AXLES = List.of("springRollRatio", "damperRollRatio", "barRollRatio");
    private static final List<String> OF_STEERED = List.of("rack", "ackermannShare");

    /** All of such an axle, in the order of an answer. */
    static List<LinkFigure> of(Guided guided) {
        List<LinkFigure> all = new ArrayList<>();
        TravelFigures.STATE.stream()
                .filter(figure -> !PLACE.contains(figure))
                .filter(figure -> guided == Guided.STEERED || !OF_STEERED.contains(figure.name()))
                .filter(figure -> guided != Guided.LIVE || !figure.equals(TravelFigures.ROLL_CENTRE_OFFSET))
                .forEach(figure -> all.add(whole(figure)));
        if (guided == Guided.LIVE) {
            TravelFigures.LIVE.forEach(figure -> all.add(whole(figure.within(AxleState::live))));
            TravelFigures.SHAFT.forEach(figure ->
                    all.add(whole(figure.within(state -> state.live().flatMap(AxleState.LiveFigures::shaft)))));
        }
        TravelFigures.WHEEL.stream()
                .filter(figure -> guided == Guided.LIVE || !OF_LIVE_AXLES.contains(figure.name()))
                .forEach(figure -> all.add(wheel(figure, Optional::of)));
        if (guided != Guided.LIVE) {
            TravelFigures.OWN.forEach(figure -> all.add(wheel(figure, AxleState.WheelFigures::own)));
        }
        return List.copyOf(all);
    }

    private static LinkFigure whole(Figure<AxleState> figure) {
        boolean share = figure.name().startsWith("anti");
        return new LinkFigure(words(figure), share ? figure.to(1) : figure, Optional.empty());
    }

    private static <T> LinkFigure wheel(Figure<T> figure, Function<AxleState.WheelFigures, Optional<T>> part) {
        return new LinkFigure(
                words(figure),
                figure.within(state -> part.apply(state.left())),
                Optional.of(figure.within(state -> part.apply(state.right()))));
    }

    /** Heads of tables that say too little by themselves. */
    private static String words(Figure<?> figure) {
        return switch (figure.name()) {
            case "sideShift" -> "axle to the left";
            case "foreAft" -> "axle forwards";
            case "ackermannShare" -> "share of Ackermann";
            case "swingCentreHeight" -> "height of the swing arm's centre";
            case "caster" -> "castor";
            default -> figure.words();
        };
    }

    static LinkFigure named(List<LinkFigure> all, String words) {
        return all.stream()
                .filter(figure -> figure.words().equals(words))
                .findFirst()
                .orElse(all.get(0));
    }

    static List<String> words(List<LinkFigure> all) {
        return all.stream().map(LinkFigure::words).toList();
    }

    /** As it is said of one wheel. */
    String ofLeft() {
        return right.isPresent() ? words + " of the left wheel" : words;
    }

    /** Leverages and slopes stand as ratios, shares as per cent. */
    static Unit unit(Figure<?> figure, Units units) {
        return figure.dimension() == Dimension.RATIO && figure.digits() == RATIO_DIGITS
                ? figure.unit()
                : units.of(figure.dimension());
    }
}
