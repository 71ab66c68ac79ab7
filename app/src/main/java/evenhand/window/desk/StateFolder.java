package evenhand.window.desk;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where the window keeps what is no scenario: recent files, unsaved work, how it was last looked at. */
public final class StateFolder {
    private static final String OWN = "evenhand";

    private StateFolder() {}

    /**
     * The folder, by the custom of the system: {@code EVENHAND_STATE} where it is set, else XDG's state folder, the local data
     * folder of Windows, or that of a Mac's applications.
     *
     * @param environment of the process
     * @param home of the user
     * @param system name of the operating system
     */
    public static Path of(Map<String, String> environment, Path home, String system) {
        String asked = environment.getOrDefault("EVENHAND_STATE", "");
        if (!asked.isBlank()) {
            return Path.of(asked);
        }
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            String local = environment.getOrDefault("LOCALAPPDATA", "");
            return (local.isBlank() ? home.resolve("AppData").resolve("Local") : Path.of(local)).resolve(OWN);
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve(OWN);
        }
        String xdg = environment.getOrDefault("XDG_STATE_HOME", "");
        // The standard wants an absolute path, and others to be passed over.
        return (xdg.startsWith("/") ? Path.of(xdg) : home.resolve(".local").resolve("state")).resolve(OWN);
    }
}
