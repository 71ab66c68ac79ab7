package evenhand.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Whom a paper is for, and what stands in it: here and nowhere else. */
public enum Reader {
    /** Whoever owns the car and drives it. */
    OWNER("owner") {
        @Override
        List<Section> sections(Findings findings) {
            return OwnerPages.of(findings);
        }
    },
    /** Whoever is to follow the sums. */
    ENGINEER("engineer") {
        @Override
        List<Section> sections(Findings findings) {
            List<Section> sections = new ArrayList<>(CarPages.of(findings));
            if (findings.candidates().size() > 1) {
                sections.addAll(ComparisonPages.of(findings));
            }
            findings.ahead().map(ahead -> AheadPages.of(findings, ahead)).ifPresent(sections::add);
            findings.road()
                    .map(road -> RoadTestPages.of(road, findings.question().units()))
                    .ifPresent(sections::add);
            sections.addAll(WorkingPages.of(findings));
            return sections;
        }
    },
    /** Whoever is to certify it. */
    INSPECTOR("inspector") {
        @Override
        List<Section> sections(Findings findings) {
            return InspectorPages.of(findings);
        }
    },
    /** Whoever builds and re-checks it. */
    WORKSHOP("workshop") {
        @Override
        List<Section> sections(Findings findings) {
            return WorkshopPages.of(findings);
        }
    },
    /** Whoever hands it over, and to whom. */
    HANDOVER("handover") {
        @Override
        List<Section> sections(Findings findings) {
            return HandoverPages.of(findings);
        }
    };

    private final String word;

    Reader(String word) {
        this.word = word;
    }

    /** By which he is asked for, and called. */
    public String word() {
        return word;
    }

    /** What stands in his paper. */
    abstract List<Section> sections(Findings findings);

    /** All that there is a paper for. */
    public static List<Reader> all() {
        return List.of(values());
    }

    /** By its word. */
    public static Optional<Reader> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word.equals(word)).findFirst();
    }

    /** For a message: the words of all that there is a paper for. */
    public static String known() {
        return all().stream().map(Reader::word).collect(Collectors.joining(", "));
    }
}
