package evenhand.structure;

import java.util.OptionalDouble;

/** A figure of a mount whose worst case is looked for. SI. */
public enum MountFigure {
    TOTAL("total"),
    PRESSURE("pressure"),
    GREATEST_PRESSURE("greatestPressure"),
    EDGE_SHEAR("edgeShear"),
    COMBINED_STRESS("combinedStress"),
    YIELD_USED("yieldUsed"),
    RATED_USED("ratedUsed"),
    EYE_MOMENT("eyeMoment");

    private final String key;

    MountFigure(String key) {
        this.key = key;
    }

    /** Name in answers, without its unit. */
    public String key() {
        return key;
    }

    /** What a mount has of it; nothing where the file does not say enough. */
    public OptionalDouble of(MountLoad mount) {
        return switch (this) {
            case TOTAL -> OptionalDouble.of(mount.total());
            case PRESSURE ->
                given(
                        mount.spread().isPresent(),
                        () -> mount.spread().orElseThrow().pressure());
            case GREATEST_PRESSURE ->
                given(
                        mount.spread().isPresent(),
                        () -> mount.spread().orElseThrow().greatestPressure());
            case EDGE_SHEAR -> mount.spread().map(MountLoad.OfSpread::edgeShear).orElse(OptionalDouble.empty());
            case COMBINED_STRESS ->
                given(mount.pin().isPresent(), () -> mount.pin().orElseThrow().combinedStress());
            case YIELD_USED -> mount.pin().map(MountLoad.OfPin::yieldUsed).orElse(OptionalDouble.empty());
            case RATED_USED -> mount.ratedUsed();
            case EYE_MOMENT ->
                given(mount.eye().isPresent(), () -> mount.eye().orElseThrow().moment());
        };
    }

    private static OptionalDouble given(boolean there, java.util.function.DoubleSupplier value) {
        return there ? OptionalDouble.of(value.getAsDouble()) : OptionalDouble.empty();
    }
}
