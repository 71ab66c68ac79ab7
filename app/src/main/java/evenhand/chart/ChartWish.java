package evenhand.chart;

/**
 * What a person wants of a chart that is shown.
 *
 * @param zoom what is looked at
 */
public record ChartWish(Kind kind, Chart chart, Zoom zoom) {
    /** What is to be done with it. */
    public enum Kind {
        COPY("Copy as picture"),
        SVG("Save as SVG …"),
        PNG("Save as PNG …"),
        CSV("Save numbers as CSV …");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In a menu. */
        public String words() {
            return words;
        }
    }
}
