package evenhand.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All that is handed over, as data.
 *
 * @param title of the car
 * @param subtitle which set-ups
 * @param shop name of the workshop
 * @param date that is printed on it; nothing else in it knows a clock
 */
public record Paper(
        String title,
        String subtitle,
        Optional<String> shop,
        Optional<ShopPicture> picture,
        Optional<LocalDate> date,
        List<Section> sections) {
    public Paper {
        sections = List.copyOf(sections);
    }
}
