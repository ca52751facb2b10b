// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

/** What came of fitting a run. */
public sealed interface FitOutcome permits PitchFit, FitOutcome.Undetermined, FitOutcome.TooFew {
    /**
     * The run cannot tell all stages.
     *
     * @param what which it cannot
     */
    record Undetermined(Identifiability what) implements FitOutcome { }

    /**
     * The run has no reading to spare, so that nothing says how good the fit is.
     *
     * @param readings how many it has
     * @param needed the fewest that do
     */
    record TooFew(int readings, int needed) implements FitOutcome { }
}
