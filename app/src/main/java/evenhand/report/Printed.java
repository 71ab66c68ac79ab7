package evenhand.report;

import java.util.List;

/**
 * A paper as the bytes of a file.
 *
 * @param remarks what could not be set as it was written, once each
 */
public record Printed(byte[] bytes, List<String> remarks) {
    public Printed {
        remarks = List.copyOf(remarks);
    }
}
