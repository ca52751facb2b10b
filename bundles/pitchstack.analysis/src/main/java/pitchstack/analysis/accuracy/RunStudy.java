// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.TargetStops;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.plan.Progress;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;

/**
 * All that a run says of its axis.
 *
 * @param run in numbers
 * @param evaluation how it repeats
 * @param fit the pitches
 * @param gain what they buy on the targets of the file, where there is a fit and a target that can be read
 */
public record RunStudy(RunReading run, RunEvaluation evaluation, AxisFit fit, Optional<CorrectionGain> gain) {
    private static final int PIECES = 4;

    /**
     * A question about a run of a document as it stands now, to be answered on any thread.
     *
     * @param document a copy of the whole document
     * @param axis which axis, from 0
     * @param run which of its runs, from 0
     * @param withIndexErrors whether what it buys is asked with the errors of single indices taken over
     */
    public record Question(Positioner document, int axis, int run, boolean withIndexErrors) {
        /** Asks of a run of an axis; the document may change afterwards. */
        public static Question of(Positioner document, Axis axis, int run, boolean withIndexErrors) {
            return new Question(EcoreUtil.copy(document), document.getAxes().indexOf(axis), run, withIndexErrors);
        }

        /** Works it out: milliseconds for most runs; planning the targets of the largest axes takes seconds. */
        public Outcome<RunStudy> answer(Progress progress) {
            Axis of = document.getAxes().get(axis);
            AxisAnalysis analysis = AxisAnalysis.of(document, of);
            RunReading read = RunReader.read(of, analysis.spec(), of.getRuns().get(run));
            progress.done(1, PIECES);
            RunEvaluation evaluation = RunEvaluation.of(read);
            AxisFit fit = AxisFit.of(read, analysis.current());
            progress.done(2, PIECES);
            if (progress.isCancelled()) {
                return new Outcome.Cancelled<>();
            }
            TargetStops targets = TargetStops.of(analysis);
            if (fit.fit().isEmpty() || targets.stops().isEmpty() || analysis.hasErrors()) {
                return new Outcome.Done<>(new RunStudy(read, evaluation, fit, Optional.empty()));
            }
            Corrections.apply(of, of.getRuns().get(run), fit, withIndexErrors);
            AxisAnalysis corrected = AxisAnalysis.of(document, of);
            if (corrected.hasErrors()) {
                return new Outcome.Done<>(new RunStudy(read, evaluation, fit, Optional.empty()));
            }
            return CorrectionGain.of(analysis.spec(), corrected.spec(), analysis.current(), analysis.last(), targets.stops(),
                    progress).then(gain -> new Outcome.Done<>(new RunStudy(read, evaluation, fit, Optional.of(gain))));
        }
    }
}
