package evenhand.structure;

import java.util.Optional;

/**
 * The worst of a member.
 *
 * @param part such as {@code rear.lowerLinkLeft}
 * @param greatest the larger force of its ends, N
 * @param tension the greatest pull along it, N; where it works along one line and is pulled at all
 * @param compression the greatest push along it, N, above zero
 */
public record WorstMember(
        String part, Peak greatest, Optional<Peak> tension, Optional<Peak> compression, boolean handSum) {
    WorstMember or(WorstMember other) {
        return new WorstMember(
                part,
                greatest.or(other.greatest),
                worse(tension, other.tension),
                worse(compression, other.compression),
                handSum);
    }

    private static Optional<Peak> worse(Optional<Peak> one, Optional<Peak> other) {
        return one.isPresent() && other.isPresent() ? Optional.of(one.get().or(other.get())) : one.or(() -> other);
    }

    static WorstMember of(MemberLoad member, String title) {
        double along = member.axial().orElse(0);
        return new WorstMember(
                member.part(),
                new Peak(member.greatest(), title),
                along > 0 ? Optional.of(new Peak(along, title)) : Optional.empty(),
                along < 0 ? Optional.of(new Peak(-along, title)) : Optional.empty(),
                member.handSum());
    }
}
