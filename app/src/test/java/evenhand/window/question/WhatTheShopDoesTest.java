package evenhand.window.question;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.forms.Table;
import evenhand.window.desk.Look;
import evenhand.window.desk.LookAct;
import evenhand.window.desk.Reply;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Turns of perches, in the window. */
class WhatTheShopDoesTest {
    private static List<String> under(Reply reply, String heading) {
        return reply.more().stream()
                .filter(paragraph -> paragraph.heading().startsWith(heading))
                .flatMap(paragraph -> paragraph.sentences().stream())
                .toList();
    }

    @Test
    void theTurnsAreLargeWithTheirFigures() throws Exception {
        Reply reply = Asks.demo("quarry-special").wish("shop/on", "2026-12-01").reply("shop");
        assertThat(reply.headlines().get(0)).contains("left front 3.63 turns down");
        assertThat(reply.figures().lines())
                .filteredOn(Table.Row.class::isInstance)
                .extracting(Table.Line::words)
                .contains("turns, + up", "weighs now");
        assertThat(reply.next().get(reply.next().size() - 1).act()).contains(new LookAct.TurnTo(Look.Page.REPORT));
    }

    @Test
    void aCarWithoutThreadSaysWhatToGive() throws Exception {
        Reply reply = Asks.demo("sluice-tourer").wish("shop/on", "2026-12-25").reply("shop");
        assertThat(reply.headlines().get(0)).startsWith("Nobody can say yet");
        assertThat(under(reply, "What is missing").get(0)).contains("pitch");
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
