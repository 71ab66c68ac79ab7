package evenhand.start;

import evenhand.terminal.Evenhand;
import evenhand.window.Window;

/** The program. Only here do the terminal, the window and the report meet. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        Evenhand.main((file, units) -> Window.open(file, units, new JobReport()), args);
    }
}
