// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy;

/** Who watches a long piece of work, and can end it. */
@FunctionalInterface
public interface Watch {
    /** Nobody watches, and nobody cancels. */
    Watch NONE = (done, of) -> true;

    /**
     * Tells how far the work is. Called often, so it must be quick.
     *
     * @param done how much is done, from 0 to {@code of}
     * @param of how much there is
     * @return whether to go on; without it the work ends early and has no result
     */
    boolean goOn(long done, long of);
}
