package evenhand.window.desk;

import evenhand.words.InPrint;
import java.util.List;
import java.util.Optional;

/**
 * What may follow a reply a moment later, when the hands are still: it takes longer to work out.
 *
 * @param verdict the reply's own, with how sure it is
 * @param because what it comes from, largest first
 * @param next what may be done now
 */
public record Afterthought(Optional<Verdict> verdict, List<String> because, List<Reply.Next> next) {
    public static final Afterthought NONE = new Afterthought(Optional.empty(), List.of(), List.of());

    public Afterthought {
        because = InPrint.sentences(because);
        next = List.copyOf(next);
    }

    public static Afterthought of(List<Reply.Next> next) {
        return new Afterthought(Optional.empty(), List.of(), next);
    }
}
