package evenhand.forms;

import evenhand.car.End;
import evenhand.car.mounts.PartEnd;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.structure.EndLoad;
import evenhand.structure.MemberLoad;
import evenhand.structure.MountFigure;
import evenhand.structure.MountLoad;
import evenhand.structure.Peak;
import evenhand.structure.UseAnswer;
import evenhand.structure.WorstMember;
import evenhand.structure.WorstMount;
import evenhand.words.ChangeWords;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.loads.LoadedSetup.Loaded;
import evenhand.words.loads.LoadsWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What parts carry: the worst of each beside one another, and every end in one case. */
public final class LoadsTable {
    private LoadsTable() {}

    /** The worst of each mount and member; a column for each set-up, and last the case that makes it in the first that has it. */
    public static Table worst(List<Loaded> all, Units units) {
        List<String> heads = new ArrayList<>(all.stream().map(Loaded::name).toList());
        heads.add("worst in");
        Table.Builder table = new Table.Builder(heads);
        Set<String> mounts = new LinkedHashSet<>();
        all.forEach(one -> one.loads().worstMounts().forEach(mount -> mounts.add(mount.mount())));
        for (String mount : mounts) {
            table.heading(mount);
            for (MountFigure figure : MountFigure.values()) {
                row(
                        table,
                        words(figure),
                        unit(figure, units),
                        all,
                        one -> mount(one, mount)
                                .flatMap(of -> Optional.ofNullable(of.peaks().get(figure))),
                        digits(figure));
            }
        }
        Set<String> members = new LinkedHashSet<>(); // in the order in which an axle has them
        for (Loaded one : all) {
            for (End end : End.values()) {
                PartEnd.known(one.rest().car().axle(end), end).forEach(of -> members.add(of.part()));
            }
            one.loads().worstMembers().forEach(member -> members.add(member.part()));
        }
        table.heading("Greatest force at an end of");
        Unit force = units.of(Dimension.FORCE);
        for (String part : members) {
            row(
                    table,
                    ChangeWords.name(part),
                    force,
                    all,
                    one -> member(one, part).map(WorstMember::greatest),
                    0);
        }
        return table.build();
    }

    private static Optional<WorstMount> mount(Loaded car, String name) {
        return car.loads().worstMounts().stream()
                .filter(mount -> mount.mount().equals(name))
                .findFirst();
    }

    private static Optional<WorstMember> member(Loaded car, String part) {
        return car.loads().worstMembers().stream()
                .filter(member -> member.part().equals(part))
                .findFirst();
    }

    private static void row(
            Table.Builder table,
            String words,
            Unit unit,
            List<Loaded> all,
            Function<Loaded, Optional<Peak>> peak,
            int digits) {
        List<String> cells = new ArrayList<>();
        Optional<String> title = Optional.empty();
        for (Loaded one : all) {
            Optional<Peak> worst = peak.apply(one);
            cells.add(worst.map(found -> Numbers.fixed(unit.fromSi(found.value()), digits))
                    .orElse(Table.NOTHING));
            title = title.isPresent() ? title : worst.map(Peak::title);
        }
        if (title.isPresent()) {
            cells.add(title.get());
            table.row(words, unit.symbol(), cells);
        }
    }

    private static String words(MountFigure figure) {
        return switch (figure) {
            case TOTAL -> "force";
            case PRESSURE -> "pressure";
            case GREATEST_PRESSURE -> "greatest pressure";
            case EDGE_SHEAR -> "shear at the edge";
            case COMBINED_STRESS -> "combined stress";
            case YIELD_USED -> "yield used";
            case RATED_USED -> "rated load used";
            case EYE_MOMENT -> "moment of the eye";
        };
    }

    private static Unit unit(MountFigure figure, Units units) {
        return switch (figure) {
            case TOTAL -> units.of(Dimension.FORCE);
            case PRESSURE, GREATEST_PRESSURE, EDGE_SHEAR, COMBINED_STRESS -> LoadsWords.stressUnit(units);
            case YIELD_USED, RATED_USED -> units.of(Dimension.RATIO);
            case EYE_MOMENT -> units.of(Dimension.MOMENT);
        };
    }

    private static int digits(MountFigure figure) {
        return switch (figure) {
            case TOTAL, YIELD_USED, RATED_USED -> 0;
            case PRESSURE, GREATEST_PRESSURE, EDGE_SHEAR, COMBINED_STRESS -> 2;
            case EYE_MOMENT -> 1;
        };
    }

    /** Every end of every member in one case, and what each mount takes: forces on the part that an end is bolted to. */
    public static Table ends(UseAnswer.Carried one, Units units) {
        Table.Builder table = new Table.Builder(List.of("forwards", "left", "up", "in all", "along itself"));
        Unit force = units.of(Dimension.FORCE);
        for (MemberLoad member : one.members()) {
            String along = member.axial().isPresent()
                    ? Numbers.signed(force.fromSi(member.axial().getAsDouble()), 0)
                    : Table.NOTHING;
            for (EndLoad end : member.ends()) {
                row(
                        table,
                        ChangeWords.name(member.part()) + ", " + ChangeWords.name(end.end()) + " on "
                                + ChangeWords.name(end.on()),
                        end.force(),
                        force,
                        along);
            }
        }
        for (MountLoad mount : one.mounts()) {
            row(table, mount.mount(), mount.force(), force, Table.NOTHING);
            mount.beam().ifPresent(beam -> {
                row(table, mount.mount() + ", left support", beam.left(), force, Table.NOTHING);
                row(table, mount.mount() + ", right support", beam.right(), force, Table.NOTHING);
            });
        }
        return table.build();
    }

    private static void row(Table.Builder table, String words, Vector3D force, Unit unit, String along) {
        table.row(
                words,
                unit.symbol(),
                List.of(
                        Numbers.fixed(unit.fromSi(force.getX()), 0),
                        Numbers.fixed(unit.fromSi(force.getY()), 0),
                        Numbers.fixed(unit.fromSi(force.getZ()), 0),
                        Numbers.fixed(unit.fromSi(force.getNorm()), 0),
                        along));
    }
}
