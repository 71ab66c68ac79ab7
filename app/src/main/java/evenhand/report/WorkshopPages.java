package evenhand.report;

import evenhand.car.End;
import evenhand.car.Side;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.Unit;
import evenhand.report.Block.Column;
import evenhand.report.Block.Fields;
import evenhand.report.Block.Heading;
import evenhand.report.Block.Row;
import evenhand.report.Block.Table;
import evenhand.report.Block.Text;
import evenhand.report.Block.Tone;
import evenhand.report.SetupSheet.Group;
import evenhand.report.SetupSheet.Item;
import evenhand.scenario.ShopRecord;
import evenhand.scenario.Torque;
import evenhand.turn.Wheel;
import evenhand.words.Edition;
import evenhand.words.InPrint;
import evenhand.words.Numbers;
import evenhand.words.Units;
import evenhand.words.book.BookWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The set-up sheet to build from and to check by, with boxes for the pen where something can be measured. */
final class WorkshopPages {
    private static final String TITLE = "Set-up sheet";

    /** What stands where an end or a side has no such thing. */
    private static final String NOTHING = "–";

    /** After what is built within a usual tolerance. */
    private static final String USUAL = " *";

    private static final Column BY = Column.blank("by", 0.9);

    private final Findings findings;
    private final ShopRecord record;
    private final SetupSheet sheet;
    private final Units units;

    private WorkshopPages(Findings findings) {
        this.findings = findings;
        units = findings.question().units();
        record = findings.question().scenario().record();
        sheet = SetupSheet.of(
                record,
                findings.chosen().setup(),
                findings.compares() ? Optional.of(findings.base().setup()) : Optional.empty(),
                units);
    }

    static List<Section> of(Findings findings) {
        Optional<String> silence = findings.chosen().silence();
        if (silence.isPresent()) {
            return List.of(new Section(
                    TITLE,
                    false,
                    List.of(new Text(
                            InPrint.sentence("\"" + findings.chosen().name() + "\" has no answer: " + silence.get()
                                    + ". Nobody is to build by it or to sign for it, so there is no sheet."),
                            Tone.WARNING))));
        }
        return List.of(new WorkshopPages(findings).section());
    }

    private boolean movesWithTheBody() {
        return sheet.items().stream()
                .anyMatch(item -> item.changed() && item.path().endsWith(".lowered"));
    }

