package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.forms.LevelTable;
import evenhand.forms.Table;
import evenhand.quantity.Dimension;
import evenhand.quantity.Quantity;
import evenhand.quantity.QuantityException;
import evenhand.scenario.NewEntry;
import evenhand.scenario.Problem;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.BookPage;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.words.level.LevelledSetup;
import evenhand.words.level.LevelledSetup.Levelled;
import evenhand.words.level.Wanted;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How far to turn which perch, and the way to the sheet; the book and what is due of it stand below. */
final class WhatTheShopDoes implements Question {
    private static final Field CROSS = Field.empty("cross", "cross weight", "50 %");
    private static final String UNHOOKED = "unhooked";
    private static final Field BARS = new Field("bars", "bars", List.of(UNHOOKED, "hooked"), UNHOOKED);
    private static final Field DAY = Field.empty(BookPage.DAY, "due on", "today");

    /** Cross weights that a car can be asked for. */
    private static final double LEAST = 0.3;

    private static final double MOST = 0.7;

    @Override
    public String key() {
        return "shop";
    }

    @Override
    public Group group() {
        return Group.ROAD;
    }

    @Override
    public String words() {
        return "What is to be turned, and what is due?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return List.of(CROSS, BARS, DAY);
    }

    @Override
    public List<String> adjustments(Setup active) {
        return List.of();
    }

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    @Override
    public boolean showsTheBook() {
        return true;
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        String cross = asked.wish(CROSS).strip();
        OptionalDouble wished = OptionalDouble.empty();
        if (!cross.isEmpty()) {
            try {
                wished =
                        OptionalDouble.of(Quantity.parse(cross, Dimension.RATIO).si());
            } catch (QuantityException wrong) {
                return Reply.only("The cross weight " + wrong.message("\"50 %\"") + ".");
            }
            if (wished.getAsDouble() < LEAST || wished.getAsDouble() > MOST) {
                return Reply.only("The cross weight must lie between 30 % and 70 %, for example 50 %.");
            }
        }
        String day = asked.wish(DAY).strip();
        if (!day.isEmpty()) {
            try {
                NewEntry.day(day);
            } catch (NewEntry.Refused none) {
                return Reply.only("\"" + day + "\" " + none.getMessage() + ".");
            }
        }
        return reply(asked, wished);
    }

    private static Reply reply(Asked asked, OptionalDouble cross) {
        Setup setup = asked.active().setup();
        Wanted wanted = Wanted.of(
                asked.work().scenario(),
                setup,
                cross,
                Map.of(),
                !asked.wish(BARS).equals(UNHOOKED));
        Optional<Problem> missing = wanted.missing(asked.work().scenario(), setup);
        List<String> headlines = new ArrayList<>();
        List<Reply.Paragraph> more = new ArrayList<>();
        List<Reply.Next> next = new ArrayList<>();
        Table figures = Table.NONE;
        if (missing.isPresent()) {
            headlines.add("Nobody can say yet how far to turn which perch.");
            more.add(new Reply.Paragraph(
                    "What is missing",
                    List.of(missing.get().where() + " " + missing.get().what() + ".")));
            next.add(Straight.toTheForm("give it under \"The car itself\""));
        } else if (LevelledSetup.of(setup, wanted, asked.work().trial().bothWays()) instanceof Levelled levelled) {
            List<String> said = levelled.words(asked.units());
            headlines.add(said.get(0));
            more.add(new Reply.Paragraph(setup.name(), said.subList(1, said.size())));
            figures = LevelTable.of(levelled, asked.units());
        } else {
            headlines.add("Without an answer no perch is worth turning: "
                    + asked.active().silence().orElse("it finds no rest on all four wheels")
                    + ".");
        }
        next.add(new Reply.Next(
                "print the set-up sheet, or the book to hand over: `report --for workshop` and `--for handover`",
                Optional.of(new LookAct.TurnTo(Look.Page.REPORT))));
        return new Reply(headlines, more, List.of(), figures, next);
    }
}
