package evenhand.chart;

import evenhand.look.LabelRoom;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/** Words in lines of a width. */
final class Wrapped {
    private static final int LONGEST_UNIT = 8;

    private Wrapped() {}

    /** At most so many lines; what does not fit is cut with an ellipsis. */
    static List<String> lines(String words, Font font, FontRenderContext context, double width, int most) {
        List<String> lines = new ArrayList<>();
        String rest = words.strip();
        while (!rest.isEmpty() && lines.size() < most) {
            boolean last = lines.size() == most - 1;
            int end = last ? rest.length() : fitting(rest, font, context, width);
            String line = rest.substring(0, end).strip();
            lines.add(LabelRoom.cut(line, font, context, width));
            rest = rest.substring(end).strip();
        }
        return lines;
    }

    /** How much of it fits, up to a space; to the first space where nothing does. A number stays with its unit. */
    private static int fitting(String words, Font font, FontRenderContext context, double width) {
        if (font.getStringBounds(words, context).getWidth() <= width) {
            return words.length();
        }
        int end = 0;
        for (int space = words.indexOf(' '); space >= 0; space = words.indexOf(' ', space + 1)) {
            if (isBeforeUnit(words, space)) {
                continue;
            }
            if (end > 0
                    && font.getStringBounds(words.substring(0, space), context).getWidth() > width) {
                return end;
            }
            end = space;
        }
        return end > 0 ? end : words.length();
    }

    /** Whether a short word, most likely a unit, follows a number here. */
    private static boolean isBeforeUnit(String words, int space) {
        int next = words.indexOf(' ', space + 1);
        int length = (next < 0 ? words.length() : next) - space - 1;
        return space > 0 && Character.isDigit(words.charAt(space - 1)) && length <= LONGEST_UNIT;
    }
}
