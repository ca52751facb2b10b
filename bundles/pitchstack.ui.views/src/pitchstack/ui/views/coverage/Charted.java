// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.FinestStep;
import pitchstack.core.coverage.Reach;
import pitchstack.ui.views.coverage.strip.Shares;

/**
 * All that the view shows of one coverage.
 *
 * @param reach where it comes from, to ask for more
 * @param coverage what is reached within the tolerance
 * @param shares the same, prepared for drawing
 * @param summary its figures
 * @param finest how fine the positions lie, over clean or worn teeth; empty where nothing can be set or where it would
 *     take too much to find out
 * @param supposed what would be reached with the supposed marks; empty where none is supposed
 * @param cost what the selected mark costs; empty where none is selected
 */
record Charted(Reach reach, Coverage coverage, Shares shares, CoverageSummary summary, Optional<FinestStep> finest,
        Optional<Compared> supposed, Optional<Compared> cost) {
    /**
     * A comparison with other marks.
     *
     * @param change what changes
     * @param shares prepared for drawing: what would be reached, with what is lost told apart; or of a mark, where it
     *     makes the coverage worse
     * @param summary the figures of the other coverage
     */
    record Compared(CoverageChange change, Shares shares, CoverageSummary summary) { }
}
