package evenhand.forms;

import evenhand.quantity.Unit;
import evenhand.words.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Answers for a spreadsheet (RFC 4180): a row for each part, or, where it ends in a list, for each part of that. What does
 * not exist is an empty cell; what stands in a part under a key has the key and a point before its own.
 */
public final class CsvForm {
    /** The wide ones are what some spreadsheets take for the narrow. */
    private static final String BEGINS_A_FORMULA = "=+-@\t\r\n＝＋－＠";

    private static final Pattern NUMBER = Pattern.compile("[-+]\\d+(\\.\\d+)?([eE][-+]?\\d+)?[ \u00a0]?(?<unit>\\S*)");

    private final StringBuilder csv = new StringBuilder();
    private final Units units;

    private CsvForm(Units units) {
        this.units = units;
    }

    /** The columns' names, then the rows. */
    public static <T> String write(Contents<T> contents, List<T> parts, Units units) {
        CsvForm form = new CsvForm(units);
        List<String> heads = new ArrayList<>();
        form.heads(contents, "", heads);
        form.line(heads);
        for (T part : parts) {
            form.rows(contents, Optional.of(part), List.of(new ArrayList<>())).forEach(form::line);
        }
        return form.csv.toString();
    }

    /**
     * Text as a cell. A spreadsheet takes what begins with {@code = + - @}, a tab or an end of line for a formula and carries it out, and a name
     * may come with a file from anywhere; such a text gets an apostrophe before it, and quotes round it. A number stays a
     * number, with its unit or without. Source: OWASP, CSV Injection.
     */
    public static String quoted(String text) {
        boolean formula = text.length() > 1 && BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0 && !isNumber(text);
        boolean plain = !formula && text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? text : '"' + (formula ? "'" : "") + text.replace("\"", "\"\"") + '"';
    }

    private static boolean isNumber(String text) {
        Matcher number = NUMBER.matcher(text);
        return number.matches()
                && (number.group("unit").isEmpty()
                        || Unit.find(number.group("unit")).isPresent());
    }

    private void line(List<String> cells) {
        csv.append(String.join(",", cells)).append('\n');
    }

    private <T> void heads(Contents<T> contents, String before, List<String> heads) {
        for (Member<T> member : contents.members()) {
            if (member instanceof Member.Value<T> number) {
                heads.add(before + number.key().apply(units));
            } else if (member instanceof Member.Text<T> text) {
                heads.add(before + text.key());
            } else if (member instanceof Member.Flag<T> flag) {
                heads.add(before + flag.key());
            } else if (member instanceof Member.Whole<T> whole) {
                heads.add(before + whole.key());
            } else if (member instanceof Member.Nested<T, ?> nested) {
                heads(nested.contents(), nested.key().isEmpty() ? before : before + nested.key() + ".", heads);
            } else if (member instanceof Member.Many<T, ?> many) {
                heads(many.contents(), before, heads);
            }
        }
    }

    /** The rows so far, each with the cells of a part, or with empty ones, behind it. */
    private <T> List<List<String>> rows(Contents<T> contents, Optional<T> part, List<List<String>> before) {
        List<List<String>> rows = before;
        for (Member<T> member : contents.members()) {
            if (member instanceof Member.Nested<T, ?> nested) {
                rows = nested(nested, part, rows);
            } else if (member instanceof Member.Many<T, ?> many) {
                rows = many(many, part, rows);
            } else if (!(member instanceof Member.Series<T, ?>)) {
                String cell = part.isPresent() ? cell(member, part.get()) : "";
                rows.forEach(row -> row.add(cell));
            }
        }
        return rows;
    }

    private <T, P> List<List<String>> nested(Member.Nested<T, P> nested, Optional<T> part, List<List<String>> rows) {
        return rows(nested.contents(), part.flatMap(nested.reading()), rows);
    }

    private <T, P> List<List<String>> many(Member.Many<T, P> many, Optional<T> part, List<List<String>> before) {
        List<P> inner = part.flatMap(many.reading()).orElse(List.of());
        if (inner.isEmpty()) {
            return rows(many.contents(), Optional.empty(), before);
        }
        List<List<String>> rows = new ArrayList<>();
        for (List<String> row : before) {
            for (P one : inner) {
                rows.addAll(rows(many.contents(), Optional.of(one), List.of(new ArrayList<>(row))));
            }
        }
        return rows;
    }

    private <T> String cell(Member<T> member, T part) {
        if (member instanceof Member.Value<T> number) {
            OptionalDouble value = number.reading().apply(part, units);
            return value.isPresent() ? String.valueOf(value.getAsDouble() + 0.0) : ""; // + 0.0 makes -0.0 a plain zero
        }
        if (member instanceof Member.Text<T> text) {
            return text.reading().apply(part, units).map(CsvForm::quoted).orElse("");
        }
        if (member instanceof Member.Whole<T> whole) {
            OptionalLong value = whole.reading().apply(part);
            return value.isPresent() ? String.valueOf(value.getAsLong()) : "";
        }
        return member instanceof Member.Flag<T> flag
                ? flag.reading().apply(part).map(String::valueOf).orElse("")
                : "";
    }
}
