// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.FinestStep;
import pitchstack.ui.views.coverage.strip.Shares;

/**
 * All that the view shows of one coverage.
 *
 * @param coverage what is reached within the tolerance
 * @param shares the same, prepared for drawing
 * @param summary its figures
 * @param finest how fine the positions lie, over clean or worn teeth; empty where nothing can be set or where it would
 *     take too much to find out
 */
record Charted(Coverage coverage, Shares shares, CoverageSummary summary, Optional<FinestStep> finest) {
}
