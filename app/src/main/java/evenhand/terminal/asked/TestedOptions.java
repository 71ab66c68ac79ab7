package evenhand.terminal.asked;

import evenhand.doubt.Tolerance;
import evenhand.scenario.Scenario;
import evenhand.terminal.page.Console;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The car as its road tests have corrected it, where {@code --force} says nothing else. */
final class TestedOptions {
    @Mixin
    private final TestedOption tested = new TestedOption();

    @Option(names = "--force", description = "With --tested: also where the file and the road do not agree.")
    private boolean force;

    /** The scenario as it was asked for, or nothing after its problems were told. */
    Optional<Scenario> of(Scenario scenario, Tolerance.Unsaid unsaid, Console console) throws Mistake {
        if (force && !tested.isAsked()) {
            throw new Mistake("--force belongs to --tested; leave it out, or write --tested too");
        }
        return tested.of(scenario, unsaid, force, console);
    }
}
