// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/** Takes the runs of places, one by one or lap by lap, those that begin lowest first. */
interface LapSink {
    /** One run. */
    void run(long first, long last);

    /** One lap that starts at a place. */
    default void lap(long base, Spans residues) {
        for (int i = 0; i < residues.size(); i++) {
            run(base + residues.first(i), base + residues.last(i));
        }
    }

    /** Laps that all look alike, with every group in them; the first starts at a place. */
    default void alike(long base, long laps, long pitch, Spans residues) {
        for (long i = 0; i < laps; i++) {
            lap(base + i * pitch, residues);
        }
    }
}
