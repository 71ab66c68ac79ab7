package evenhand.terminal.roughness;

import evenhand.forms.Contents;
import evenhand.forms.Table;
import evenhand.quantity.Dimension;
import evenhand.quantity.Unit;
import evenhand.road.MeasuredProfile;
import evenhand.road.RoughnessIndex;
import evenhand.terminal.asked.Answer;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import evenhand.terminal.reply.Written;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.road.RoughnessWords;
import java.util.ArrayList;
import java.util.List;

/** What {@code roughness} answers. */
record RoughnessReply(String file, MeasuredProfile profile, RoughnessIndex found) implements Answer {
    private static final Contents<RoughnessIndex.Segment> SEGMENT = Contents.of(RoughnessIndex.Segment.class)
            .numberIn(units -> inLength("from", units), (segment, units) -> length(segment.from(), units))
            .numberIn(units -> inLength("to", units), (segment, units) -> length(segment.to(), units))
            .numberIn(RoughnessReply::index, (segment, units) -> RoughnessWords.shown(segment.index(), units));

    private static final Contents<RoughnessReply> REPLY = Contents.of(RoughnessReply.class)
            .text("file", RoughnessReply::file)
            .numberIn(
                    RoughnessReply::index,
                    (reply, units) -> RoughnessWords.shown(reply.found().whole(), units))
            .list("segments", reply -> reply.found().segments(), SEGMENT)
            .sentences("words", reply -> RoughnessWords.of(reply.profile(), reply.found(), Units.METRIC));

    /** In CSV the whole, then each segment. */
    private record Row(String part, RoughnessIndex.Segment segment) {}

    private static final Contents<Row> ROWS =
            Contents.of(Row.class).text("part", Row::part).with(Row::segment, SEGMENT);

    private static String index(Units units) {
        return "iri" + (units == Units.METRIC ? "_m_per_km" : "_in_per_mi");
    }

    private static String inLength(String name, Units units) {
        return name + "_" + RoughnessWords.lengthUnit(units).symbol();
    }

    private static double length(double metres, Units units) {
        return RoughnessWords.lengthUnit(units).fromSi(metres);
    }

    @Override
    public Status give(FormOptions.Form form, Console console, Units units) {
        Written.of("roughness", REPLY, this, Written.Csv.of(ROWS, this::rows), this::text)
                .give(form, console, units);
        return Status.DONE;
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        double end = profile.start() + profile.length();
        rows.add(new Row("whole", new RoughnessIndex.Segment(profile.start(), end, found.whole())));
        found.segments().forEach(segment -> rows.add(new Row("segment", segment)));
        return rows;
    }

    private String text(Console console, Units units) {
        Page page = new Page(console);
        Unit length = RoughnessWords.lengthUnit(units);
        page.title(file);
        page.paragraph(
                "",
                RoughnessWords.road(profile.length(), units) + " of road, a point every "
                        + units.show(profile.spacing(), Dimension.LENGTH, units == Units.METRIC ? 0 : 1) + ".");
        if (!found.segments().isEmpty()) {
            Table.Builder table = new Table.Builder(List.of("IRI " + RoughnessWords.symbol(units)));
            for (RoughnessIndex.Segment segment : found.segments()) {
                String from = Numbers.plain(length.fromSi(segment.from()), 1);
                String to = Numbers.plain(length.fromSi(segment.to()), 1);
                table.row(from + " to " + to, length.symbol(), List.of(number(segment.index(), units)));
            }
            table.row("whole", "", List.of(number(found.whole(), units)));
            page.table(table.build());
        }
        page.blank();
        for (String sentence : RoughnessWords.of(profile, found, units)) {
            page.paragraph("", sentence);
        }
        return page.text();
    }

    private static String number(double index, Units units) {
        return Numbers.fixed(RoughnessWords.shown(index, units), units == Units.METRIC ? 2 : 0);
    }
}
