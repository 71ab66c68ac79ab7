package evenhand.drawing;

import evenhand.look.SetupStyle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A view of the car as data.
 *
 * @param title what is seen
 * @param items in the order that they are drawn
 * @param world what is to be seen whole, m; z up. It depends on the car's size only, so that it stays while a value is pulled
 * @param below room for words under it, in sizes of type
 * @param scaleBar length of the scale bar, m
 * @param scaleWords what stands beside it: "500 mm"
 * @param note what is to be known of the whole drawing; empty where nothing is
 * @param readings figures that are told at the hand where pulling moves them
 */
public record Drawing(
        String title,
        List<Item> items,
        List<Handle> handles,
        Rectangle2D world,
        double below,
        double scaleBar,
        String scaleWords,
        String note,
        List<Reading> readings) {
    /**
     * A figure that a pulled handle may move.
     *
     * @param shown with its digits
     * @param unit its symbol
     */
    public record Reading(String words, String shown, String unit) {}

    /** What anybody sees of a car. */
    private static final Set<Item.Ink> PLAIN =
            EnumSet.of(Item.Ink.GROUND, Item.Ink.BODY, Item.Ink.TYRE, Item.Ink.RIM, Item.Ink.WHEEL);

    public Drawing {
        items = List.copyOf(items);
        handles = List.copyOf(handles);
        readings = List.copyOf(readings);
    }

    /** One beside which no figures are told. */
    public Drawing(
            String title,
            List<Item> items,
            List<Handle> handles,
            Rectangle2D world,
            double below,
            double scaleBar,
            String scaleWords) {
        this(title, items, handles, world, below, scaleBar, scaleWords, "", List.of());
    }

    /** The same with something to be known of all of it. */
    Drawing noting(String words) {
        return new Drawing(title, items, handles, world, below, scaleBar, scaleWords, words, readings);
    }

    /** The same over another set-up, of which only what stands elsewhere is seen, and its name. */
    public Drawing over(Drawing base, String name, SetupStyle style) {
        List<Item> all = new ArrayList<>(Ghost.under(items, base.items, name, style));
        all.addAll(items);
        return new Drawing(title, all, handles, world, below, scaleBar, scaleWords, note, readings);
    }

    /** Whether another is of the same parts, so that one can glide to the other. */
    boolean isAlike(Drawing other) {
        if (items.size() != other.items.size() || !world.equals(other.world) || !seen().equals(other.seen())) {
            return false;
        }
        for (int i = 0; i < items.size(); i++) {
            if (!Between.alike(items.get(i), other.items.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** The view, whatever the pace: its title up to the comma. */
    private String seen() {
        int comma = title.indexOf(',');
        return comma < 0 ? title : title.substring(0, comma);
    }

    /** Part of the way to another of the same parts; all the way is that itself. */
    Drawing towards(Drawing to, double part) {
        return part >= 1
                ? to
                : new Drawing(
                        to.title,
                        Between.items(items, to.items, part),
                        to.handles,
                        to.world,
                        to.below,
                        to.scaleBar,
                        to.scaleWords,
                        to.note,
                        to.readings);
    }

    /** The same without anything to pull, for paper. */
    public Drawing withoutHandles() {
        return new Drawing(title, items, List.of(), world, below, scaleBar, scaleWords, note, List.of());
    }

    /**
     * The same for who knows no terms: the body as a strong line, wheels and road, and the body of another state as a thin line.
     *
     * @param other none where there is nothing to see beside it
     */
    public Drawing plain(String called, Optional<Drawing> other) {
        List<Item> seen = new ArrayList<>();
        other.ifPresent(one -> one.outlines(Set.of(Item.Ink.BODY))
                .forEach(body -> seen.add(new Item.Outline(body.path(), Item.Ink.MEASURE, body.style()))));
        outlines(PLAIN)
                .map(own -> own.ink() == Item.Ink.BODY ? new Item.Outline(own.path(), Item.Ink.LINK, own.style()) : own)
                .forEach(seen::add);
        return new Drawing(called, seen, List.of(), world, 0, scaleBar, scaleWords);
    }

    private Stream<Item.Outline> outlines(Set<Item.Ink> inks) {
        return items.stream()
                .filter(item -> item instanceof Item.Outline outline && inks.contains(outline.ink()))
                .map(Item.Outline.class::cast);
    }

    /** The same with something else to be seen whole. */
    Drawing in(Rectangle2D other) {
        return new Drawing(title, items, handles, other, below, scaleBar, scaleWords, note, readings);
    }

    /** What stands otherwise in another state of it: "roll centre 295.4 → 301.2 mm". */
    List<String> changesSince(List<Reading> before) {
        return readings.stream()
                .flatMap(now -> before.stream()
                        .filter(was ->
                                was.words().equals(now.words()) && !was.shown().equals(now.shown()))
                        .map(was -> now.words() + " " + was.shown() + " → " + now.shown() + " " + now.unit()))
                .toList();
    }

    /** The handle of a path, if it has one. */
    public Optional<Handle> handle(String path) {
        return handles.stream().filter(handle -> handle.path().equals(path)).findFirst();
    }

    /** The nearest handle no farther than this from a place, m. */
    public Optional<Handle> handleAt(double x, double z, double reach) {
        return handles.stream()
                .filter(handle -> Math.hypot(handle.x() - x, handle.z() - z) <= reach)
                .min(Comparator.comparingDouble(handle -> Math.hypot(handle.x() - x, handle.z() - z)));
    }

    /** All words in it. */
    public List<String> words() {
        return items.stream()
                .flatMap(item -> item instanceof Item.Words words
                        ? Stream.of(words.words())
                        : item instanceof Item.Mark mark
                                ? Stream.of(mark.words())
                                : item instanceof Item.Arrow arrow ? Stream.of(arrow.words()) : Stream.empty())
                .toList();
    }

    public List<Item.Mark> marks() {
        return items.stream()
                .filter(Item.Mark.class::isInstance)
                .map(Item.Mark.class::cast)
                .toList();
    }
}
