// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Unsound.Cause;

/** No index leaves enough teeth engaged. */
public final class RowsNeverMeet implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        return Unplannable.findings(subject, "rows-never-meet", Cause.ROWS_NEVER_MEET);
    }
}
