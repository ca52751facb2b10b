// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** What the figures mean, one click away from where they stand. */
final class Meanings {
    private static final String PITCHES = """
            A straight line is laid through all readings at once: reading = datum + the sum over all stages of index × drawn \
            pitch × (1 + correction), with half the reversal added from below and taken off from above. It is found by least \
            squares, readings weighted by their uncertainty, lengths brought to 20 °C.

            ± (95 %): were the whole run repeated many times, 95 of 100 such intervals would hold the true correction. It holds \
            the scatter of the readings and the scale of the instrument, which more readings do not make better.

            ppm: parts in a million, micrometres in a metre. 800 ppm is 0.08 %.

            ! marks a reading that is farther off than chance explains in one of twenty runs (Bonferroni).

            Errors of single teeth: what the fit leaves, on average, of readings at one index while no other stage moved.

            A computed interval is no measurement of the finished device: check a new setting with an independent gauge.""";
    private static final String REPEATS = """
            Figures after ISO 230-2:2014; the definitions are those in common use, the text of the standard was not at hand. \
            x̄ is the mean deviation of the visits of a position from one side, s their standard deviation.

            Reversal B: the largest difference between x̄ from below and x̄ from above at any position; mean reversal B̄ is the \
            mean of these differences, with its sign.

            Repeatability R: 4 s from one side at its worst position; from both sides 2 s↑ + 2 s↓ + |B|, or either 4 s if larger.

            Systematic error E: the largest x̄ less the smallest. Mean error M: the same of the means of both sides.

            Accuracy A: the largest x̄ + 2 s less the smallest x̄ − 2 s. It holds everything above.

            The standard asks for five visits from each side. With fewer the figures are rougher, not smaller.

            Back at the same setting: with 95 % probability the next return lies within ± of the mean of those before.""";

    private Meanings() {
    }

    static void ofPitches(Shell shell) {
        MessageDialog.openInformation(shell, "How the Pitches Are Found", PITCHES);
    }

    static void ofRepeats(Shell shell) {
        MessageDialog.openInformation(shell, "What the Figures Mean", REPEATS);
    }
}
