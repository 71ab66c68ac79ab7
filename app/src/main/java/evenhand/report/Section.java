package evenhand.report;

import java.util.List;

/**
 * A part of a paper under its title.
 *
 * @param opensPage whether it begins on a new page
 */
public record Section(String title, boolean opensPage, List<Block> blocks) {
    public Section {
        blocks = List.copyOf(blocks);
    }
}
