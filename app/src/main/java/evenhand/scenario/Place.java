package evenhand.scenario;

/**
 * Where something stands in a file.
 *
 * @param where its path from the file's top, such as {@code setups[1].changes.rear.track}; empty for the top
 * @param line from 1
 * @param column from 1, in characters
 * @param start of its text, counted in characters from 0
 * @param end of its text
 */
record Place(String where, int line, int column, int start, int end) {}
