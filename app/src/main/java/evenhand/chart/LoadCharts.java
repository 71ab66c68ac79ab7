package evenhand.chart;

import evenhand.car.End;
import evenhand.chart.Part.Bar;
import evenhand.chart.Part.Hatch;
import evenhand.chart.Part.Rule;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.structure.CarLoads;
import evenhand.structure.MountFigure;
import evenhand.structure.Peak;
import evenhand.structure.WorstMember;
import evenhand.structure.WorstMount;
import evenhand.words.ChangeWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.loads.LoadsWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;

/** What links and mounts carry at the worst, set-ups beside one another. */
public final class LoadCharts {
    /** A smaller force is not worth a bar, N. */
    private static final double SLIGHT = 50;

    private LoadCharts() {}

    /** A set-up whose parts carry. */
    public record Carrying(String name, SetupStyle style, CarLoads loads) {
        /** Of a pair the harder worked side. */
        private Optional<WorstMember> worst(String pair) {
            return loads.worstMembers().stream()
                    .filter(member -> pair(member.part()).equals(pair))
                    .max((one, other) -> Double.compare(
                            one.greatest().value(), other.greatest().value()));
        }

        private Optional<Peak> peak(String mount, MountFigure figure) {
            return loads.worstMounts().stream()
                    .filter(one -> one.mount().equals(mount))
                    .findFirst()
                    .flatMap(one -> Optional.ofNullable(one.peaks().get(figure)));
        }
    }

    /** Left and right of a thing as one. */
    private static String pair(String part) {
        return part.replaceFirst("(Left|Right)$", "");
    }

    /** The greatest force of each member of an axle, of pairs that of the harder worked side; said in which case. */
    public static Chart members(List<Carrying> cars, End end, Units units) {
        Unit unit = units.of(Dimension.FORCE);
        Set<String> parts = new LinkedHashSet<>();
        for (Carrying car : cars) {
            for (WorstMember member : car.loads().worstMembers()) {
                if (member.part().startsWith(end.key() + ".")
                        && member.greatest().value() > SLIGHT) {
                    parts.add(pair(member.part()));
                }
            }
        }
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> bars = new ArrayList<>();
        for (String part : parts) {
            for (int lane = 0; lane < cars.size(); lane++) {
                Carrying car = cars.get(lane);
                Optional<WorstMember> worst = car.worst(part);
                if (worst.isPresent()) {
                    Peak peak = worst.get().greatest();
                    bars.add(bar(
                            rows.size(),
                            lane,
                            cars,
                            unit.fromSi(peak.value()),
                            LoadsWords.force(peak.value(), units) + ", " + peak.title()));
                }
            }
            String words = ChangeWords.name(part);
            rows.add(new Axis.Row(words.replaceFirst("^" + end.key() + " ", ""), ""));
        }
        return chart("Greatest force in each part of the " + end.key() + " axle", "force", unit, 0, rows, bars);
    }

    /** How much of its steel's yield, or of its rated load, each mount uses at the worst. */
    public static Chart mounts(List<Carrying> cars, Units units) {
        Unit unit = units.of(Dimension.RATIO);
        List<Axis.Row> rows = new ArrayList<>();
        List<Part> bars = new ArrayList<>();
        Set<String> mounts = new LinkedHashSet<>();
        cars.forEach(car -> car.loads().worstMounts().forEach((WorstMount mount) -> mounts.add(mount.mount())));
        for (String mount : mounts) {
            for (MountFigure figure : List.of(MountFigure.YIELD_USED, MountFigure.RATED_USED)) {
                boolean any = false;
                for (int lane = 0; lane < cars.size(); lane++) {
                    Optional<Peak> peak = cars.get(lane).peak(mount, figure);
                    if (peak.isPresent()) {
                        any = true;
                        bars.add(bar(
                                rows.size(),
                                lane,
                                cars,
                                unit.fromSi(peak.get().value()),
                                Numbers.percent(peak.get().value(), 0) + ", "
                                        + peak.get().title()));
                    }
                }
                if (any) {
                    rows.add(new Axis.Row(mount + (figure == MountFigure.YIELD_USED ? ", yield" : ", rated load"), ""));
                }
            }
        }
        return chart("What each mount uses (below 100 % clears nothing)", "used", unit, 0, rows, bars);
    }

    private static Bar bar(int row, int lane, List<Carrying> cars, double value, String words) {
        Carrying car = cars.get(lane);
        return new Bar(row, lane, cars.size(), car.name(), "", car.style(), Hatch.FULL, 0, value, words);
    }

    private static Chart chart(
            String title, String words, Unit unit, int digits, List<Axis.Row> rows, List<Part> bars) {
        Span wide = Span.around(bars.stream().flatMapToDouble(part -> DoubleStream.of(((Bar) part).to())))
                .including(0)
                .loosened(0.3)
                .rounded();
        List<Part> all = new ArrayList<>(bars);
        all.add(new Rule(Rule.Kind.ZERO, Rule.Along.ACROSS, 0, ""));
        return new Chart(title, Axis.Measure.of(words, unit, digits, wide), new Axis.Rows("", rows), all);
    }
}
