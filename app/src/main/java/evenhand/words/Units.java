package evenhand.words;

import evenhand.answers.Criterion;
import evenhand.answers.Figure;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;

/** The units that a person reads answers in. */
public enum Units {
    METRIC,
    IMPERIAL;

    /** Inches are some 25 times coarser than millimetres. */
    private static final int MORE_DIGITS_OF_INCHES = 2;

    /** A lbf*s/in is some 175 times coarser than a N*s/m. */
    private static final int MORE_DIGITS_OF_DAMPING = 1;

    private static final Unit PER_CENT = Unit.of("%");
    private static final Unit METRE = Unit.of("m");
    private static final Unit FOOT = Unit.of("ft");

    /** The unit that a dimension is shown in; ratios are shown in per cent. */
    public Unit of(Dimension dimension) {
        if (dimension == Dimension.RATIO) {
            return PER_CENT;
        }
        return this == METRIC ? dimension.metric() : dimension.imperial();
    }

    /** The unit that a criterion is shown in: its own, or the inch-pound one where the trade has one. */
    public Unit of(Criterion criterion) {
        Dimension dimension = criterion.dimension();
        return this == METRIC || dimension.imperial().equals(dimension.metric())
                ? criterion.unit()
                : dimension.imperial();
    }

    /** A criterion's value with its unit: "4.38 deg/g". */
    public String show(double si, Criterion criterion) {
        Unit unit = of(criterion);
        String number = Numbers.fixed(unit.fromSi(si), digits(criterion));
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** The unit of a figure's column in CSV: that of the JSON key, or the inch-pound one where the trade has one. */
    public Unit ofColumn(Figure<?> figure) {
        Dimension dimension = figure.dimension();
        return this == METRIC || dimension.imperial().equals(dimension.metric()) ? figure.unit() : dimension.imperial();
    }

    /** The unit of a figure of the ride: ratios stand as ratios, and vibration in m/s². So the trade speaks of them. */
    public Unit ofRide(Figure<?> figure) {
        return figure.dimension() == Dimension.RATIO || figure.dimension() == Dimension.ACCELERATION
                ? figure.unit()
                : of(figure.dimension());
    }

    /** Digits behind the point that a criterion is shown with. */
    public int digits(Criterion criterion) {
        return criterion.digits()
                + (this == IMPERIAL && criterion.dimension() == Dimension.LENGTH ? MORE_DIGITS_OF_INCHES : 0);
    }

    /** Digits behind the point that a figure is shown with. */
    public int digits(Figure<?> figure) {
        if (this == METRIC) {
            return figure.digits();
        }
        return figure.digits()
                + (figure.dimension() == Dimension.LENGTH ? MORE_DIGITS_OF_INCHES : 0)
                + (figure.dimension() == Dimension.DAMPING ? MORE_DIGITS_OF_DAMPING : 0);
    }

    /** A value with its unit: "1230 N". */
    public String show(double si, Dimension dimension, int digits) {
        Unit unit = of(dimension);
        return Numbers.fixed(unit.fromSi(si), digits) + " " + unit.symbol();
    }

    /** The radius of a circle as it is asked for: "40 m", "131.2 ft". */
    public String radius(double metres) {
        Unit unit = this == METRIC ? METRE : FOOT;
        return Numbers.plain(unit.fromSi(metres), 1) + " " + unit.symbol();
    }

    /** A lateral acceleration that was worked out, with the digits of the tables: "0.840 g". */
    public static String exactPace(double lateralAcceleration) {
        return Numbers.fixed(Dimension.ACCELERATION.metric().fromSi(lateralAcceleration), 3) + " g";
    }

    /** A lateral acceleration as a pace is asked for: "0.5 g". */
    public static String pace(double lateralAcceleration) {
        return Numbers.plain(Dimension.ACCELERATION.metric().fromSi(lateralAcceleration), 3) + " g";
    }
}
