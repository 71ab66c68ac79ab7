package evenhand.car.mounts;

import static evenhand.quantity.InvalidValue.require;

import evenhand.car.Axle;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.links.AxleLinks;
import evenhand.car.links.Dampers;
import evenhand.car.links.LinkedAxle;
import evenhand.car.links.LinkedLiveAxle;
import evenhand.car.links.LinkedWheels;
import evenhand.car.links.Locator;
import evenhand.car.links.SpringLine;
import evenhand.car.links.WheelLinks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An end of a member that carries force between two parts of an axle, or between it and the body.
 *
 * @param axle at which end of the car
 * @param member such as {@code lowerLinkLeft}
 * @param end such as {@code body}
 */
public record PartEnd(End axle, String member, String end) {
    private static final String LEFT = "Left";
    private static final String RIGHT = "Right";

    /** As it stands in files and answers, such as {@code rear.lowerLinkLeft.body}. */
    public String key() {
        return part() + "." + end;
    }

    /** The whole member, such as {@code rear.lowerLinkLeft}. */
    public String part() {
        return axle.key() + "." + member;
    }

    /**
     * The end that a file names.
     *
     * @throws evenhand.quantity.InvalidValue unless it is an axle, a member and an end with dots between
     */
    public static PartEnd of(String key) {
        int first = key.indexOf('.');
        int last = key.lastIndexOf('.');
        Optional<End> axle = first <= 0
                ? Optional.empty()
                : List.of(End.values()).stream()
                        .filter(end -> end.key().equals(key.substring(0, first)))
                        .findFirst();
        require(
                axle.isPresent() && last > first + 1 && last < key.length() - 1,
                "carries",
                "\"" + key
                        + "\" is no end of a part; write an axle, a part and its end, such as rear.lowerLinkLeft.body");
        return new PartEnd(axle.orElseThrow(), key.substring(first + 1, last), key.substring(last + 1));
    }

    /** The same on the other side; what is there once stays. */
    public PartEnd mirrored() {
        String other = member.endsWith(LEFT)
                ? member.substring(0, member.length() - LEFT.length()) + RIGHT
                : member.endsWith(RIGHT) ? member.substring(0, member.length() - RIGHT.length()) + LEFT : member;
        return new PartEnd(axle, other, end);
    }

    /** A member of a pair on one side. */
    public static String on(Side side, String member) {
        return member + (side == Side.LEFT ? LEFT : RIGHT);
    }

    /** All ends that there are at an axle. */
    public static List<PartEnd> known(Axle axle, End at) {
        List<PartEnd> ends = new ArrayList<>();
        Ends of = new Ends(at, ends);
        Optional<LinkedAxle> links = axle.links();
        if (links.isEmpty()) {
            of.coefficients(axle);
        } else if (links.get() instanceof LinkedLiveAxle live) {
            of.live(live, axle);
        } else {
            of.wheels((LinkedWheels) links.get(), axle);
        }
        return List.copyOf(ends);
    }

    /** Gathers the ends of one axle. */
    private record Ends(End at, List<PartEnd> ends) {
        private void add(String member, String... names) {
            for (String name : names) {
                ends.add(new PartEnd(at, member, name));
            }
        }

        private void pair(String member, String... names) {
            for (Side side : Side.values()) {
                add(on(side, member), names);
            }
        }

        void coefficients(Axle axle) {
            if (axle instanceof Axle.Live) {
                add("lateralLocator", "body", "axle");
                add("links", "body", "axle");
            } else {
                pair("links", "body", "upright");
            }
            pair("spring", "top", "bottom");
            damperAndStops(axle, axle.damper().isPresent(), true);
        }

        void live(LinkedLiveAxle given, Axle axle) {
            AxleLinks links = given.links();
            if (links.lowerLink().isPresent()) {
                pair("lowerLink", "body", "axle");
            }
            if (links.upperLink().isPresent()) {
                pair("upperLink", "body", "axle");
            }
            if (links.middleLink().isPresent()) {
                add("middleLink", "body", "axle");
            }
            if (links.torqueArm().isPresent()) {
                add("dropLink", "hanger", "end");
            }
            if (links.leaf().isPresent()) {
                pair("leaf", "frontEye", "shackle");
            }
            given.locator().ifPresent(locator -> {
                if (locator instanceof Locator.PanhardPoints) {
                    add("panhardRod", "body", "axle");
                } else if (locator instanceof Locator.WattPoints) {
                    add("upperRod", "pin", "end");
                    add("lowerRod", "pin", "end");
                    add("crankPivot", "pivot");
                } else {
                    add("lateralLocator", "body", "axle");
                }
            });
            if (links.leaf().isEmpty()) {
                pair("spring", "top", "bottom");
            }
            if (given.mounts().bar().isPresent()) {
                pair("barLink", "armEnd", "linkEnd");
            }
            damperAndStops(
                    axle, axle.damper().isPresent() || given.mounts().damper().isPresent(), true);
        }

        void wheels(LinkedWheels given, Axle axle) {
            pair("lowerArm", "front", "rear", "outer");
            boolean strut = given.links() instanceof WheelLinks.StrutAndArm;
            if (strut) {
                pair("strut", "top");
            } else {
                pair("upperArm", "front", "rear", "outer");
            }
            pair("tieRod", "inner", "outer");
            boolean aroundStrut = given.mounts()
                    .spring()
                    .map(line -> line instanceof SpringLine.AroundStrut)
                    .orElse(false);
            if (!aroundStrut) {
                pair("spring", "top", "bottom");
            }
            if (given.mounts().bar().isPresent()) {
                pair("barLink", "armEnd", "linkEnd");
            }
            boolean eyes = given.mounts()
                    .damper()
                    .map(damper -> damper.line() instanceof Dampers.BetweenEyes)
                    .orElse(axle.damper().isPresent() && !strut);
            damperAndStops(axle, eyes, !strut);
        }

        private void damperAndStops(Axle axle, boolean damper, boolean stops) {
            if (damper) {
                pair("damper", "top", "bottom");
            }
            if (stops
                    && (axle.stops().bump().isPresent() || axle.stops().metal().isPresent())) {
                pair("bumpStop", "top", "bottom");
            }
            if (stops && axle.stops().droop().isPresent()) {
                pair("droopStop", "top", "bottom");
            }
        }
    }
}