    private Section section() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Text.plain("\"" + sheet.setup().name() + "\""
                + sheet.before()
                        .map(before -> sheet.items().stream().anyMatch(Item::changed)
                                ? ". What is changed against \"" + before.name()
                                        + "\" stands on a tint, with what it was."
                                        + (movesWithTheBody()
                                                ? " What hangs on the body has moved with it as it was let down or raised."
                                                : "")
                                : ". Nothing on this sheet is changed against \"" + before.name() + "\".")
                        .orElse(".")
                + " All heights, gaps and weights: car at rest on level ground, as it was weighed."
                + findings.question()
                        .trial()
                        .load()
                        .map(load -> " So without \"" + load.name() + "\".")
                        .orElse("")));
        blocks.add(identity());
        blocks.add(new Fields(unsaid()));
        blocks.add(whole(sheet.of(Group.CAR)));
        blocks.add(table(
                "At each wheel",
                rows(sheet.of(Group.CORNER), WorkshopPages::wheels),
                Arrays.stream(Wheel.values())
                        .map(wheel -> Column.words(wheel.words(), 2.3))
                        .toList()));
        blocks.add(table(
                "At each axle",
                rows(
                        sheet.of(Group.AXLE),
                        item -> List.of(item.end().orElseThrow().ordinal())),
                List.of(Column.words("front", 3.4), Column.words("rear", 3.4))));
        List<Item> links = sheet.of(Group.LINK);
        for (End end : End.values()) {
            List<Item> its = links.stream()
                    .filter(item -> item.end().equals(Optional.of(end)))
                    .toList();
            if (!its.isEmpty()) {
                blocks.add(table(
                        (end == End.FRONT ? "Front" : "Rear") + " links, between their ends",
                        rows(its, item -> List.of(item.side().orElse(Side.LEFT).ordinal())),
                        List.of(Column.words("left, or the only one", 3.4), Column.words("right", 3.4))));
            }
        }
        blocks.add(Text.quiet(
                "* A usual tolerance of those who set up road cars, no standard: the file's \"tolerances\" say"
                        + " otherwise."
                        + (links.stream().anyMatch(item -> item.value().contains("turn"))
                                ? " Turns are those of a link's thread that make it longer than it was measured."
                                : "")));
        if (!sheet.freeWords().isEmpty()) {
            blocks.add(new Table(
                    List.of(Column.words("Also", 2), Column.words("", 6)),
                    sheet.freeWords().stream()
                            .map(note -> Row.of(note.head(), note.text()))
                            .toList()));
        }
        blocks.add(new Heading("Torque and re-check"));
        blocks.add(torques());
        blocks.add(new Fields(List.of(
                "built and measured: date, signature",
                "road tested: date, signature",
                "handed over to: date, signature")));
        return new Section(TITLE, false, blocks);
    }

    /** Which car it is, what was in it on the scales, and from what this was made. */
    private Table identity() {
        List<String> cells = new ArrayList<>();
        said().forEach((what, value) -> value.ifPresent(text -> cells.addAll(List.of(what, text))));
        cells.addAll(List.of("made from", MadeFrom.file(findings.question().scenario())));
        cells.addAll(List.of(
                "by",
                "Evenhand " + Edition.words() + ", "
                        + MadeFrom.digest(findings.question().scenario())));
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < cells.size(); i += 4) {
            List<String> row = new ArrayList<>(cells.subList(i, Math.min(i + 4, cells.size())));
            while (row.size() < 4) {
                row.add("");
            }
            rows.add(new Row(row, false));
        }
        return new Table(
                List.of(Column.words("The car", 1.5), Column.words("", 3), Column.words("", 1.5), Column.words("", 3)),
                rows);
    }

    private Map<String, Optional<String>> said() {
        Map<String, Optional<String>> said = new LinkedHashMap<>();
        said.put("registration", record.vehicle().registration());
        said.put("chassis number", record.vehicle().chassisNumber());
        said.put("owner", record.vehicle().owner());
        said.put("weighed with fuel", record.weighedWith().fuel());
        said.put("weighed with driver", record.weighedWith().driver());
        said.put("weighed with ballast", record.weighedWith().ballast());
        return said;
    }

    /** What is left to the pen. */
    private List<String> unsaid() {
        List<String> labels = new ArrayList<>();
        said().forEach((what, value) -> {
            if (value.isEmpty()) {
                labels.add(what);
            }
        });
        labels.addAll(List.of("job", "odometer", "measured by, floor, scales"));
        return labels;
    }

    /** A single row, for a sheet has two pages. */
    private static Table whole(List<Item> items) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("", 1.3)));
        List<String> cells = new ArrayList<>(List.of("set to"));
        Set<Integer> boxes = new HashSet<>();
        for (Item item : items) {
            columns.add(Column.words(item.what(), 3.6));
            boxes.add(cells.size());
            cells.add(item.told() + (item.tolerance().isEmpty() ? "" : " (" + within(Map.of(0, item)) + ")"));
        }
        columns.add(BY);
        cells.add("");
        return new Table(columns, List.of(new Row(cells, items.stream().anyMatch(Item::changed), boxes)));
    }

    /** Columns of an item's wheels, both of its end where it names no side. */
    private static List<Integer> wheels(Item item) {
        End end = item.end().orElseThrow();
        return item.side().isPresent()
                ? List.of(Wheel.of(end, item.side().get()).index())
                : List.of(
                        Wheel.of(end, Side.LEFT).index(),
                        Wheel.of(end, Side.RIGHT).index());
    }

    /** Items that are the same thing in several places, by the column that each stands in. */
    private static Map<String, Map<Integer, Item>> rows(List<Item> items, Function<Item, List<Integer>> columns) {
        Map<String, Map<Integer, Item>> rows = new LinkedHashMap<>();
        for (Item item : items) {
            Map<Integer, Item> row = rows.computeIfAbsent(item.what(), what -> new LinkedHashMap<>());
            columns.apply(item).forEach(column -> row.put(column, item));
        }
        return rows;
    }

    private static Table table(String head, Map<String, Map<Integer, Item>> items, List<Column> places) {
        List<Column> columns = new ArrayList<>(List.of(Column.words(head, 3), Column.words("within", 1.2)));
        columns.addAll(places);
        columns.add(BY);
        List<Row> rows = new ArrayList<>();
        items.forEach((what, at) -> rows.add(row(what, at, places.size())));
        return new Table(columns, rows);
    }

    private static Row row(String what, Map<Integer, Item> at, int places) {
        List<String> cells = new ArrayList<>(List.of(what, within(at)));
        Set<Integer> boxes = new HashSet<>();
        for (int i = 0; i < places; i++) {
            Item item = at.get(i);
            cells.add(item == null ? NOTHING : item.told());
            if (item != null && item.measurable()) {
                boxes.add(2 + i);
            }
        }
        cells.add("");
        return new Row(cells, at.values().stream().anyMatch(Item::changed), boxes);
    }

    /** The tolerance of all, or each that differs. */
    private static String within(Map<Integer, Item> at) {
        return at.values().stream()
                .filter(item -> !item.tolerance().isEmpty())
                .map(item -> item.tolerance() + (item.usual() ? USUAL : ""))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private Table torques() {
        List<Row> rows = new ArrayList<>();
        for (Torque torque : record.torques()) {
            rows.add(torque(
                    torque.what(),
                    torque(torque.value()),
                    torque.recheckAfter()
                            .map(way -> BookWords.distance(way.si(), units))
                            .orElse("no re-check")));
        }
        if (rows.isEmpty()) {
            for (String what : List.of(
                    "axle location, links and brackets",
                    "springs, perches and dampers",
                    "anti-roll bars and drop links",
                    "steering and brakes",
                    "wheels")) {
                rows.add(torque(what, "", ""));
            }
        }
        return new Table(
                List.of(
                        Column.words("What", 3),
                        Column.words("torque", 1.5),
                        Column.blank("tightened by, day", 2),
                        Column.words("check again after", 1.5),
                        Column.blank("checked by, day", 2)),
                rows);
    }

    private String torque(Quantity value) {
        Unit unit = units.of(Dimension.MOMENT);
        return Numbers.plain(unit.fromSi(value.si()), 1) + " " + InPrint.symbol(unit);
    }

    /** With boxes where the file says nothing, and for whoever signs. */
    private static Row torque(String what, String value, String again) {
        Set<Integer> boxes = new HashSet<>(Set.of(2));
        if (value.isEmpty()) {
            boxes.add(1);
        }
        if (again.isEmpty()) {
            boxes.add(3);
        }
        return new Row(List.of(what, value, "", again, ""), false, boxes);
    }
}
