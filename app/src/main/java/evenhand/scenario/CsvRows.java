package evenhand.scenario;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * The rows of a measured record (RFC 4180), one by one, each cell with its place. Lines that begin with # and empty ones are
 * no rows; blanks around a cell are none of it.
 */
final class CsvRows {
    private static final CsvFactory FACTORY = CsvFactory.builder()
            .enable(CsvParser.Feature.TRIM_SPACES)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .enable(CsvParser.Feature.ALLOW_COMMENTS)
            .enable(CsvParser.Feature.WRAP_AS_ARRAY)
            .build();

    /**
     * A cell.
     *
     * @param line from 1
     * @param column from 1, in characters
     */
    record Cell(String text, int line, int column) {}

    private CsvRows() {}

    /**
     * Hands over each row, until one is answered by no. What is not CSV goes to the problems.
     *
     * @param goesOn takes a row of at least one cell, and tells whether the next is wanted
     */
    static void each(Source source, Problems problems, Predicate<List<Cell>> goesOn) {
        String text = source.text();
        try (JsonParser parser = FACTORY.createParser(text.startsWith("\uFEFF") ? text.substring(1) : text)) {
            List<Cell> row = new ArrayList<>();
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.VALUE_STRING) {
                    JsonLocation at = parser.currentTokenLocation();
                    row.add(new Cell(parser.getText(), at.getLineNr(), at.getColumnNr()));
                } else if (token == JsonToken.END_ARRAY && !row.isEmpty()) {
                    if (!goesOn.test(row)) {
                        return;
                    }
                    row = new ArrayList<>(); // the end of the text ends the last row once more
                }
            }
        } catch (JacksonException broken) {
            JsonLocation at = broken.getLocation();
            problems.at(
                    new Place("", at.getLineNr(), at.getColumnNr(), 0, 0),
                    "has a quotation mark that is not closed before here, or that stands within a value; write numbers"
                            + " without quotation marks");
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory has nothing that could fail
        }
    }
}
