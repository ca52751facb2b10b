// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/** Takes the runs of places lap by lap, the lowest lap first. */
interface LapSink {
    /** One lap that starts at a place. */
    void lap(long base, Spans residues);

    /** Laps that all look alike, with every group in them; the first starts at a place. */
    default void alike(long base, long laps, long pitch, Spans residues) {
        for (long i = 0; i < laps; i++) {
            lap(base + i * pitch, residues);
        }
    }
}
