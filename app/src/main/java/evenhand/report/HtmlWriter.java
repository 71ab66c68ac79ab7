package evenhand.report;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Sets a paper as one HTML file that needs nothing else: fonts and pictures are in it. It is well-formed XML too. */
public final class HtmlWriter {
    private static final int WIDTH = 760;
    private static final int GAP = 10;
    /** From so many sections on a paper has a list of them. */
    private static final int MANY = 3;

    private static final String STYLE = """
            :root{color-scheme:light dark}
            body{font:15px/1.5 Roboto,sans-serif;font-variant-numeric:tabular-nums;color:#000;background:#fff;max-width:760px;margin:2em auto;padding:0 1em;
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
            .figures{display:flex;gap:10px}.figures svg{height:auto;min-width:0;flex:0 1 auto}
            caption{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
            tbody th{color:inherit;font-weight:inherit;border-bottom:1px solid #b8b8b8}nav ul{columns:2;font-size:.88em}
            a{color:#0b57d0}
            .fields{display:flex;flex-wrap:wrap;gap:4px}.fields div{border:1px solid #b8b8b8;width:32%;height:3.4em;font-size:.75em;
            color:#545454;padding:.2em .4em;box-sizing:border-box;overflow:hidden}
            @media screen and (max-width:600px){nav ul{columns:1}table,tbody,tr{display:block}thead{display:none}
            tr{border-bottom:1px solid #b8b8b8;padding:.3em 0}td,tbody th{display:flex;justify-content:space-between;gap:1em;border:0}
            tbody th{font-weight:bold}td[data-head]::before{content:attr(data-head);color:#545454;flex:0 0 40%;text-align:left}
            td.blank{min-height:2.4em}.figures{display:block;overflow-x:auto}
            .figures svg{width:100%;min-width:340px}.figures svg:only-child{min-width:560px}}
            @media screen and (prefers-color-scheme:dark){body{color:#e6e6e6;background:#1b1d20}header,th{border-color:#9a9a9a}
            .quiet,th,.fields div{color:#a9a9a9}.warning{color:#ff8a80}.marked{background:#22344d}a{color:#8ab4f8}
            td[data-head]::before{color:#a9a9a9}.box{background:none}PICTURES}
            @media print{nav{display:none}@page{margin:15mm}td,th{padding:.1em .4em}body{font-size:11.5px;max-width:none;margin:0;padding:0}.wide{overflow:visible}
            section.page,article+article{break-before:page}tr,.figures,.fields{break-inside:avoid}h2,h3{break-after:avoid}
            .marked{print-color-adjust:exact;-webkit-print-color-adjust:exact}}
            """;

    private final StringBuilder text = new StringBuilder();
    private final HtmlPictures pictures = new HtmlPictures();
    private int sections;
    /** What a table beneath it is of. */
    private String heading = "";

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
        papers.forEach(this::paper);
        String body = text.toString();
        text.setLength(0);
        text.append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en-GB\">\n<head>\n");
        text.append("<meta charset=\"utf-8\"/>\n<meta name=\"generator\" content=\"Evenhand\"/>\n");
        text.append("<meta name=\"viewport\" content=\"width=device-width\"/>\n");
        text.append("<title>").append(escaped(papers.get(0).title())).append("</title>\n<style>\n");
        text.append(HtmlFonts.faces(body.codePoints().boxed().collect(Collectors.toCollection(TreeSet::new))));
        text.append(STYLE.replace("PICTURES", "\n" + pictures.inTheDark())).append("</style>\n</head>\n<body>\n");
        text.append(body).append("</body>\n</html>\n");
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
        contents(paper.sections());
        for (Section section : paper.sections()) {
            text.append("<section id=\"s")
                    .append(++sections)
                    .append(section.opensPage() ? "\" class=\"page\">\n" : "\">\n");
            heading = section.title();
            element("h2", "", section.title());
            section.blocks().forEach(this::block);
            text.append("</section>\n");
        }
        text.append("</article>\n");
    }

    private void contents(List<Section> listed) {
        if (listed.size() < MANY) {
            return;
        }
        text.append("<nav aria-label=\"Contents\"><ul>\n");
        for (int i = 0; i < listed.size(); i++) {
            text.append("<li><a href=\"#s")
                    .append(sections + i + 1)
                    .append("\">")
                    .append(escaped(Typeset.of(listed.get(i).title())))
                    .append("</a></li>\n");
        }
        text.append("</ul></nav>\n");
    }

    private void element(String name, String kind, String words) {
        text.append('<').append(name);
        if (!kind.isEmpty()) {
            text.append(" class=\"").append(kind).append('"');
        }
        text.append(" dir=\"auto\">")
                .append(escaped(Typeset.of(words)))
                .append("</")
                .append(name)
                .append(">\n");
    }

    private void block(Block block) {
        if (block instanceof Block.Heading title) {
            heading = title.text();
            element("h3", "", title.text());
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
                text.append(pictures.of(several.figures().get(i), widths.get(i), (int) (several.height() * WIDTH)));
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
        text.append("<div class=\"wide\"><table>\n");
        element("caption", "", heading);
        text.append("<thead><tr>\n");
        for (Block.Column column : table.columns()) {
            cell("th scope=\"col\"", kind(column), "", column.head(), false);
        }
        text.append("</tr></thead>\n<tbody>\n");
        for (Block.Row row : table.rows()) {
            text.append(row.marked() ? "<tr class=\"marked\">\n" : "<tr>\n");
            for (int i = 0; i < row.cells().size(); i++) {
                Block.Column column = table.columns().get(i);
                boolean leads = i == 0 && column.kind() == Block.Kind.WORDS;
                cell(
                        leads ? "th scope=\"row\"" : "td",
                        kind(column),
                        leads ? "" : column.head(),
                        row.cells().get(i),
                        row.boxes().contains(i));
            }
            text.append("</tr>\n");
        }
        text.append("</tbody>\n</table></div>\n");
    }

    /** @param head of its column, which stands beside it where the screen is narrow */
    private void cell(String tag, String kind, String head, String words, boolean box) {
        text.append('<').append(tag);
        if (!kind.isEmpty()) {
            text.append(" class=\"").append(kind).append('"');
        }
        if (!head.isEmpty()) {
            text.append(" data-head=\"").append(escaped(Typeset.of(head))).append('"');
        }
        text.append(" dir=\"auto\">")
                .append(box ? "<span class=\"box\"></span>" : "")
                .append(escaped(Typeset.of(words)))
                .append("</")
                .append(tag, 0, 2)
                .append(">\n");
    }

    private static String kind(Block.Column column) {
        return switch (column.kind()) {
            case WORDS -> "";
            case NUMBER -> "number";
            case BLANK -> "blank";
        };
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
