// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import pitchstack.model.Stage;

/**
 * What a new stage costs a person to move, in seconds; each finite and at least 0.
 *
 * @param release to release and clamp it again
 * @param perTooth for each tooth counted
 * @param reversal to turn round
 */
public record StageCosts(double release, double perTooth, double reversal) {
    /** As the file format assumes where it is told nothing. */
    public static final StageCosts USUAL = new StageCosts(4, 1, 0);

    /** Refuses what cannot be a cost. */
    public StageCosts {
        for (double seconds : new double[] {release, perTooth, reversal}) {
            if (!(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("A cost of " + seconds + " seconds");
            }
        }
    }

    /** Gives a stage that is not part of a document yet these costs. */
    public void giveTo(Stage stage) {
        stage.setReleaseSeconds(release);
        stage.setPerToothSeconds(perTooth);
        stage.setReversalSeconds(reversal);
    }
}
