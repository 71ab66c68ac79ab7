package evenhand.structure;

import java.util.EnumMap;
import java.util.Map;

/** The worst of a mount, figure by figure; those that the file says enough for. */
public record WorstMount(String mount, Map<MountFigure, Peak> peaks) {
    public WorstMount {
        EnumMap<MountFigure, Peak> inOrder = new EnumMap<>(MountFigure.class);
        inOrder.putAll(peaks);
        peaks = java.util.Collections.unmodifiableMap(inOrder);
    }

    static WorstMount of(MountLoad mount, String title) {
        Map<MountFigure, Peak> peaks = new EnumMap<>(MountFigure.class);
        for (MountFigure figure : MountFigure.values()) {
            figure.of(mount).ifPresent(value -> peaks.put(figure, new Peak(value, title)));
        }
        return new WorstMount(mount.mount(), peaks);
    }

    WorstMount or(WorstMount other) {
        Map<MountFigure, Peak> worse = new EnumMap<>(MountFigure.class);
        worse.putAll(peaks);
        other.peaks.forEach((figure, peak) -> worse.merge(figure, peak, Peak::or));
        return new WorstMount(mount, worse);
    }
}
