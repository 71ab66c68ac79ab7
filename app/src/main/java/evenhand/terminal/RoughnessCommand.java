package evenhand.terminal;

import evenhand.quantity.Dimension;
import evenhand.quantity.InvalidValue;
import evenhand.quantity.Unit;
import evenhand.road.MeasuredProfile;
import evenhand.road.RoughnessIndex;
import evenhand.scenario.RoadFile;
import evenhand.scenario.RoadReading;
import evenhand.words.Numbers;
import evenhand.words.RoughnessWords;
import evenhand.words.Units;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code evenhand roughness}. */
@Command(
        name = "roughness",
        sortOptions = false,
        description = {
            "How rough a measured road is: its International Roughness Index, whole and by 100 m.",
            "",
            "The file is a CSV with the header distance_m,height_m, then a distance and a height in"
                    + " metres a line, at even steps of 300 mm or less. Lines that begin with # are"
                    + " comments.",
            ""
        },
        footer = {
            "",
            "Examples with the demo cars:",
            "  app/evenhand roughness validation/data/road-profile-quarter-metre.csv",
            "  app/evenhand roughness validation/data/road-profile-quarter-metre.csv --json",
            "",
            "Ends with 0 when done and with 2 when the command line or the file is wrong."
        })
final class RoughnessCommand implements Asked {
    private static final String INDEX = "iri";

    @Parameters(paramLabel = "FILE.csv", description = "The measured profile.")
    @SuppressWarnings("NullAway.Init")
    private String file;

    @Mixin
    private final FormOptions forms = new FormOptions();

    @Mixin
    private final UsualOptions usual = new UsualOptions();

    @Override
    public Status run(Console console) throws Mistake {
        FormOptions.Form form = forms.form();
        Units shown = usual.units();
        RoadReading reading = RoadFile.read(OptionText.file(file));
        reading.problems().forEach(problem -> console.complain(problem.toString()));
        if (reading.profile().isEmpty()) {
            return Status.WRONG;
        }
        MeasuredProfile profile = reading.profile().get();
        RoughnessIndex found;
        try {
            found = RoughnessIndex.of(profile);
        } catch (InvalidValue e) {
            console.complain(file + ": " + e.component() + " " + e.getMessage());
            return Status.WRONG;
        }
        if (form == FormOptions.Form.JSON) {
            console.answer(inJson(profile, found));
        } else if (form == FormOptions.Form.CSV) {
            console.answer(inCsv(profile, found, shown));
        } else {
            console.answer(inWords(profile, found, shown, console));
        }
        return Status.DONE;
    }

    private byte[] inJson(MeasuredProfile profile, RoughnessIndex found) {
        return JsonText.of("roughness", answer -> {
            answer.writeStringField("file", file);
            answer.writeNumberField(INDEX + "_m_per_km", RoughnessWords.shown(found.whole(), Units.METRIC));
            answer.writeArrayFieldStart("segments");
            for (RoughnessIndex.Segment segment : found.segments()) {
                answer.writeStartObject();
                answer.writeNumberField("from_m", segment.from());
                answer.writeNumberField("to_m", segment.to());
                answer.writeNumberField(INDEX + "_m_per_km", RoughnessWords.shown(segment.index(), Units.METRIC));
                answer.writeEndObject();
            }
            answer.writeEndArray();
            answer.writeStringField("words", String.join(" ", RoughnessWords.of(profile, found, Units.METRIC)));
        });
    }

    private static String inCsv(MeasuredProfile profile, RoughnessIndex found, Units units) {
        boolean metric = units == Units.METRIC;
        Unit length = RoughnessWords.lengthUnit(units);
        StringBuilder text =
                new StringBuilder(metric ? "part,from_m,to_m,iri_m_per_km\n" : "part,from_ft,to_ft,iri_in_per_mi\n");
        double end = profile.start() + profile.length();
        row(text, "whole", length, new RoughnessIndex.Segment(profile.start(), end, found.whole()), units);
        for (RoughnessIndex.Segment segment : found.segments()) {
            row(text, "segment", length, segment, units);
        }
        return text.toString();
    }

    private static void row(StringBuilder text, String part, Unit length, RoughnessIndex.Segment segment, Units units) {
        text.append(part).append(',').append(length.fromSi(segment.from()));
        text.append(',').append(length.fromSi(segment.to()));
        text.append(',').append(RoughnessWords.shown(segment.index(), units)).append('\n');
    }

    private String inWords(MeasuredProfile profile, RoughnessIndex found, Units units, Console console) {
        StringBuilder text = new StringBuilder();
        Unit length = RoughnessWords.lengthUnit(units);
        text.append(Paint.bold(Console.oneLine(file), console)).append('\n');
        Paragraph.append(
                text,
                "",
                RoughnessWords.road(profile.length(), units) + " of road, a point every "
                        + units.show(profile.spacing(), Dimension.LENGTH, units == Units.METRIC ? 0 : 1) + ".",
                console.columns());
        if (!found.segments().isEmpty()) {
            Table table = new Table(List.of("IRI " + RoughnessWords.symbol(units)));
            for (RoughnessIndex.Segment segment : found.segments()) {
                String from = Numbers.plain(length.fromSi(segment.from()), 1);
                String to = Numbers.plain(length.fromSi(segment.to()), 1);
                table.row(from + " to " + to, length.symbol(), List.of(number(segment.index(), units)));
            }
            table.row("whole", "", List.of(number(found.whole(), units)));
            text.append('\n').append(table.text(console));
        }
        text.append('\n');
        for (String sentence : RoughnessWords.of(profile, found, units)) {
            Paragraph.append(text, "", sentence, console.columns());
        }
        return text.toString();
    }

    private static String number(double index, Units units) {
        return Numbers.fixed(RoughnessWords.shown(index, units), units == Units.METRIC ? 2 : 0);
    }
}
