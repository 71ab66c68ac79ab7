package evenhand.window.question;

import evenhand.answers.Figure;
import evenhand.forms.Columns;
import evenhand.forms.Table;
import evenhand.quantity.Unit;
import evenhand.scenario.Setup;
import evenhand.window.desk.Verdict;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A verdict in the making: a line for each set-up, and of each what decides the question.
 *
 * @param <A> what a set-up answers
 */
final class Lines<A> {
    private record Said(String meaning, boolean amount, List<Boolean> unwanted) {}

    private final List<A> answers;
    private final Function<A, Setup> setup;
    private final Columns<A> figures;
    private final List<Said> said = new ArrayList<>();

    Lines(List<A> answers, Function<A, Setup> setup, Units units, Function<Figure<?>, Unit> unit) {
        this.answers = List.copyOf(answers);
        this.setup = setup;
        figures = new Columns<>(answers, answer -> setup.apply(answer).name(), units, unit);
    }

    Lines(List<A> answers, Function<A, Setup> setup, Units units) {
        this(answers, setup, units, figure -> units.of(figure.dimension()));
    }

    /** A figure of a part that some of them have. */
    <P> Lines<A> figure(String words, String meaning, Figure<P> figure, Function<A, Optional<P>> part) {
        figures.figureOf(words, figure, part);
        said.add(new Said(meaning, true, answers.stream().map(one -> false).toList()));
        return this;
    }

    /** A number that is ready for show. */
    Lines<A> amount(String words, String symbol, String meaning, Function<A, Optional<String>> number) {
        figures.row(words, symbol, one -> number.apply(one).orElse(Table.NOTHING));
        said.add(new Said(meaning, true, answers.stream().map(one -> false).toList()));
        return this;
    }

    /**
     * Words.
     *
     * @param unwanted where no driver wants them
     */
    Lines<A> words(String words, String meaning, Function<A, String> text, Predicate<A> unwanted) {
        figures.row(words, "", text);
        said.add(new Said(meaning, false, answers.stream().map(unwanted::test).toList()));
        return this;
    }

    /** The verdict; of a single set-up there is none, as the sentences say it all. */
    Optional<Verdict> verdict() {
        if (answers.size() < 2) {
            return Optional.empty();
        }
        List<Table.Row> rows = figures.table().lines().stream()
                .filter(Table.Row.class::isInstance)
                .map(Table.Row.class::cast)
                .toList();
        List<Verdict.Column> columns = new ArrayList<>();
        List<Verdict.Line> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Table.Row row = rows.get(i);
            columns.add(new Verdict.Column(
                    row.words() + (row.unit().isEmpty() ? "" : ", " + row.unit()),
                    said.get(i).meaning(),
                    said.get(i).amount() ? Verdict.Kind.NUMBER : Verdict.Kind.WORDS));
        }
        for (int place = 0; place < answers.size(); place++) {
            List<Verdict.Cell> cells = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                cells.add(new Verdict.Cell(
                        rows.get(i).cells().get(place),
                        Optional.empty(),
                        Optional.empty(),
                        said.get(i).unwanted().get(place)));
            }
            Setup own = setup.apply(answers.get(place));
            lines.add(new Verdict.Line(own.name(), own.look(), cells));
        }
        return Optional.of(new Verdict(List.of(), columns, lines, Optional.empty()));
    }
}
