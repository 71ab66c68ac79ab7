package evenhand.scenario;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in a person's words what the library found wrong with the JSON, and how to mend it. */
final class JsonWords {
    private static final Pattern CHARACTER = Pattern.compile("Unexpected character \\('(.)'", Pattern.DOTALL);
    private static final Pattern TOKEN = Pattern.compile("(?:Non-standard|Unrecognized) token '([^']*)'");
    private static final Pattern CLOSING = Pattern.compile("Unexpected close marker '(.)': expected '(.)'");
    private static final String NUMBER =
            "a number is written in a way that JSON does not know; write it like 12 or 0.5 or -3,"
                    + " with no plus, no zero in front and a digit on both sides of the point";

    private JsonWords() {}

    /** Words for a message of the library about a text, at a position in it. */
    static String of(String message, String text, int at) {
        Matcher token = TOKEN.matcher(message);
        Matcher closing = CLOSING.matcher(message);
        Matcher character = CHARACTER.matcher(message);
        if (message.contains("Unexpected end-of-input")) {
            return "the file ends too early; a bracket, quote or value is missing at its end";
        } else if (token.find()) {
            return word(JsonReader.shown(token.group(1)));
        } else if (closing.find()) {
            return closing.group(1) + " closes a bracket that is not open; " + closing.group(2) + " is due here";
        } else if (message.startsWith("Illegal unquoted character")) {
            return "a text has a line break or another control character in it; close its quotes before that,"
                    + " or take the character out";
        } else if (message.startsWith("Illegal character")) {
            return "a control character stands between the values; take it out";
        } else if (message.contains("character escape") || message.contains("escape sequence")) {
            return "a backslash is followed by a letter that has no meaning there; write \\\\ for a backslash";
        } else if (message.contains("numeric value")) {
            return NUMBER;
        } else if (character.find()) {
            return unexpected(character.group(1).charAt(0), message, before(text, at, character.group(1)));
        }
        return "something stands here that is no value, bracket or comma; look at the quotes and commas before it";
    }

    private static String word(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        if (small.endsWith("nan") || small.contains("inf")) {
            return word + " is no number that JSON knows; give a number, or leave the key out";
        }
        return word.isEmpty()
                ? "a text stands without quotes; put it in double quotes"
                : "the word " + word + " stands without quotes; write \"" + word + "\"";
    }

    private static String unexpected(char found, String message, char before) {
        boolean closes = found == ']' || found == '}';
        if (found == '/' || found == '#') {
            return "JSON has no comments; take it out";
        } else if (found == '\'') {
            return "a single quote stands here; JSON's texts and keys have double quotes";
        } else if (message.contains("colon")) {
            return "a colon is missing between the key and its value";
        } else if (message.contains("expecting comma")) {
            return found == '"'
                    ? "a comma is missing before this, or a quote stands inside a text; write \\\" for that"
                    : "a comma is missing before this, or the quotes round a text such as \"1420 mm\"";
        } else if ((closes || found == ',') && before == ':') {
            return "a value is missing after the colon";
        } else if (closes && before == ',') {
            return "a comma stands before this bracket and nothing follows it; take out the comma before it";
        } else if (found == ',') {
            return "a comma stands here with no value before it; take it out";
        } else if (message.contains("field name") && Character.isDigit(found) && before == ',') {
            return "a number stands where a key is due; decimals have a point, as in 0.63";
        } else if (message.contains("field name")) {
            return "a key in double quotes is due here; look at the quotes and commas before it";
        } else if (found == '+' || found == '.') {
            return NUMBER;
        }
        return "a value is due here: a text in double quotes, a number, an object in { } or a list in [ ]";
    }

    /** The last character before the one that was found, without blanks; a blank where there is none. */
    private static char before(String text, int at, String found) {
        int here = Math.min(at, text.length() - 1);
        if (here > 0 && text.charAt(here) != found.charAt(0)) {
            here--;
        }
        do {
            here--;
        } while (here >= 0 && Character.isWhitespace(text.charAt(here)));
        return here < 0 ? ' ' : text.charAt(here);
    }
}
