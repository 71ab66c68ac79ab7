package evenhand.terminal.reply;

import evenhand.forms.Contents;
import evenhand.forms.CsvForm;
import evenhand.forms.JsonForm;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.page.Console;
import evenhand.words.Units;
import java.util.List;
import java.util.function.Supplier;

/**
 * An answer in each of its forms, none of them written before it is asked for.
 *
 * @param command whose answer it is
 * @param json for programs
 * @param csv for a spreadsheet
 * @param text for people
 */
public record Written(String command, Supplier<byte[]> json, Csv csv, Text text) {
    /** An answer for a spreadsheet. */
    public interface Csv {
        String in(Units units);

        /** A row for each of these. */
        static <T> Csv of(Contents<T> row, Supplier<List<T>> rows) {
            return units -> CsvForm.write(row, rows.get(), units);
        }
    }

    /** An answer for people. */
    public interface Text {
        String on(Console console, Units units);
    }

    /** An answer by its contents. */
    public static <R> Written of(String command, Contents<R> contents, R answer, Csv csv, Text text) {
        return new Written(command, () -> JsonForm.write(command, contents, answer), csv, text);
    }

    /** Answers in the form that was asked for. */
    public void give(FormOptions.Form form, Console console, Units units) {
        switch (form) {
            case JSON -> console.answer(json.get());
            case CSV -> console.answer(csv.in(units));
            case PEOPLE -> console.answer(text.on(console, units));
        }
    }
}
