package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.forms.Table;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Reply;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Turns of perches and the book, in the window. */
class WhatTheShopDoesTest {
    private static List<String> under(Reply reply, String heading) {
        return reply.more().stream()
                .filter(paragraph -> paragraph.heading().startsWith(heading))
                .flatMap(paragraph -> paragraph.sentences().stream())
                .toList();
    }

    @Test
    void theTurnsAreLargeWithTheirFiguresAndTheBookBelow() throws Exception {
        Reply reply = Asks.demo("quarry-special").wish("shop/on", "2026-12-01").reply("shop");
        assertThat(reply.headlines().get(0)).contains("left front 3.63 turns down");
        assertThat(reply.figures().lines())
                .filteredOn(Table.Row.class::isInstance)
                .extracting(Table.Line::words)
                .contains("turns, + up", "weighs now");
        assertThat(under(reply, "Due, as of 2026-12-01")).contains("Later: road licence holds until 2027-03-31.");
        assertThat(under(reply, "The book")).hasSize(5);
        assertThat(under(reply, "The book").get(3))
                .startsWith("4. 2026-10-05, 61145 km: ")
                .contains("corrects entry 3");
        assertThat(reply.next().get(reply.next().size() - 1).act()).contains(new LookAct.TurnTo(Look.Page.REPORT));
    }

    @Test
    void aCarWithoutThreadSaysWhatToGiveAndShowsItsBook() throws Exception {
        Reply reply = Asks.demo("sluice-tourer").wish("shop/on", "2026-12-25").reply("shop");
        assertThat(reply.headlines().get(0)).startsWith("Nobody can say yet");
        assertThat(under(reply, "What is missing").get(0)).contains("pitch");
        assertThat(under(reply, "Due")).contains("Overdue: road licence held until 2026-12-20.");
        assertThat(reply.figures()).isEqualTo(Table.NONE);
    }

    @Test
    void aSlipInAFieldIsAnsweredInASentence() throws Exception {
        Asks quarry = Asks.demo("quarry-special");
        assertThat(quarry.wish("shop/cross", "9 %").reply("shop").headlines().get(0))
                .contains("between 30 % and 70 %");
        assertThat(quarry.wish("shop/cross", "")
                        .wish("shop/on", "soon")
                        .reply("shop")
                        .headlines()
                        .get(0))
                .contains("is no day");
    }
}
