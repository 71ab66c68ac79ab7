package evenhand.report;

/** Sizes of sheets, in points of 1/72 inch. */
public enum PaperSize {
    /** ISO 216: 210 mm by 297 mm. */
    A4(595.276f, 841.890f),
    /** ANSI A: 8.5 in by 11 in. */
    LETTER(612, 792);

    private final float width;
    private final float height;

    PaperSize(float width, float height) {
        this.width = width;
        this.height = height;
    }

    public float width() {
        return width;
    }

    public float height() {
        return height;
    }
}
