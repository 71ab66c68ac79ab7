package evenhand.window.desk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What of a job's form is shown together: the sections of one part of the car. */
public record Chapter(Subject subject, List<Form.Section> sections) {
    /** Of what a chapter is, in the order that they are listed. */
    public enum Subject {
        BODY("Body and weights"),
        FRONT("Front axle, steering"),
        REAR("Rear axle"),
        TYRES("Tyres"),
        SPRINGS("Springs and dampers"),
        POINTS("Links, point by point"),
        BRAKES("Brakes"),
        DRIVE("Engine and drive"),
        BRACKETS("Brackets"),
        JOB("The job and its paper");

        private final String title;

        Subject(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }

        private static final Set<String> SPRUNG =
                Set.of("spring", "bar", "damper", "bumpStop", "droopStop", "metalStop");
        private static final Set<String> LINKED = Set.of("links", "clearances", "propShaft");

        /** The chapter that a section stands in. */
        static Subject of(Form.Section section) {
            if (section.home() != Form.Home.CAR) {
                return JOB;
            }
            String[] keys = section.path().replaceAll("\\[\\d+]", "").split("\\.", -1);
            return switch (keys[0]) {
                case "front", "rear" -> ofAxle(keys, section);
                case "steering" -> FRONT;
                case "brakes" -> BRAKES;
                case "drive" -> DRIVE;
                case "mounts" -> BRACKETS;
                default -> BODY;
            };
        }

        private static Subject ofAxle(String[] keys, Form.Section section) {
            String part = keys.length > 1 ? keys[1] : "";
            if (part.equals("tyre")) {
                return TYRES;
            } else if (SPRUNG.contains(part)) {
                return SPRINGS;
            } else if (LINKED.contains(part) || section.fields().stream().anyMatch(PointRow::isCoordinate)) {
                return POINTS;
            }
            return keys[0].equals("front") ? FRONT : REAR;
        }
    }

    /**
     * How far a chapter is filled in: so many values are given, so many estimated, and so many neither, though they move an answer.
     */
    public record Filled(int given, int estimated, int missing) {}

    public Chapter {
        sections = List.copyOf(sections);
    }

    /** The chapters of a form that hold anything. */
    public static List<Chapter> of(Form form) {
        Map<Subject, List<Form.Section>> bySubject = new EnumMap<>(Subject.class);
        for (Form.Section section : form.sections()) {
            bySubject
                    .computeIfAbsent(Subject.of(section), any -> new ArrayList<>())
                    .add(section);
        }
        return bySubject.entrySet().stream()
                .map(own -> new Chapter(own.getKey(), own.getValue()))
                .toList();
    }

    /** @param none paths of what was not given and is taken as none */
    public Filled filled(Set<String> none) {
        int given = 0;
        int estimated = 0;
        int missing = 0;
        for (Form.Section section : sections) {
            if (section.absent()) {
                missing += none.contains(section.path()) ? 1 : 0;
            }
            for (FormField field : section.fields()) {
                switch (field.standing(none)) {
                    case GIVEN -> given++;
                    case ESTIMATED -> estimated++;
                    case TAKEN_AS_NONE -> missing++;
                    case BLANK -> {}
                }
            }
        }
        return new Filled(given, estimated, missing);
    }

    /** Paths of its values and parts that are not given and taken as none. */
    public List<String> missing(Set<String> none) {
        List<String> missing = new ArrayList<>();
        for (Form.Section section : sections) {
            if (section.absent() && none.contains(section.path())) {
                missing.add(section.path());
            }
            section.fields().stream()
                    .filter(field -> field.standing(none) == FormField.Standing.TAKEN_AS_NONE)
                    .forEach(field -> missing.add(field.path()));
        }
        return missing;
    }

    /** Whether a value or a part of it stands in this chapter. */
    public boolean has(String path) {
        return sections.stream()
                .anyMatch(section -> section.added().equals(path)
                        || section.path().equals(path)
                        || section.fields().stream()
                                .anyMatch(field -> path.equals(field.path()) || path.startsWith(field.path() + "[")));
    }
}
