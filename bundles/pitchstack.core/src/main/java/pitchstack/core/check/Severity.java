// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

/** How bad a finding is. */
public enum Severity {
    /** Nothing can be planned before it is mended. */
    ERROR,
    /** It can be planned, but the device will not do what is wanted of it. */
    WARNING,
    /** Worth knowing. */
    NOTE
}
