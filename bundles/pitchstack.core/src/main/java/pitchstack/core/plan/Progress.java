// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/** Where a long piece of work reports how far it is, and asks whether it is still wanted. */
public interface Progress {
    /** Nobody watches, and nobody cancels. */
    Progress NONE = new Progress() {
        @Override
        public boolean isCancelled() {
            return false;
        }

        @Override
        public void done(long part, long of) {
            // Nobody watches.
        }
    };

    /** Whether the work is to end early, without a result. Asked often, so it must be quick. */
    boolean isCancelled();

    /**
     * Tells how far the work is.
     *
     * @param part how much is done, from 0 to {@code of}
     * @param of how much there is, in the work's own units
     */
    void done(long part, long of);
}
