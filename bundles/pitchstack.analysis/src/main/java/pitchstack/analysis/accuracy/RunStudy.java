// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

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
 */
public record RunStudy(RunReading run, RunEvaluation evaluation, AxisFit fit) {
    private static final int PIECES = 3;

    /**
     * A question about a run of a document as it stands now, to be answered on any thread.
     *
     * @param document a copy of the whole document
     * @param axis which axis, from 0
     * @param run which of its runs, from 0
     */
    public record Question(Positioner document, int axis, int run) {
        /** Asks of a run of an axis; the document may change afterwards. */
        public static Question of(Positioner document, Axis axis, int run) {
            return new Question(EcoreUtil.copy(document), document.getAxes().indexOf(axis), run);
        }

        /** Works it out, which takes milliseconds for most runs. */
        public Outcome<RunStudy> answer(Progress progress) {
            Axis of = document.getAxes().get(axis);
            AxisAnalysis analysis = AxisAnalysis.of(document, of);
            RunReading read = RunReader.read(of, analysis.spec(), of.getRuns().get(run));
            progress.done(1, PIECES);
            RunEvaluation evaluation = RunEvaluation.of(read);
            progress.done(2, PIECES);
            AxisFit fit = AxisFit.of(read, analysis.current());
            return progress.isCancelled() ? new Outcome.Cancelled<>() : new Outcome.Done<>(new RunStudy(read, evaluation, fit));
        }

        /**
         * What a fit buys on the targets of the file that can be read; for the largest axes this takes seconds.
         *
         * @param fit one of the run that came off
         * @param withIndexErrors whether errors of single indices are taken over too
         */
        public Outcome<CorrectionGain> gain(AxisFit fit, boolean withIndexErrors, Progress progress) {
            Positioner copy = EcoreUtil.copy(document);
            Axis of = copy.getAxes().get(axis);
            AxisAnalysis before = AxisAnalysis.of(copy, of);
            TargetStops targets = TargetStops.of(before);
            Corrections.apply(of, of.getRuns().get(run), fit, withIndexErrors);
            AxisAnalysis after = AxisAnalysis.of(copy, of);
            if (before.hasErrors() || after.hasErrors()) {
                return new Outcome.Refused<>("Nothing can be planned with these pitches, so they cannot be compared.");
            }
            return CorrectionGain.of(before.spec(), after.spec(), before.current(), before.last(), targets.stops(), progress);
        }
    }
}
