// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import pitchstack.core.plan.Progress;

/** How far the writing of a plate is: every solid of it is sent twice. */
final class Passes {
    private static final int A_SOLID = 2;
    /** Into how many parts a pass is divided when it is told of. */
    private static final int PARTS = 1000;

    private final Progress progress;
    private final long whole;
    private int pass;

    Passes(int solids, Progress progress) {
        this.progress = progress;
        whole = (long) A_SOLID * PARTS * solids;
    }

    /**
     * Tells how far it is, and whether the rest is wanted.
     *
     * @param share how much of the solid is sent in this pass, from 0 to 1
     */
    boolean goesOn(double share) {
        progress.done((long) ((pass + share) * PARTS), whole);
        return !progress.isCancelled();
    }

    /** Ends a pass, and says whether the next is wanted. */
    boolean next() {
        pass++;
        return goesOn(0);
    }
}
