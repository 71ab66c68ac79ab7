package evenhand.linkage;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The last answers to a question that costs something: who varies springs, bars, tyres or one link of many asks the same of the
 * other axle again and again. An answer must be immutable and follow from what is asked alone, so that it does not matter
 * whether it is remembered. May be asked by several threads at once.
 *
 * @param <A> what is asked
 * @param <B> the answer
 */
public final class Remembered<A, B> {
    /** So many are kept: more than a doubt asks of one set-up before it comes to the next. */
    private static final int MOST = 256;

    private final Map<A, B> known = Collections.synchronizedMap(new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<A, B> eldest) {
            return size() > MOST;
        }
    });

    /** The answer that is known, or a new one. */
    public B of(A asked, Supplier<B> answer) {
        B before = known.get(asked);
        if (before != null) {
            return before;
        }
        B made = answer.get();
        known.put(asked, made);
        return made;
    }
}
