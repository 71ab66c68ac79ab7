package evenhand.drawing;

import evenhand.car.Car;
import evenhand.car.End;
import evenhand.car.links.LinkedAxle;
import evenhand.linkage.Assembly;
import evenhand.linkage.AxleLines;
import evenhand.linkage.AxleLinkage;
import evenhand.linkage.Place;
import evenhand.look.SetupStyle;
import evenhand.structure.Act;
import evenhand.structure.AxleLoads;
import evenhand.structure.CarLoads;
import evenhand.structure.EndLoad;
import evenhand.structure.MemberLoad;
import evenhand.structure.UseAnswer;
import evenhand.structure.WorstMember;
import evenhand.words.ChangeWords;
import evenhand.words.Units;
import evenhand.words.loads.LoadsWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * An axle on its links in one case, with what its members do to the shell as arrows: one scale for all cases of a set-up, so that
 * one case may be held against another.
 */
public final class ForcesView {
    /** Length of the longest arrow of all cases over the track. */
    private static final double LONGEST = 0.45;

    /** Arrows below this part of the longest of the case are left out: they would only cover others. */
    private static final double SLIGHT = 0.04;

    private ForcesView() {}

    /** What the arrows are, in sentences. */
    public static final List<String> MEANING = List.of(
            "A coloured arrow is what a part does to the shell where it is bolted on, a grey one what the road does to a tyre.",
            "Arrows are to one scale in all cases; one of less than a twenty-fifth of the greatest is left out.");

    /** From behind, the left and above; none of an axle whose links have no points. */
    public static List<Drawing> of(
            Stance stance, Car atRest, CarLoads loads, UseAnswer.Carried one, End end, Units units) {
        Optional<LinkedAxle> linked = atRest.linked(end);
        if (linked.isEmpty() || !(Assembly.of(linked.get()) instanceof Assembly.Standing standing)) {
            return List.of();
        }
        AxleLinkage axle = standing.linkage();
        axle.rest();
        AxleLines rest = axle.lines();
        AxleLoads stands = one.axles().get(end);
        if (stands != null) {
            axle.moveTo(stands.leftTravel(), stands.rightTravel());
        }
        double worst = loads.worstMembers().stream()
                .filter(member -> member.part().startsWith(end.key() + "."))
                .mapToDouble(member -> member.greatest().value())
                .max()
                .orElse(1);
        double scale = LONGEST * linked.get().stance().track() / worst;
        double round = round(worst / 4);
        LinksView.Axle drawn = new LinksView.Axle(
                stance,
                end,
                rest,
                axle.lines(),
                one.title(),
                "",
                Set.of(),
                List.of(),
                List.of(),
                forces(atRest, loads, one, end, scale, units),
                Optional.of(new LinksView.Scale(scale * round, LoadsWords.force(round, units))),
                Detail.usual(units));
        return List.of(LinksView.behind(drawn), LinksView.side(drawn), LinksView.above(drawn));
    }

    /** One, two or five times a power of ten, not above. */
    private static double round(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double part = most / power;
        return power * (part >= 5 ? 5 : part >= 2 ? 2 : 1);
    }

    private static List<LinksView.Force> forces(
            Car atRest, CarLoads loads, UseAnswer.Carried one, End end, double scale, Units units) {
        double axleLine = end == End.FRONT ? 0 : atRest.wheelbase();
        double greatest = one.members().stream()
                .filter(member -> member.axle() == end)
                .mapToDouble(MemberLoad::greatest)
                .max()
                .orElse(0);
        List<String> members = parts(loads, end);
        List<LinksView.Force> forces = new ArrayList<>();
        AxleLoads axle = one.axles().get(end);
        if (axle != null) {
            for (Act act : axle.acts()) {
                if (act.what().startsWith("wheel") && act.force().getNorm() > SLIGHT * greatest) {
                    forces.add(force(act.at(), act.force(), act.what(), SetupStyle.NONE, units, axleLine, scale));
                }
            }
        }
        for (MemberLoad member : one.members()) {
            if (member.axle() != end) {
                continue;
            }
            SetupStyle style = new SetupStyle(members.indexOf(pair(member.member())));
            for (EndLoad at : member.ends()) {
                if (at.on().equals("body") && at.force().getNorm() > SLIGHT * greatest) {
                    String words = ChangeWords.name(member.member());
                    forces.add(force(at.at(), at.force(), words, style, units, axleLine, scale));
                }
            }
        }
        return forces;
    }

    /** Members of an axle in a lasting order, both sides as one: each has its colour. */
    private static List<String> parts(CarLoads loads, End end) {
        Set<String> parts = new LinkedHashSet<>();
        for (WorstMember member : loads.worstMembers()) {
            if (member.part().startsWith(end.key() + ".")) {
                parts.add(pair(member.part().substring(end.key().length() + 1)));
            }
        }
        return List.copyOf(parts);
    }

    private static String pair(String member) {
        return member.replaceFirst("(Left|Right)$", "");
    }

    private static LinksView.Force force(
            Vector3D at, Vector3D force, String what, SetupStyle style, Units units, double axleLine, double scale) {
        return new LinksView.Force(
                new Place(at.getX() + axleLine, at.getY(), at.getZ()),
                new Place(scale * force.getX(), scale * force.getY(), scale * force.getZ()),
                what + " " + LoadsWords.force(force.getNorm(), units),
                style);
    }
}
