package evenhand.quantity;

import java.lang.Character.UnicodeBlock;
import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Characters that nobody sees: controls, which drive a terminal, marks of direction, which turn round what stands beside them, and
 * blanks without width, which make two names look like one. A text that a person reads has none; where a foreign one is shown, it
 * is shown by its number.
 *
 * <p>Let through is what a script cannot do without: a joiner between letters of a script that joins them, or between the parts of
 * a pictograph, and a variant of the one character it stands behind. Source: Unicode Standard 15, sections 23.2 to 23.4, and
 * annex 31, section 2.3.
 */
public final class Unseen {
    private static final int NON_JOINER = 0x200C;
    private static final int JOINER = 0x200D;

    /** So many letters before it are enough to find a place again. */
    private static final int BEHIND = 20;

    /** Scripts in which a joiner makes another word or another form of a letter. */
    private static final Set<UnicodeScript> JOINING = EnumSet.of(
            UnicodeScript.ARABIC,
            UnicodeScript.SYRIAC,
            UnicodeScript.MANDAIC,
            UnicodeScript.MONGOLIAN,
            UnicodeScript.NKO,
            UnicodeScript.DEVANAGARI,
            UnicodeScript.BENGALI,
            UnicodeScript.GURMUKHI,
            UnicodeScript.GUJARATI,
            UnicodeScript.ORIYA,
            UnicodeScript.TAMIL,
            UnicodeScript.TELUGU,
            UnicodeScript.KANNADA,
            UnicodeScript.MALAYALAM,
            UnicodeScript.SINHALA,
            UnicodeScript.KHMER,
            UnicodeScript.MYANMAR,
            UnicodeScript.TIBETAN);

    private Unseen() {}

    /** Where the first such character of a text stands, if it has one. Line breaks and tabs count where they cannot stand. */
    public static OptionalInt first(String text, boolean lines) {
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int letter = text.codePointAt(at);
            if (isUnseen(text, at, letter, lines)) {
                return OptionalInt.of(at);
            }
        }
        return OptionalInt.empty();
    }

    /** A text to be shown on one line, with the numbers of what nobody would see in it: {@code \}{@code u202e}. */
    public static String shown(String text) {
        return shown(text, false);
    }

    /** The same, on as many lines as it has. */
    public static String shown(String text, boolean lines) {
        if (first(text, lines).isEmpty()) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int letter = text.codePointAt(at);
            if (isUnseen(text, at, letter, lines)) {
                for (char half : Character.toChars(letter)) {
                    shown.append(String.format(Locale.ROOT, "\\u%04x", (int) half));
                }
            } else {
                shown.appendCodePoint(letter);
            }
        }
        return shown.toString();
    }

    /** What stands at this place, and behind what: {@code a control character behind "As bou"}. */
    public static String words(String text, int at) {
        int from = text.codePointCount(0, at) <= BEHIND ? 0 : text.offsetByCodePoints(at, -BEHIND);
        return name(text.codePointAt(at))
                + (at == 0 ? " at its beginning" : " behind \"" + shown(text.substring(from, at)) + '"');
    }

    private static String name(int letter) {
        if (Character.isISOControl(letter)) {
            return "a control character";
        }
        if (letter <= Character.MAX_VALUE && Character.isSurrogate((char) letter)) {
            return "half a character";
        }
        String name = Character.getName(letter);
        return String.format(Locale.ROOT, "the invisible character U+%04X", letter)
                + (name == null ? "" : " (" + name.toLowerCase(Locale.ROOT) + ")");
    }

    private static boolean isUnseen(String text, int at, int letter, boolean lines) {
        if (letter < 0x7F) {
            return letter < ' ' && !(lines && (letter == '\n' || letter == '\t'));
        }
        return switch (Character.getType(letter)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            case Character.FORMAT -> !isNumberSign(letter) && !isJoiner(text, at, letter);
            default -> isBlankLetter(letter) || (isVariant(letter) && !varies(text, at, letter));
        };
    }

    /** Signs round a number, which are seen, though Unicode counts them among the formats. */
    private static boolean isNumberSign(int letter) {
        return isFrom(0x600, letter, 0x605)
                || letter == 0x6DD
                || letter == 0x70F
                || letter == 0x890
                || letter == 0x891
                || letter == 0x8E2
                || letter == 0x110BD
                || letter == 0x110CD;
    }

    /** Letters and marks that are drawn as nothing: fillers of Hangul, the grapheme joiner, inherent vowels of Khmer, noncharacters. */
    private static boolean isBlankLetter(int letter) {
        return letter == 0x115F
                || letter == 0x1160
                || letter == 0x3164
                || letter == 0xFFA0
                || letter == 0x34F
                || letter == 0x17B4
                || letter == 0x17B5
                || letter == 0x2065
                || isFrom(0xFFF0, letter, 0xFFF8)
                || isFrom(0xFDD0, letter, 0xFDEF)
                || (letter & 0xFFFE) == 0xFFFE
                || isFrom(0xE0000, letter, 0xE00FF)
                || isFrom(0xE01F0, letter, 0xE0FFF);
    }

    private static boolean isFrom(int first, int letter, int last) {
        return first <= letter && letter <= last;
    }

    private static boolean isJoiner(String text, int at, int letter) {
        if (at == 0 || (letter != JOINER && letter != NON_JOINER)) {
            return false;
        }
        int before = text.codePointBefore(at);
        int end = at + Character.charCount(letter);
        if (JOINING.contains(UnicodeScript.of(before)) && isLetterOrMark(before)) {
            return letter == JOINER || end < text.length();
        }
        return letter == JOINER && end < text.length() && isPictograph(before) && isPictograph(text.codePointAt(end));
    }

    private static boolean isLetterOrMark(int letter) {
        int type = Character.getType(letter);
        return Character.isLetter(letter)
                || type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK;
    }

    /** A pictograph, its colour of skin, or its form. */
    private static boolean isPictograph(int letter) {
        return Character.getType(letter) == Character.OTHER_SYMBOL
                || isFrom(0x1F3FB, letter, 0x1F3FF)
                || letter == 0xFE0F;
    }

    private static boolean isVariant(int letter) {
        return isFrom(0xFE00, letter, 0xFE0F) || isFrom(0xE0100, letter, 0xE01EF) || isMongolian(letter);
    }

    private static boolean isMongolian(int letter) {
        return isFrom(0x180B, letter, 0x180F) && letter != 0x180E;
    }

    /** Whether it chooses a form of the character before it, and is the only one to do so. */
    private static boolean varies(String text, int at, int letter) {
        if (at == 0) {
            return false;
        }
        int before = text.codePointBefore(at);
        if (letter > Character.MAX_VALUE) {
            return UnicodeScript.of(before) == UnicodeScript.HAN;
        }
        if (isMongolian(letter)) {
            return UnicodeBlock.MONGOLIAN.equals(UnicodeBlock.of(before)) && !isVariant(before);
        }
        return !Character.isWhitespace(before) && !isVariant(before) && Character.getType(before) != Character.FORMAT;
    }
}
