// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.start;

import org.eclipse.core.runtime.IProgressMonitor;
import pitchstack.core.plan.Progress;

/**
 * Work of the core as a dialog watches it.
 *
 * @param monitor of the dialog
 */
record Monitored(IProgressMonitor monitor) implements Progress {
    @Override
    public boolean isCancelled() {
        return monitor.isCanceled();
    }

    /** The parts are of unknown size, so that only the activity is shown. */
    @Override
    public void done(long part, long of) {
        monitor.worked(0);
    }
}
