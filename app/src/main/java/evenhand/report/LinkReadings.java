package evenhand.report;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.Dampers;
import evenhand.car.links.LinkedAxle;
import evenhand.linkage.AxleState;
import evenhand.linkage.LinkAnswer;
import evenhand.linkage.Ranges;
import evenhand.linkage.Travel;
import evenhand.linkage.TravelAnswer;
import evenhand.quantity.Dimension;
import evenhand.report.SetupSheet.Group;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads off links that are known by points how long to make them, and what they set at rest. */
final class LinkReadings {
    /** Only where it stands. */
    private static final Ranges AT_REST = new Ranges(0, 0, 0, 0, Ranges.USUAL.step());

    private static final Pattern CAPITAL = Pattern.compile("(?=[A-Z])");

    private final SheetReadings sheet;
    private final Units units;

    LinkReadings(SheetReadings sheet, Units units) {
        this.sheet = sheet;
        this.units = units;
    }

    /** Of one end of a car as it was read. */
    void of(Car car, End end) {
        Optional<LinkedAxle> linked = car.linked(end);
        if (linked.isEmpty() || !(Travel.of(linked.get(), AT_REST) instanceof TravelAnswer.Followed followed)) {
            return;
        }
        sheet.in(Group.CORNER, Optional.empty());
        followed.rest()
                .left()
                .own()
                .ifPresent(own -> sheet.measure("caster", "caster", own.caster(), Dimension.ANGLE, 1, true));
        sheet.in(Group.AXLE, Optional.empty());
        followed.rest()
                .live()
                .flatMap(AxleState.LiveFigures::shaft)
                .ifPresent(shaft -> sheet.measure(
                        "pinion slope, front end up",
                        "propShaft.pinionSlope",
                        shaft.pinionSlope(),
                        Dimension.ANGLE,
                        1,
                        true));
        followed.links().forEach(this::link);
        linked.get().mounts().damper().ifPresent(this::eyes);
    }

    private void link(LinkAnswer link) {
        String name = link.name();
        Optional<Side> side = Optional.empty();
        for (Side one : Side.values()) {
            String word = one == Side.LEFT ? "Left" : "Right";
            if (name.endsWith(word)) {
                side = Optional.of(one);
                name = name.substring(0, name.length() - word.length());
            }
        }
        sheet.in(Group.LINK, side);
        int digits = units == Units.METRIC ? 1 : 3;
        String turns = link.turns().isPresent() && link.turns().getAsDouble() != 0
                ? ", " + Numbers.signed(link.turns().getAsDouble(), 2) + " turns"
                : "";
        sheet.measure(
                words(name),
                "links." + name + ".length",
                InPrint.symbol(units.show(link.length(), Dimension.LENGTH, digits)) + turns,
                Dimension.LENGTH,
                digits);
    }

    /** {@code lowerLink} is "lower link", and {@code pivot.up} "pivot up". */
    static String words(String part) {
        return String.join(" ", CAPITAL.split(part.replace('.', ' ')))
                .toLowerCase(Locale.ROOT)
                .replace("panhard", "Panhard");
    }

    private void eyes(Dampers dampers) {
        if (dampers.line() instanceof Dampers.BetweenEyes between) {
            for (Side side : Side.values()) {
                Dampers.Ends ends = between.ends().of(side);
                shim("upper damper eye, shims", "damper.top.shim", side, ends.top());
                shim("lower damper eye, shims", "damper.bottom.shim", side, ends.bottom());
            }
        }
    }

    private void shim(String what, String key, Side side, Dampers.Eye eye) {
        if (eye.shim() != 0) {
            sheet.in(Group.LINK, Optional.of(side));
            sheet.measure(what, key, eye.shim(), Dimension.LENGTH, units == Units.METRIC ? 1 : 3, true);
        }
    }
}
