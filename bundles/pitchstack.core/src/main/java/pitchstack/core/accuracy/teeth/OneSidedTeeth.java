// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Teeth as springs that push and never pull: Σ kᵢ·max(0, x − eᵢ) = F. The left side rises with x, so there is one answer,
 * and with the offsets sorted it is closed: with the lowest m teeth bearing x = (F + Σ kᵢeᵢ)/Σ kᵢ, and the right m is the
 * first whose x reaches no further than the next tooth.
 */
public final class OneSidedTeeth {
    private final double[] offsetsM;
    private final double[] stiffnessesNPerM;

    /**
     * Teeth of one stiffness.
     *
     * @param offsetsM where each comes to bear, at least one
     * @param stiffnessNPerM of each, above 0
     */
    public OneSidedTeeth(double[] offsetsM, double stiffnessNPerM) {
        this(offsetsM, IntStream.range(0, offsetsM.length).mapToDouble(i -> stiffnessNPerM).toArray());
    }

    /**
     * Teeth of different stiffness.
     *
     * @param offsetsM where each comes to bear, at least one
     * @param stiffnessesNPerM of each, above 0, in the same order
     */
    public OneSidedTeeth(double[] offsetsM, double[] stiffnessesNPerM) {
        if (offsetsM.length == 0 || offsetsM.length != stiffnessesNPerM.length
                || !Arrays.stream(stiffnessesNPerM).allMatch(k -> k > 0)) {
            throw new IllegalArgumentException("Each tooth has an offset and a stiffness above 0");
        }
        int[] order = IntStream.range(0, offsetsM.length).boxed().sorted(Comparator.comparingDouble(i -> offsetsM[i]))
                .mapToInt(i -> i).toArray();
        this.offsetsM = Arrays.stream(order).mapToDouble(i -> offsetsM[i]).toArray();
        this.stiffnessesNPerM = Arrays.stream(order).mapToDouble(i -> stiffnessesNPerM[i]).toArray();
    }

    /**
     * Where they hold a force.
     *
     * @param forceN at least 0; at 0 the lowest tooth is only just touched
     */
    public Seat seat(double forceN) {
        if (!(forceN >= 0)) {
            throw new IllegalArgumentException("Teeth only push: the force is at least 0, not " + forceN);
        }
        double stiffness = 0;
        double sum = forceN;
        for (int m = 0; m < offsetsM.length; m++) {
            stiffness += stiffnessesNPerM[m];
            sum += stiffnessesNPerM[m] * offsetsM[m];
            double x = sum / stiffness;
            if (m + 1 == offsetsM.length || x <= offsetsM[m + 1]) {
                return new Seat(x, m + 1, stiffness);
            }
        }
        throw new IllegalStateException("No seat for " + forceN + " N");
    }

    /** The force from which on every tooth bears: Σ kᵢ·(e_max − eᵢ). */
    public double fullBearingN() {
        double highest = offsetsM[offsetsM.length - 1];
        return IntStream.range(0, offsetsM.length).mapToDouble(i -> stiffnessesNPerM[i] * (highest - offsetsM[i])).sum();
    }

    /**
     * How many of some teeth of one stiffness bear, without sorting them or making an object: all are tried, those that the
     * row would not reach are dropped, and so on until none is (Michelot 1986). Each dropping lowers the row, so one that is
     * dropped never comes back.
     *
     * @param offsetsM where each comes to bear; those that bear are moved to the front
     * @param forceOverStiffnessM force over the stiffness of a tooth, above 0
     */
    static int bearing(double[] offsetsM, double forceOverStiffnessM) {
        int count = offsetsM.length;
        while (true) {
            double x = meanM(offsetsM, count, forceOverStiffnessM);
            int kept = 0;
            for (int i = 0; i < count; i++) {
                double offset = offsetsM[i];
                if (offset < x) {
                    offsetsM[i] = offsetsM[kept];
                    offsetsM[kept++] = offset;
                }
            }
            // None is left where the force is so small that the row stands on equal teeth to the last digit.
            if (kept == count || kept == 0) {
                return count;
            }
            count = kept;
        }
    }

    /** The position where the first so many bear. */
    static double meanM(double[] offsetsM, int count, double forceOverStiffnessM) {
        double sum = forceOverStiffnessM;
        for (int i = 0; i < count; i++) {
            sum += offsetsM[i];
        }
        return sum / count;
    }
}
