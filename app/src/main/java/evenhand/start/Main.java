package evenhand.start;

import evenhand.terminal.Evenhand;
import evenhand.window.Window;

/** The program. Only here do the terminal and the window meet. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        Evenhand.main(Window::open, args);
    }
}
