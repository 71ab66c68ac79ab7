package evenhand.report;

import evenhand.look.Typeface;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;

/** Sets a paper as one HTML file that needs nothing else: fonts and pictures are in it. It is well-formed XML too. */
public final class HtmlWriter {
    private static final int WIDTH = 760;
    private static final int GAP = 10;
    private static final Pattern PROLOGUE = Pattern.compile("^.*?(?=<svg)", Pattern.DOTALL);
    /** Words in pictures, px; on the screen of a phone they are as large as on that of a desk. */
    private static final double TYPE = 11;

    private static final String STYLE = """
            :root{color-scheme:light dark}
            body{font:15px/1.5 Roboto,sans-serif;color:#000;background:#fff;max-width:760px;margin:2em auto;padding:0 1em;
            overflow-wrap:break-word}
            h1{font-size:1.9em;line-height:1.25;margin:.1em 0}h2{font-size:1.35em;margin:1.6em 0 .4em}
            h3{font-size:1.05em;margin:1.2em 0 .3em}p,ul,.wide{margin:.5em 0}ul{padding-left:1.2em}
            header{border-bottom:1px solid #000;padding-bottom:.6em}header img{float:right;max-width:200px;max-height:80px}
            .quiet{color:#545454;font-size:.88em}.warning{color:#b3261e;font-weight:bold}
            .wide{overflow-x:auto}table{border-collapse:collapse;width:100%;font-size:.88em}
            td,th{padding:.2em .4em;vertical-align:top;text-align:left;border-bottom:1px solid #b8b8b8}
            th{color:#545454;border-bottom:1px solid #000}.number{text-align:right}
            .marked{background:#eaf1fc;font-weight:bold}td.blank{border:1px solid #b8b8b8;min-width:5em}
            .box{float:right;box-sizing:border-box;width:13mm;height:8.2mm;border:1px solid #b8b8b8;margin-left:.3em;background:#fff}
            .figures{display:flex;gap:10px}.figures svg{height:auto;min-width:0;flex:0 1 auto;background:#fff}
            .fields{display:flex;flex-wrap:wrap;gap:4px}.fields div{border:1px solid #b8b8b8;width:32%;height:3.4em;font-size:.75em;
            color:#545454;padding:.2em .4em;box-sizing:border-box;overflow:hidden}
            @media screen and (max-width:600px){.figures{display:block;overflow-x:auto}
            .figures svg{width:100%;min-width:340px}.figures svg:only-child{min-width:560px}}
            @media screen and (prefers-color-scheme:dark){body{color:#e6e6e6;background:#1b1d20}header,th{border-color:#9a9a9a}
            .quiet,th,.fields div{color:#a9a9a9}.warning{color:#ff8a80}.marked{background:#22344d}}
            @media print{@page{margin:15mm}td,th{padding:.1em .4em}body{font-size:11.5px;max-width:none;margin:0;padding:0}.wide{overflow:visible}
            section.page,article+article{break-before:page}tr,.figures,.fields{break-inside:avoid}h2,h3{break-after:avoid}
            .marked{print-color-adjust:exact;-webkit-print-color-adjust:exact}}
            """;

    private final StringBuilder text = new StringBuilder();
    private int figures;

    private HtmlWriter() {}

    public static Printed write(Paper paper) {
        return write(List.of(paper));
    }

    /** Several papers below one another in one file. */
    public static Printed write(List<Paper> papers) {
        HtmlWriter writer = new HtmlWriter();
        writer.all(papers);
        return new Printed(writer.text.toString().getBytes(StandardCharsets.UTF_8), List.of());
    }

