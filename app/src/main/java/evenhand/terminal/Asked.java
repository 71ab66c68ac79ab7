package evenhand.terminal;

/** A command with what was asked of it. */
interface Asked {
    Status run(Console console) throws Mistake;
}
