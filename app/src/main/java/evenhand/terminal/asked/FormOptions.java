package evenhand.terminal.asked;

import picocli.CommandLine.Option;

/** Options of the form that an answer is written in. */
public final class FormOptions {
    @Option(names = "--json", description = "Answers in JSON, for programs: unrounded.")
    private boolean json;

    @Option(names = "--csv", description = "Answers in CSV, for a spreadsheet: the columns are named in the first row.")
    private boolean csv;

    /** Who an answer is written for. */
    public enum Form {
        PEOPLE,
        JSON,
        CSV
    }

    public Form form() throws Mistake {
        if (json && csv) {
            throw new Mistake("--json and --csv: write one of them");
        }
        return json ? Form.JSON : csv ? Form.CSV : Form.PEOPLE;
    }
}
