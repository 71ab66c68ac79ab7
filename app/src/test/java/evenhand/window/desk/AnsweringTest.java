package evenhand.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import evenhand.answers.Progress;
import evenhand.scenario.Setup;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class AnsweringTest {
    /** A question with a defect, in its answer or in what to do next. */
    private record Broken(String key, boolean inAnswer) implements Question {
        @Override
        public String words() {
            return "What breaks?";
        }

        @Override
        public List<String> adjustments(Setup active) {
            return List.of();
        }

        @Override
        public Reply answer(Asked asked, Progress progress) {
            if (inAnswer) {
                throw new IllegalStateException("the answer is broken");
            }
            return Reply.only("All is well.");
        }

        @Override
        public Afterthought after(Asked asked, Progress progress) {
            throw new IllegalStateException("what to do next is broken");
        }
    }

    @Test
    void aDefectOfOneQuestionIsSaidAndTheNextIsAnswered() throws Exception {
        BlockingQueue<Act> came = new LinkedBlockingQueue<>();
        List<Question> questions = List.of(new Broken("answer", true), new Broken("next", false));
        Work work = Desks.demo("harbour-saloon").work();
        try (Answering answering = new Answering(questions, Runnable::run)) {
            answering.deliverTo(came::add);
            for (int i = 0; i < 2; i++) {
                answering.ask(Desks.asking(work, "answer"));
                assertThat(next(came, LookAct.ReplyCame.class).reply().headlines())
                        .singleElement()
                        .asString()
                        .contains("defect", "the answer is broken");
                answering.ask(Desks.asking(work, "next"));
                assertThat(next(came, LookAct.ReplyCame.class).reply().headlines())
                        .containsExactly("All is well.");
                assertThat(next(came, LookAct.AfterthoughtCame.class).after().next())
                        .singleElement()
                        .asString()
                        .contains("defect", "what to do next is broken");
            }
        }
    }

    /** The demo car's rear axle has no aligning torque steer; every answer says so below. */
    @Test
    void everyAnswerListsWhatWasNotGiven() throws Exception {
        BlockingQueue<Act> came = new LinkedBlockingQueue<>();
        Work work = Desks.demo("harbour-saloon").work();
        try (Answering answering = new Answering(List.of(new Broken("next", false)), Runnable::run)) {
            answering.deliverTo(came::add);
            answering.ask(Desks.asking(work, "next"));
            assertThat(next(came, LookAct.ReplyCame.class).reply().more())
                    .singleElement()
                    .satisfies(paragraph -> {
                        assertThat(paragraph.heading()).isEqualTo("Not given, taken as none");
                        assertThat(paragraph.sentences())
                                .containsExactly("aligning torque does not steer the rear axle.");
                    });
        }
    }

    private static <A extends Act> A next(BlockingQueue<Act> came, Class<A> kind) throws InterruptedException {
        while (true) {
            Act act = came.poll(60, TimeUnit.SECONDS);
            assertThat(act).isNotNull();
            if (kind.isInstance(act)) {
                return kind.cast(act);
            }
        }
    }
}
