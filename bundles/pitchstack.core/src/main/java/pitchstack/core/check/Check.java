// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;

/** One check. */
@FunctionalInterface
public interface Check {
    /**
     * Looks at one axis.
     *
     * @param subject the axis and what is known of the shop
     * @return what was found, in stage order; empty where all is well. A check that needs sound numbers returns
     *     nothing where another check reports that they are not.
     */
    List<Finding> apply(Subject subject);
}
