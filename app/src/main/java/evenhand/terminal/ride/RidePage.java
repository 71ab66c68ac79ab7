package evenhand.terminal.ride;

import evenhand.car.End;
import evenhand.forms.Table;
import evenhand.quantity.Dimension;
import evenhand.ride.Ride;
import evenhand.scenario.Setup;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.OneScreen;
import evenhand.terminal.reply.Reply;
import evenhand.terminal.reply.SetupAnswer;
import evenhand.terminal.reply.SetupRide;
import evenhand.words.LoadWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.compare.RideComparisonWords;
import evenhand.words.ride.RideWords;
import evenhand.words.ride.SeatWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The verdict of {@code ride} on one screen: each set-up against the first, and what it rides like, a line each. */
final class RidePage {
    private static final String CUT = "…";

    /** Characters of a set-up's name, and of the numbers of both ends in its line. */
    private static final int NAME = 23;

    private static final int FRONT = 7;
    private static final int REAR = 6;

    private final Console console;
    private final Units units;
    private final RideReply reply;

    RidePage(Console console, Units units, RideReply reply) {
        this.console = console;
        this.units = units;
        this.reply = reply;
    }

    String write() {
        OneScreen page = new OneScreen(
                console,
                reply.setups().size(),
                "Felt at the seat's bolts, by ISO 2631-1; the rest is common practice. --full has all, and why.");
        page.title(reply.scenario().title(), "");
        List<Setup> asked = reply.setups().stream().map(SetupRide::setup).toList();
        List<SetupRide.Rides> riding = reply.riding();
        List<String> figures = figures();
        List<String> otherRoads = otherRoads(riding);
        int rest = figures.size()
                + 3
                + otherRoads.stream()
                        .mapToInt(sentence -> page.lines("", sentence))
                        .sum();
        comparisons(riding).forEach(sentence -> page.paragraphBefore(sentence, rest));
        page.reserve(rest);
        warnings().forEach(page::warning);
        page.cautions(asked);
        page.release(rest);
        page.blank();
        page.paragraph(
                "",
                "On " + reply.road().words() + " at " + units.show(reply.speed(), Dimension.SPEED, 0)
                        + reply.load()
                                .map(load -> ". " + LoadWords.aboard(load, units))
                                .orElse("."));
        figures.forEach(page::line);
        otherRoads.forEach(sentence -> page.paragraph("", sentence));
        page.notGiven(asked);
        return page.text();
    }

    /** Each way of riding against the first set-up, with those that ride so. */
    private List<String> comparisons(List<SetupRide.Rides> riding) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (SetupRide.Rides one : riding.subList(Math.min(1, riding.size()), riding.size())) {
            alike.computeIfAbsent(
                            RideComparisonWords.of(riding.get(0).ride(), one.ride(), units), key -> new ArrayList<>())
                    .add("\"" + one.setup().name() + "\"");
        }
        List<String> sentences = new ArrayList<>();
        alike.forEach((said, names) -> sentences.add(
                (sentences.isEmpty() ? "Against \"" + riding.get(0).setup().name() + "\": " : "")
                        + String.join(", ", names) + ": " + said + "."));
        return sentences;
    }

    /** What is out of order at rest and on the road, with the set-ups that it holds for where it does not hold for all. */
    private List<String> warnings() {
        Map<String, List<String>> whose = new LinkedHashMap<>();
        for (SetupAnswer.None none : Reply.only(SetupAnswer.None.class, reply.setups())) {
            whose.computeIfAbsent(none.sentence(), key -> new ArrayList<>())
                    .add(none.setup().name());
        }
        for (SetupRide.Rides one : reply.riding()) {
            for (End end : End.values()) {
                RideWords.warnings(one.ride().axle(end))
                        .forEach(warning -> whose.computeIfAbsent(warning, key -> new ArrayList<>())
                                .add(one.setup().name()));
            }
        }
        List<String> warnings = new ArrayList<>();
        reply.road().warning(reply.speed()).ifPresent(warnings::add);
        whose.forEach((warning, names) -> warnings.add(
                names.size() < reply.setups().size() ? String.join(", ", names) + ": " + warning : warning));
        return warnings;
    }

    /** The first set-up on a smoother and a rougher road. */
    private static List<String> otherRoads(List<SetupRide.Rides> riding) {
        return riding.stream()
                .limit(1)
                .flatMap(one -> SeatWords.onOtherRoads(one.ride()).stream()
                        .map(roads -> "\"" + one.setup().name() + "\" at this speed " + roads + "."))
                .toList();
    }

    private List<String> figures() {
        List<String> lines = new ArrayList<>();
        if (reply.riding().isEmpty()) {
            return lines;
        }
        String travel = "to stop, " + units.of(Dimension.LENGTH).symbol();
        String both = right(End.FRONT, "front") + right(End.REAR, "rear");
        lines.add(left("", NAME) + over("body, Hz") + over("damping") + over(travel) + "  felt at the seat,");
        lines.add(left("", NAME) + both.repeat(3) + "  m/s^2");
        for (SetupRide.Rides one : reply.riding()) {
            lines.add(line(one.setup().name(), one.ride()));
        }
        return lines;
    }

    private String line(String name, Ride ride) {
        StringBuilder line = new StringBuilder(left(name, NAME));
        int digits = units == Units.METRIC ? 0 : 2;
        for (End end : End.values()) {
            line.append(right(end, Numbers.fixed(ride.frequency(end), 2)));
        }
        for (End end : End.values()) {
            line.append(right(end, shown(ride.damping(end), 2)));
        }
        for (End end : End.values()) {
            OptionalDouble travel = ride.axle(end).standing().bumpTravelToStop();
            line.append(right(
                    end,
                    travel.isPresent()
                            ? Numbers.fixed(units.of(Dimension.LENGTH).fromSi(travel.getAsDouble()), digits)
                            : Table.NOTHING));
        }
        OptionalDouble felt = ride.seatComfort();
        return line.append("  ")
                .append(shown(felt, 2))
                .append(felt.isPresent() ? "  " + SeatWords.felt(felt.getAsDouble()) : "")
                .toString();
    }

    private static String shown(OptionalDouble value, int digits) {
        return value.isPresent() ? Numbers.fixed(value.getAsDouble(), digits) : Table.NOTHING;
    }

    private static String left(String text, int width) {
        String line = Console.oneLine(text);
        int length = line.codePointCount(0, line.length());
        return length > width
                ? line.substring(0, line.offsetByCodePoints(0, width - 1)) + CUT
                : line + " ".repeat(width - length);
    }

    private static String right(End end, String text) {
        return " ".repeat(Math.max(1, (end == End.FRONT ? FRONT : REAR) - text.length())) + text;
    }

    /** Over the numbers of both ends. */
    private static String over(String text) {
        return " ".repeat(Math.max(0, FRONT + REAR - text.length())) + text;
    }
}
