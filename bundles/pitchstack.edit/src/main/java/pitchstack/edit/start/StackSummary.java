// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Finding;
import pitchstack.core.coverage.Reached;
import pitchstack.core.design.Proof;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.Scale;

/** Says of a starting stack what it reaches and what has to be made. */
public final class StackSummary {
    private final StartingStack stack;
    private final ShopDefaults shop;
    private final AxisSpec spec;
    private final Scale scale;

    /**
     * Sums up a stack.
     *
     * @param shop tells how long a row the printer can print in one piece
     */
    public StackSummary(StartingStack stack, ShopDefaults shop) {
        this.stack = stack;
        this.shop = shop;
        this.spec = AxisAnalysis.of(stack.positioner(), stack.axis()).spec();
        this.scale = spec.scale();
    }

    /** Sentences, the most important first. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        Proof proof = stack.proof();
        String finest = scale.formatSize(proof.finest().spacing());
        long travel = proof.coverage().travel() - (scale.turn() > 0 ? 0 : 1);
        sentences.add(proof.holds()
                ? "Every position of the travel of " + scale.formatWay(travel)
                        + " lies within " + scale.formatSize(proof.finest().tolerance()) + " of one that can be set."
                : String.format(Locale.ROOT, "Only %.2f %% of the travel is reached within half a step; lengthen the rows.",
                        100 * proof.coverage().share(Reached.CLEAN)));
        sentences.add("The finest step everywhere is " + finest + ", and " + scale.formatSize(proof.step()) + " is wanted.");
        if (scale.turn() == 0) {
            IntStream.range(0, spec.stages().size()).mapToObj(this::pieces).flatMap(Optional::stream)
                    .forEach(sentences::add);
        }
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
                + spelled(stack.axis().getStages().get(j).getPitch()) + ": base row of " + row(stage.rows().base().teeth(), stage)
                + ", rider row of " + row(stage.rows().rider().teeth(), stage) + "; it can stand from "
                + signed(indices.first()) + " to " + signed(indices.last()) + " teeth off its zero.";
    }

    /** A pitch as a file has it, with what is short there in full. */
    private static String spelled(String pitch) {
        return pitch.replaceFirst(" CP$", " circular pitch").replaceFirst(" DP$", " diametral pitch");
    }

    /** Into how many pieces the rows of a printed stage fall where they are longer than the printer's bed. */
    private Optional<String> pieces(int j) {
        StageSpec stage = spec.stages().get(j);
        int base = pieces(stage.rows().base().teeth(), stage.nominalPitch());
        int rider = pieces(stage.rows().rider().teeth(), stage.nominalPitch());
        if (stage.source() != Source.PRINTED || base == 1 && rider == 1) {
            return Optional.empty();
        }
        String what = Stream.of(base == 1 ? "" : "the base row of " + base, rider == 1 ? "" : "the rider row of " + rider)
                .filter(part -> !part.isEmpty()).collect(Collectors.joining(" and "));
        return Optional.of(stage.name() + " is too long for a printer's bed of " + shop.bed() + ": it is printed in pieces, "
                + what + ", each a whole number of teeth, whose joints must keep the pitch."
                + (j == 0 ? " A bought rack spares you that; go back and give its pitch." : ""));
    }

    /** Pieces of whole teeth; a row with a tooth longer than the bed has one a tooth. */
    private int pieces(int teeth, long pitch) {
        long fit = Math.max(1, shop.bedLength() / pitch);
        return (int) ((teeth + fit - 1) / fit);
    }

    private String row(int teeth, StageSpec stage) {
        return teeth + " teeth" + (scale.turn() > 0 ? "" : ", " + scale.formatWay(teeth * stage.nominalPitch()));
    }

    private static String signed(int index) {
        return index < 0 ? "−" + -index : String.valueOf(index);
    }
}
