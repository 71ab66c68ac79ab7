package evenhand.forms;

import evenhand.answers.Figure;
import evenhand.answers.TurnFigures;
import evenhand.quantity.Unit;
import evenhand.words.GripText;
import evenhand.words.Numbers;
import evenhand.words.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A table in the making: a column for each of some things, such as set-ups, and rows that are read from all of them.
 *
 * @param <A> one of the things
 */
public final class Columns<A> {
    private final List<A> things;
    private final Units units;
    private final Function<Figure<?>, Unit> unit;
    private final Table.Builder table;

    /** Figures stand in the units that a person reads. */
    public Columns(List<A> things, Function<A, String> name, Units units) {
        this(things, name, units, figure -> units.of(figure.dimension()));
    }

    /** @param unit that a figure stands in where it is another */
    public Columns(List<A> things, Function<A, String> name, Units units, Function<Figure<?>, Unit> unit) {
        this.things = List.copyOf(things);
        this.units = units;
        this.unit = unit;
        this.table = new Table.Builder(things.stream().map(name).toList());
    }

    public Columns<A> heading(String words) {
        table.heading(words);
        return this;
    }

    /** A row of texts. */
    public Columns<A> row(String words, String symbol, Function<A, String> cell) {
        table.row(row(words, symbol, things.stream().map(cell).toList()));
        return this;
    }

    /** The same, left out where it says nothing of any. */
    public Columns<A> rowIfAny(String words, String symbol, Function<A, String> cell) {
        Table.Row row = row(words, symbol, things.stream().map(cell).toList());
        if (!row.isEmpty()) {
            table.row(row);
        }
        return this;
    }

    /** A figure of a part that each of them has. */
    public <P> Columns<A> figure(Figure<P> figure, Function<A, P> part) {
        return figureOf(figure, thing -> Optional.of(part.apply(thing)));
    }

    /** A figure of a part that some of them have. */
    public <P> Columns<A> figureOf(Figure<P> figure, Function<A, Optional<P>> part) {
        return figureOf(figure.words(), figure, part);
    }

    /** The same in other words. */
    public <P> Columns<A> figureOf(String words, Figure<P> figure, Function<A, Optional<P>> part) {
        return row(words, symbol(figure), thing -> cell(figure, part.apply(thing)));
    }

    /** The same, left out where none has it. */
    public <P> Columns<A> figureIfAny(Figure<P> figure, Function<A, Optional<P>> part) {
        return figureIfAny(figure.words(), figure, part);
    }

    public <P> Columns<A> figureIfAny(String words, Figure<P> figure, Function<A, Optional<P>> part) {
        return rowIfAny(words, symbol(figure), thing -> cell(figure, part.apply(thing)));
    }

    public Table table() {
        return table.build();
    }

    private static Table.Row row(String words, String symbol, List<String> cells) {
        return new Table.Row(words, symbol, cells);
    }

    private String symbol(Figure<?> figure) {
        return figure.symbol(unit.apply(figure));
    }

    private <P> String cell(Figure<P> figure, Optional<P> part) {
        OptionalDouble si = part.map(figure::si).orElseGet(OptionalDouble::empty);
        if (si.isEmpty()) {
            return Table.NOTHING;
        }
        String number = Numbers.fixed(unit.apply(figure).fromSi(si.getAsDouble()), units.digits(figure));
        return figure.equals(TurnFigures.GRIP_BALANCE)
                ? GripText.times(si.getAsDouble()).orElse(number)
                : number;
    }
}
