package evenhand.report;

import evenhand.look.Theme;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Pictures inside a page: small, named for those who do not see them, and with the colours that they take on in the dark. */
final class HtmlPictures {
    /** Words in pictures, px; on the screen of a phone they are as large as on that of a desk. */
    private static final double TYPE = 11;

    private static final Pattern PROLOGUE = Pattern.compile("^.*?(?=<svg)", Pattern.DOTALL);
    private static final Pattern COLOUR = Pattern.compile("(fill|stroke)=\"(rgb\\([0-9,]+\\)|black|white)\"");
    private static final Pattern BREAK = Pattern.compile("\\s*\\n\\s*(?=/?>)");
    private static final Pattern NEEDLESS = Pattern.compile(
            " (?:xml:space|text-rendering|color-rendering|color-interpolation|shape-rendering|image-rendering"
                    + "|xmlns:xlink)=\"[^\"]*\"|<!--Evenhand-->");
    /** Behind the first digit: less than what an eye sees. */
    private static final Pattern FINE = Pattern.compile("(?<=\\d\\.\\d)\\d+");

    private static final Pattern EVERYTHING = Pattern.compile("id=\"(clipPath[0-9]+)\"[^>]*><path d=\"ALL ");

    private final Map<String, String> dark = new LinkedHashMap<>();
    private final Map<String, String> guessed = new LinkedHashMap<>();
    private int count;

    /** A picture's document without its prologue, its names made its own among all pictures. */
    String of(Block.Figure figure, int width, int height) {
        String mark = "f" + ++count + "-";
        String light =
                PdfPictures.picture(figure, Theme.page(TYPE), width, height).svg();
        learn(
                light,
                PdfPictures.picture(figure, Theme.dark(TYPE), width, height).svg());
        String svg = PROLOGUE.matcher(light).replaceFirst("");
        svg = NEEDLESS.matcher(BREAK.matcher(svg).replaceAll("")).replaceAll("");
        svg = FINE.matcher(svg).replaceAll("");
        Matcher all = EVERYTHING.matcher(svg.replace("M0 0 L" + width + " 0 L" + width + " " + height, "ALL"));
        if (all.find()) {
            svg = svg.replace(" clip-path=\"url(#" + all.group(1) + ")\"", ""); // a picture ends where its frame does
        }
        svg = svg.replaceAll("\\bid=\"", "id=\"" + mark)
                .replaceAll("url\\(#", "url(#" + mark)
                .replaceAll("href=\"#", "href=\"#" + mark);
        String name = HtmlWriter.escaped(Typeset.of(figure.title()));
        int end = svg.indexOf('>');
        return svg.substring(0, end)
                        .replaceFirst(
                                "<svg",
                                "<svg role=\"img\" aria-labelledby=\"" + mark + "t\" viewBox=\"0 0 " + width + " "
                                        + height + "\"")
                + "><title id=\"" + mark + "t\">" + name + "</title>" + svg.substring(end + 1) + "\n";
    }

    /** Both are drawn alike but for their colours, one after another; where that does not hold a colour is turned by its lightness. */
    private void learn(String light, String night) {
        List<MatchResult> one = COLOUR.matcher(light).results().toList();
        List<MatchResult> other = COLOUR.matcher(night).results().toList();
        for (int i = 0; i < one.size(); i++) {
            String from = one.get(i).group(2);
            if (from.equals("black")) {
                continue; // said once at the top, and drawn with by nothing
            }
            if (one.size() == other.size()) {
                dark.putIfAbsent(from, other.get(i).group(2));
            } else {
                guessed.putIfAbsent(from, turned(from));
            }
        }
    }

    /** A colour as light as it was dark, of the same hue. */
    private static String turned(String colour) {
        int[] parts = colour.equals("white")
                ? new int[] {255, 255, 255}
                : Pattern.compile("[0-9]+")
                        .matcher(colour)
                        .results()
                        .mapToInt(found -> Integer.parseInt(found.group()))
                        .toArray();
        double light = 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
        Theme night = Theme.dark(TYPE);
        int darkest = night.background().getGreen();
        double turned = darkest + (night.ink().getGreen() - darkest) * (1 - light / 255);
        return Arrays.stream(parts)
                .map(part -> (int) Math.round(Math.max(0, Math.min(255, turned + part - light))))
                .mapToObj(Integer::toString)
                .collect(Collectors.joining(",", "rgb(", ")"));
    }

    /** Rules for a dark screen: what is drawn in a colour of the paper takes that of the dark. */
    String inTheDark() {
        Map<String, String> all = new LinkedHashMap<>(guessed);
        all.putAll(dark);
        return all.entrySet().stream()
                .flatMap(colour -> Map.of("fill", colour, "stroke", colour).entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(way -> "svg[" + way.getKey() + "=\"" + colour.getKey() + "\"],svg [" + way.getKey() + "=\""
                                + colour.getKey() + "\"]{" + way.getKey() + ":" + colour.getValue() + "}"))
                .collect(Collectors.joining("\n"));
    }
}
