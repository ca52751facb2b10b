// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/** Sums that stop at the ends of the {@code long} range instead of wrapping. */
final class Saturated {
    private Saturated() { }

    static long add(long a, long b) {
        long sum = a + b;
        boolean wrapped = ((a ^ sum) & (b ^ sum)) < 0;
        return wrapped ? (a < 0 ? Long.MIN_VALUE : Long.MAX_VALUE) : sum;
    }

    static long subtract(long a, long b) {
        long difference = a - b;
        boolean wrapped = ((a ^ b) & (a ^ difference)) < 0;
        return wrapped ? (a < 0 ? Long.MIN_VALUE : Long.MAX_VALUE) : difference;
    }
}
