// SPDX-License-Identifier: EPL-2.0
package org.eclipse.jface.util;

/**
 * Argument checks under the name that GEF 3.2 calls them by; the platform no longer has a class of this name.
 *
 * <p>A class missing from a required bundle is next looked for in GEF itself and its fragments, so it is found here.
 */
public final class Assert {

    private Assert() {
    }

    /**
     * Refuses a missing value.
     *
     * @param value the value that has to be there
     * @throws IllegalArgumentException if {@code value} is null
     */
    public static void isNotNull(Object value) {
        isNotNull(value, "");
    }

    /**
     * Refuses a missing value.
     *
     * @param value the value that has to be there
     * @param message what to say if it is not
     * @throws IllegalArgumentException if {@code value} is null
     */
    public static void isNotNull(Object value, String message) {
        if (value == null) {
            throw new IllegalArgumentException("A value is missing. " + message);
        }
    }

    /**
     * Refuses a condition that does not hold.
     *
     * @param condition what has to hold
     * @return always true
     * @throws IllegalArgumentException if {@code condition} is false
     */
    public static boolean isTrue(boolean condition) {
        return isTrue(condition, "");
    }

    /**
     * Refuses a condition that does not hold.
     *
     * @param condition what has to hold
     * @param message what to say if it does not
     * @return always true
     * @throws IllegalArgumentException if {@code condition} is false
     */
    public static boolean isTrue(boolean condition, String message) {
        if (!condition) {
            throw new IllegalArgumentException("A condition does not hold. " + message);
        }
        return true;
    }
}
