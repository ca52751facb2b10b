// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Unsound.Cause;

/** A measured error of half a pitch or more is a miscount. */
public final class IndexErrorTooLarge implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        return Unplannable.findings(subject, "index-error-too-large", Cause.INDEX_ERROR_TOO_LARGE);
    }
}
