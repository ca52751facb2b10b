// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import pitchstack.core.plan.Progress;

/**
 * One of several pieces of work of about the same size, as a part of the whole.
 *
 * @param whole who watches the whole
 * @param number which piece, from 0
 * @param pieces how many there are
 */
record PartOf(Progress whole, int number, int pieces) implements Progress {
    /** So finely a piece is told. */
    private static final long PARTS = 1000;

    @Override
    public boolean isCancelled() {
        return whole.isCancelled();
    }

    @Override
    public void done(long part, long of) {
        double share = of <= 0 ? 0 : Math.min(1.0, (double) part / of);
        whole.done(number * PARTS + (long) (share * PARTS), pieces * PARTS);
    }
}