    private void all(List<Paper> papers) {
        text.append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en-GB\">\n<head>\n");
        text.append("<meta charset=\"utf-8\"/>\n<meta name=\"generator\" content=\"Evenhand\"/>\n");
        text.append("<meta name=\"viewport\" content=\"width=device-width\"/>\n");
        text.append("<title>").append(escaped(papers.get(0).title())).append("</title>\n<style>\n");
        face("Roboto-Regular.ttf", "normal");
        face("Roboto-Bold.ttf", "bold");
        text.append(STYLE).append("</style>\n</head>\n<body>\n");
        papers.forEach(this::paper);
        text.append("</body>\n</html>\n");
    }

    private void paper(Paper paper) {
        text.append("<article>\n<header>\n");
        paper.picture()
                .ifPresent(picture -> text.append("<img alt=\"\" src=\"data:image/png;base64,")
                        .append(Base64.getEncoder().encodeToString(picture.png()))
                        .append("\"/>\n"));
        paper.shop().ifPresent(shop -> element("p", "quiet", shop));
        element("h1", "", paper.title());
        element(
                "p",
                "quiet",
                paper.subtitle() + paper.date().map(date -> ", " + date).orElse(""));
        text.append("</header>\n");
        for (Section section : paper.sections()) {
            text.append(section.opensPage() ? "<section class=\"page\">\n" : "<section>\n");
            element("h2", "", section.title());
            section.blocks().forEach(this::block);
            text.append("</section>\n");
        }
        text.append("</article>\n");
    }

    private void face(String file, String weight) {
        try (InputStream in = Typeface.file(file)) {
            text.append("@font-face{font-family:Roboto;font-weight:")
                    .append(weight)
                    .append(";src:url(data:font/ttf;base64,");
            text.append(Base64.getEncoder().encodeToString(in.readAllBytes())).append(")}\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void element(String name, String kind, String words) {
        text.append('<').append(name);
        if (!kind.isEmpty()) {
            text.append(" class=\"").append(kind).append('"');
        }
        text.append(" dir=\"auto\">")
                .append(escaped(words))
                .append("</")
                .append(name)
                .append(">\n");
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            element("h3", "", heading.text());
        } else if (block instanceof Block.Text words) {
            String kind = switch (words.tone()) {
                case PLAIN -> "";
                case QUIET -> "quiet";
                case WARNING -> "warning";
            };
            element("p", kind, words.text());
        } else if (block instanceof Block.Points points) {
            if (!points.sentences().isEmpty()) {
                text.append("<ul>\n");
                points.sentences().forEach(sentence -> element("li", "", sentence));
                text.append("</ul>\n");
            }
        } else if (block instanceof Block.Figures several) {
            text.append("<div class=\"figures\">\n");
            List<Integer> widths = several.widths(WIDTH, GAP);
            for (int i = 0; i < widths.size(); i++) {
                text.append(svg(several.figures().get(i), widths.get(i), (int) (several.height() * WIDTH)));
            }
            text.append("</div>\n");
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Facts facts) {
            text.append("<dl>\n");
            for (Block.Fact fact : facts.facts()) {
                element("dt", "", fact.lead());
                element("dd", fact.tone() == Block.Tone.WARNING ? "warning" : "", fact.text());
            }
            text.append("</dl>\n");
        } else if (block instanceof Block.Fields fields) {
            text.append("<div class=\"fields\">\n");
            fields.labels().forEach(label -> element("div", "", label));
            text.append("</div>\n");
        }
    }

    private void table(Block.Table table) {
        text.append("<div class=\"wide\"><table>\n<thead><tr>\n");
        for (Block.Column column : table.columns()) {
            element("th", kind(column), column.head());
        }
        text.append("</tr></thead>\n<tbody>\n");
        for (Block.Row row : table.rows()) {
            text.append(row.marked() ? "<tr class=\"marked\">\n" : "<tr>\n");
            for (int i = 0; i < row.cells().size(); i++) {
                if (row.boxes().contains(i)) {
                    boxed(row.cells().get(i));
                } else {
                    element("td", kind(table.columns().get(i)), row.cells().get(i));
                }
            }
            text.append("</tr>\n");
        }
        text.append("</tbody>\n</table></div>\n");
    }

    private void boxed(String words) {
        text.append("<td dir=\"auto\"><span class=\"box\"></span>")
                .append(escaped(words))
                .append("</td>\n");
    }

    private static String kind(Block.Column column) {
        return switch (column.kind()) {
            case WORDS -> "";
            case NUMBER -> "number";
            case BLANK -> "blank";
        };
    }

    /** A picture's document without its prologue, its names made its own among all pictures. */
    private String svg(Block.Figure figure, int width, int height) {
        String mark = "f" + ++figures + "-";
        String svg = PdfPictures.picture(figure, TYPE, width, height).svg();
        svg = PROLOGUE.matcher(svg).replaceFirst("");
        svg = svg.replaceAll("\\bid=\"", "id=\"" + mark)
                .replaceAll("url\\(#", "url(#" + mark)
                .replaceAll("href=\"#", "href=\"#" + mark);
        return svg.replaceFirst("<svg", "<svg viewBox=\"0 0 " + width + " " + height + "\"") + "\n";
    }

    /** As text of XML; what XML cannot hold is left out. */
    static String escaped(String words) {
        StringBuilder escaped = new StringBuilder();
        words.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> {
                    boolean legal = letter == '\t'
                            || letter == '\n'
                            || (letter >= 0x20 && letter <= 0xD7FF)
                            || (letter >= 0xE000 && letter <= 0xFFFD)
                            || letter >= 0x10000;
                    escaped.appendCodePoint(legal ? letter : 0xFFFD);
                }
            }
        });
        return escaped.toString();
    }
}
