// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.function.Function;

/**
 * What came of a piece of work that may be too large, or be cancelled.
 *
 * @param <T> what it is to give
 */
public sealed interface Outcome<T> {
    /**
     * It is done.
     *
     * @param value what it gave
     */
    record Done<T>(T value) implements Outcome<T> { }

    /**
     * It would take more memory than it may.
     *
     * @param why one sentence that says what to change
     */
    record Refused<T>(String why) implements Outcome<T> { }

    /** It was cancelled. */
    record Cancelled<T>() implements Outcome<T> { }

    /** Goes on with what it gave, or stays refused or cancelled. */
    default <U> Outcome<U> then(Function<T, Outcome<U>> next) {
        if (this instanceof Done<T> done) {
            return next.apply(done.value);
        }
        return this instanceof Refused<T> refused ? new Refused<>(refused.why) : new Cancelled<>();
    }

    /**
     * What it gave, for callers that know it was done.
     *
     * @throws IllegalStateException if it was not
     */
    default T get() {
        if (this instanceof Done<T> done) {
            return done.value;
        }
        throw new IllegalStateException(toString());
    }
}
