package evenhand.terminal;

import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** One run of the program in this process. */
public record Run(Status status, String out, String err) {
    /** A small car with a set-up that turns, one that turns flatter, and one that falls over on its springs. */
    public static final String CAR = """
            {
              "evenhand": 1,
              "title": "Test mule, \\"blue\\"",
              "story": "An invented car.",
              "car": {
                "mass": "1380 kg", "frontWeightFraction": 0.545, "wheelbase": "2660 mm", "cgHeight": "520 mm",
                "front": {
                  "layout": "independent", "track": "1430 mm", "unsprungMass": "85 kg", "unsprungHeight": "305 mm",
                  "rollCentre": {"height": "50 mm", "perBump": -1.3},
                  "spring": {"rate": "60 N/mm", "motionRatio": 0.63}, "rollCamber": 0.75, "rollSteer": 0.03,
                  "tyre": {"size": "205/60R15", "kind": "touring radial", "pressure": "2.1 bar"}
                },
                "rear": {
                  "layout": "live axle", "track": "1430 mm", "unsprungMass": "120 kg", "unsprungHeight": "305 mm",
                  "lateralLocator": {"kind": "watt", "height": "255 mm", "carriedBy": "body"},
                  "spring": {"rate": "28 N/mm", "base": "1000 mm"},
                  "bumpStop": {"gap": "25 mm", "base": "900 mm", "curve": [["0 mm", "0 N"], ["20 mm", "1500 N"]]},
                  "tyre": {"size": "205/60R15", "kind": "touring radial", "pressure": "2.1 bar"}
                },
                "drive": {"axle": "rear", "differential": {"kind": "open"}}
              },
              "setups": [
                {"name": "As bought"},
                {"name": "Flatter, stiffer", "changes": {"front": {"bar": {"rollStiffness": "300 N*m/deg"}}}},
                {"name": "Jelly", "changes": {
                  "front": {"spring": {"rate": "3 N/mm"}}, "rear": {"spring": {"rate": "3 N/mm"}}}}
              ]
            }
            """;

    public static Run of(String... args) {
        Kept kept = kept();
        Status status = Evenhand.run(kept.console(), args);
        return new Run(status, kept.out(), kept.err());
    }

    /** A console and what was written to it. */
    record Kept(Console console, ByteArrayOutputStream answers, ByteArrayOutputStream complaints) {
        String out() {
            return answers.toString(StandardCharsets.UTF_8);
        }

        String err() {
            return complaints.toString(StandardCharsets.UTF_8);
        }
    }

    static Kept kept() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        return new Kept(Console.of(out, err, false, Map.of()), out, err);
    }

    /** A run whose answer goes to a stream of another kind. */
    static Run into(OutputStream out, String... args) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Status status = Evenhand.run(Console.of(out, err, false, Map.of()), args);
        return new Run(status, "", err.toString(StandardCharsets.UTF_8));
    }

    public static Path car(Path folder) {
        return file(folder, "mule.json", CAR);
    }

    public static Path file(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public List<String> lines() {
        return out.lines().toList();
    }
}
