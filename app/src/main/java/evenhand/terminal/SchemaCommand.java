package evenhand.terminal;

import evenhand.scenario.SchemaWriter;
import evenhand.terminal.asked.Asked;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.Status;
import evenhand.terminal.asked.UnitlessOptions;
import evenhand.terminal.page.Console;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code evenhand schema}. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema (2020-12) of scenario files.",
        footer = {"", "Example:", "  app/evenhand schema > evenhand.schema.json"})
final class SchemaCommand implements Asked {
    @Mixin
    private final UnitlessOptions usual = new UnitlessOptions();

    @Override
    public Status run(Console console) throws Mistake {
        usual.units();
        console.answer(SchemaWriter.schema());
        return Status.DONE;
    }
}
