package evenhand.chart;

import evenhand.look.SetupStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A chart as data: everything that it shows, nothing of how it looks.
 *
 * @param title what it says
 * @param across the axis from left to right
 * @param up the axis upwards, or rows with names
 * @param parts in the order that they are drawn
 * @param notes lines below it: what is not shown and why
 */
public record Chart(String title, Axis.Measure across, Axis up, List<Part> parts, List<String> notes) {
    public Chart {
        parts = List.copyOf(parts);
        notes = List.copyOf(notes);
    }

    /** A chart without notes. */
    public Chart(String title, Axis.Measure across, Axis up, List<Part> parts) {
        this(title, across, up, parts, List.of());
    }

    public List<Part.Line> lines() {
        return of(Part.Line.class);
    }

    public List<Part.Band> bands() {
        return of(Part.Band.class);
    }

    public List<Part.Bar> bars() {
        return of(Part.Bar.class);
    }

    public List<Part.Whisker> whiskers() {
        return of(Part.Whisker.class);
    }

    public List<Part.Mark> marks() {
        return of(Part.Mark.class);
    }

    public List<Part.Rule> rules() {
        return of(Part.Rule.class);
    }

    public List<Part.Guide> guides() {
        return of(Part.Guide.class);
    }

    /** The first line of a set-up with this part, if there is one. */
    public Stream<Part.Line> line(String name, String part) {
        return lines().stream()
                .filter(line -> line.name().equals(name) && line.part().equals(part));
    }

    /** Nothing in it but axes, rules and guides. */
    public boolean isEmpty() {
        return lines().isEmpty() && bars().isEmpty() && whiskers().isEmpty() && marks().isEmpty();
    }

    /** The same chart with more in it, on top. */
    public Chart with(List<? extends Part> more) {
        List<Part> all = new ArrayList<>(parts);
        all.addAll(more);
        return new Chart(title, across, up, all, notes);
    }

    /** The same chart with more behind everything else, such as bands of doubt. */
    public Chart behind(List<? extends Part> more) {
        List<Part> all = new ArrayList<>(more);
        all.addAll(parts);
        return new Chart(title, across, up, all, notes);
    }

    /** The same chart with one more line below it. */
    public Chart noting(String note) {
        List<String> all = new ArrayList<>(notes);
        all.add(note);
        return new Chart(title, across, up, parts, all);
    }

    /** The same chart with axes that hold another's spans besides its own. */
    public Chart wideAs(Chart other) {
        return over(across.span().including(other.across.span()), up.span().including(other.up.span()));
    }

    /** The same chart with other axes' spans; rows stay as they are. */
    public Chart over(Span acrossSpan, Span upSpan) {
        Axis other = up instanceof Axis.Measure measure ? measure.over(upSpan) : up;
        return new Chart(title, across.over(acrossSpan), other, parts, notes);
    }

    /** The set-ups in it, in the order that they appear. */
    public List<Setup> setups() {
        return parts.stream()
                .flatMap(part -> part instanceof Part.Line line
                        ? Stream.of(new Setup(line.name(), line.style()))
                        : part instanceof Part.Bar bar
                                ? Stream.of(new Setup(bar.name(), bar.style()))
                                : part instanceof Part.Whisker whisker
                                        ? Stream.of(new Setup(whisker.name(), whisker.style()))
                                        : Stream.empty())
                .filter(setup -> setup.style().ofSetup())
                .distinct()
                .toList();
    }

    /** A set-up's name and look. */
    public record Setup(String name, SetupStyle style) {}

    private <P> List<P> of(Class<P> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
