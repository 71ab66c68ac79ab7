package evenhand.structure;

/**
 * The worst of a figure.
 *
 * @param title of the case that makes it, with its hand
 */
public record Peak(double value, String title) {
    /** The greater of both; this one where they are alike. */
    Peak or(Peak other) {
        return other.value > value ? other : this;
    }
}
