// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.concurrent.CancellationException;
import java.util.function.Supplier;

/** Turns the ways in which work ends inside this package into outcomes. */
final class Attempt {
    private Attempt() { }

    /**
     * Does some work.
     *
     * @param work what to do
     * @param refusal why it is refused where it takes too much
     */
    static <T> Outcome<T> at(Supplier<T> work, Supplier<String> refusal) {
        try {
            return new Outcome.Done<>(work.get());
        } catch (TooMuch e) {
            return new Outcome.Refused<>(refusal.get());
        } catch (CancellationException e) {
            return new Outcome.Cancelled<>();
        }
    }
}
