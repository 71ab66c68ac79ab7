package evenhand.window.desk;

import evenhand.quantity.Unseen;
import evenhand.scenario.Setup;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Names of set-ups. */
public final class Names {
    private static final int LONGEST = 80;

    private Names() {}

    /** A name that no set-up has, made from one. */
    public static String free(Work work, String wished) {
        List<String> taken = work.scenario().setups().stream().map(Setup::name).toList();
        String name = wished;
        for (int i = 2; taken.contains(name); i++) {
            name = wished + " " + i;
        }
        return name;
    }

    static Optional<Outcome> refusal(Desk desk, String name) {
        String stripped = name.strip();
        if (stripped.isEmpty()) {
            return Optional.of(new Outcome.Refused("a set-up needs a name"));
        }
        if (stripped.length() > LONGEST) {
            return Optional.of(new Outcome.Refused("a name is one line of at most " + LONGEST + " characters"));
        }
        OptionalInt unseen = Unseen.first(stripped, false);
        if (unseen.isPresent()) {
            return Optional.of(
                    new Outcome.Refused("the name has " + Unseen.words(stripped, unseen.getAsInt()) + "; take it out"));
        }
        return desk.work().scenario().setup(stripped).isPresent()
                ? Optional.of(new Outcome.Refused("there is a set-up of this name already; choose another"))
                : Optional.empty();
    }
}
