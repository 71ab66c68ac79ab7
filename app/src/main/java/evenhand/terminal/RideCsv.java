package evenhand.terminal;

import evenhand.answers.Figure;
import evenhand.answers.RideFigures;
import evenhand.car.End;
import evenhand.ride.AxleRide;
import evenhand.ride.PitchBounce;
import evenhand.ride.RoadResponse;
import evenhand.ride.Standing;
import evenhand.words.EventWords;
import evenhand.words.Units;
import java.util.List;
import java.util.OptionalDouble;

/** The ride of each set-up as CSV, a row each. */
final class RideCsv {
    private static final List<Figure<AxleRide>> ONLY_VARIATION = List.of(RideFigures.TYRE_LOAD_VARIATION);

    private final StringBuilder csv = new StringBuilder("setup");
    private final Units units;

    private RideCsv(Units units) {
        this.units = units;
    }

    static String write(List<SetupRide> answers, Units units) {
        RideCsv csv = new RideCsv(units);
        csv.heads();
        for (SetupRide answer : answers) {
            if (answer instanceof SetupRide.Rides rides) {
                csv.row(rides);
            }
        }
        return csv.csv.toString();
    }

    private void heads() {
        for (End end : End.values()) {
            String name = EventWords.end(end) + ".";
            heads(name, RideFigures.AXLE);
            heads("road." + name, RideFigures.ROAD);
            heads("road." + name, ONLY_VARIATION);
            heads("static." + name, RideFigures.STANDING);
            heads("static." + name, List.of(RideFigures.STOP_TOUCHED));
            csv.append(",static.").append(name).append("looseInDroop");
        }
        heads("pitchBounce.", RideFigures.PITCH_BOUNCE);
        csv.append('\n');
    }

    private <T> void heads(String prefix, List<Figure<T>> figures) {
        for (Figure<T> figure : figures) {
            csv.append(',').append(prefix).append(figure.key(units.ofColumn(figure)));
        }
    }

    private void row(SetupRide.Rides rides) {
        csv.append(BalanceCsv.quoted(rides.setup().name()));
        for (End end : End.values()) {
            AxleRide axle = rides.ride().axle(end);
            cells(RideFigures.AXLE, axle);
            for (Figure<RoadResponse> figure : RideFigures.ROAD) {
                cell(axle.damped()
                        .map(damped -> figure.in(units.ofColumn(figure), damped.road()))
                        .orElseGet(OptionalDouble::empty));
            }
            cells(ONLY_VARIATION, axle);
            Standing standing = axle.standing();
            cells(RideFigures.STANDING, standing);
            cells(List.of(RideFigures.STOP_TOUCHED), rides.stops().of(end));
            csv.append(',').append(standing.looseInDroop().map(String::valueOf).orElse(""));
        }
        PitchBounce pitchBounce = rides.ride().pitchBounce();
        cells(RideFigures.PITCH_BOUNCE, pitchBounce);
        csv.append('\n');
    }

    private <T> void cells(List<Figure<T>> figures, T part) {
        for (Figure<T> figure : figures) {
            cell(figure.in(units.ofColumn(figure), part));
        }
    }

    private void cell(OptionalDouble value) {
        csv.append(',');
        if (value.isPresent()) {
            csv.append(value.getAsDouble() + 0.0); // + 0.0 makes -0.0 a plain zero
        }
    }
}
