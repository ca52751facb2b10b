// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Finding;
import pitchstack.core.coverage.Reached;
import pitchstack.core.design.Proof;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.Scale;

/** Says of a starting stack what it reaches and what has to be made. */
public final class StackSummary {
    private final StartingStack stack;
    private final AxisSpec spec;
    private final Scale scale;

    /** Sums up a stack. */
    public StackSummary(StartingStack stack) {
        this.stack = stack;
        this.spec = AxisAnalysis.of(stack.positioner(), stack.axis()).spec();
        this.scale = spec.scale();
    }

    /** Sentences, the most important first. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        Proof proof = stack.proof();
        String finest = scale.formatSize(proof.finest().spacing());
        sentences.add(proof.holds()
                ? "Every position of the travel of " + scale.formatSize(proof.coverage().travel() - (scale.turn() > 0 ? 0 : 1))
                        + " lies within " + scale.formatSize(proof.finest().tolerance()) + " of one that can be set."
                : String.format(Locale.ROOT, "Only %.2f %% of the travel is reached within half a step; lengthen the rows.",
                        100 * proof.coverage().share(Reached.CLEAN)));
        sentences.add("The finest step everywhere is " + finest + ", and " + scale.formatSize(proof.step()) + " is wanted.");
        for (int j = 0; j < spec.stages().size(); j++) {
            sentences.add(stage(j));
        }
        for (Finding finding : stack.findings()) {
            sentences.add(finding.sentence());
        }
        return sentences;
    }

    private String stage(int j) {
        StageSpec stage = spec.stages().get(j);
        IndexRange indices = stage.rows().indices();
        return stage.name() + ", " + stack.axis().getStages().get(j).getSource().getLiteral() + ", "
                + stack.axis().getStages().get(j).getPitch() + ": base row of " + row(stage.rows().base().teeth(), stage)
                + ", rider row of " + row(stage.rows().rider().teeth(), stage) + "; index " + signed(indices.first()) + " to "
                + signed(indices.last()) + ".";
    }

    private String row(int teeth, StageSpec stage) {
        return teeth + " teeth" + (scale.turn() > 0 ? "" : ", " + scale.formatSize(teeth * stage.nominalPitch()));
    }

    private static String signed(int index) {
        return index < 0 ? "−" + -index : String.valueOf(index);
    }
}
