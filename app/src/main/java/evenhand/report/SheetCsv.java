package evenhand.report;

import evenhand.forms.CsvForm;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The set-up sheet as CSV: a row for each thing, then the free words. */
public final class SheetCsv {
    private SheetCsv() {}

    public static byte[] write(SetupSheet sheet) {
        StringBuilder text = new StringBuilder("setup,path,what,value,tolerance,before,changed\n");
        String name = sheet.setup().name();
        for (SetupSheet.Item item : sheet.items()) {
            line(
                    text,
                    List.of(
                            name,
                            item.path(),
                            item.called(),
                            item.value(),
                            item.tolerance() + (item.usual() ? " (usual)" : ""),
                            item.before(),
                            item.changed() ? "yes" : "no"));
        }
        for (SetupSheet.Note note : sheet.freeWords()) {
            line(text, List.of(name, "sheet", note.head(), note.text(), "", "", "no"));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void line(StringBuilder text, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            text.append(i == 0 ? "" : ",").append(CsvForm.quoted(cells.get(i)));
        }
        text.append('\n');
    }
}
