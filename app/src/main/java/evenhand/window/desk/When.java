package evenhand.window.desk;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A moment as somebody says it who has a calendar on the wall. */
public final class When {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private When() {}

    /** "at 14:05 today", "at 14:05 on 30 November"; with its year where that is another. */
    public static String words(Instant moment, Instant now, ZoneId zone) {
        ZonedDateTime then = moment.atZone(zone);
        LocalDate today = now.atZone(zone).toLocalDate();
        LocalDate day = then.toLocalDate();
        String at = "at " + CLOCK.format(then) + " ";
        if (day.equals(today)) {
            return at + "today";
        }
        if (day.plusDays(1).equals(today)) {
            return at + "yesterday";
        }
        return at + "on " + (day.getYear() == today.getYear() ? DAY : YEAR).format(then);
    }

    /** The same by this computer's clock. */
    public static String words(Instant moment) {
        return words(moment, Instant.now(), ZoneId.systemDefault());
    }
}
