// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/** What is kept of an offset beside its size, and how it goes on when stages are put together. */
enum Tally {
    /** In how many ways it comes about. */
    WAYS {
        @Override
        long either(long one, long two) {
            return one + two;
        }

        @Override
        long both(long one, long two) {
            return one * two;
        }
    },
    /** The least effort of moving to it, in milliseconds. */
    EFFORT {
        @Override
        long either(long one, long two) {
            return Math.min(one, two);
        }

        @Override
        long both(long one, long two) {
            return one + two;
        }
    };

    /** Where an offset comes about in the one way or the other. */
    abstract long either(long one, long two);

    /** Where an offset is the sum of two. */
    abstract long both(long one, long two);
}
