package evenhand.report;

import java.util.regex.Pattern;

/** Signs as a printer sets them: quotes that open and close, an apostrophe, and a number never torn from its unit. */
final class Typeset {
    private static final Pattern UNIT =
            Pattern.compile("(?<=\\d) (?=(?:%|°|(?:mm|cm|m|km|N|kN|kg|g|deg|rad|Hz|bar|kPa|psi|lb|lbf|in|ft|"
                    + "mph|rpm|s|rev)(?:[/·²*][^ ]*)?(?![A-Za-z])|km/h))");
    private static final Pattern TOLERANCE = Pattern.compile("± (?=\\d)");
    private static final char FIRM = '\u00a0';

    private Typeset() {}

    static String of(String words) {
        String firm = TOLERANCE
                .matcher(UNIT.matcher(words).replaceAll(Character.toString(FIRM)))
                .replaceAll("±" + FIRM);
        if (firm.indexOf('"') < 0 && firm.indexOf('\'') < 0) {
            return firm;
        }
        StringBuilder set = new StringBuilder(firm);
        for (int i = 0; i < set.length(); i++) {
            char sign = set.charAt(i);
            if (sign == '"' || sign == '\'') {
                boolean opens = i == 0 || " (\u00a0[“‘".indexOf(set.charAt(i - 1)) >= 0;
                set.setCharAt(i, sign == '"' ? opens ? '“' : '”' : opens ? '‘' : '’');
            }
        }
        return set.toString();
    }
}
