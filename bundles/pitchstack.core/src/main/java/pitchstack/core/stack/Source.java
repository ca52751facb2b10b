// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/** Where the teeth of a stage come from. */
public enum Source {
    /** Bought, such as a steel rack. */
    BOUGHT,
    /** Printed in the shop. */
    PRINTED
}
