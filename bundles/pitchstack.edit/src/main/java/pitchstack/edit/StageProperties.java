// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.ArrayList;
import java.util.List;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.Pitch;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Axis;
import pitchstack.model.LastMove;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/** The facts of a stage, typed ones first, then what follows from them. */
final class StageProperties {
    private static final String STAGE = "Stage";
    private static final String TEETH = "Teeth";
    private static final String EFFORT = "Effort";
    private static final String MATERIAL = "Material and fit";
    private static final double LONGEST_SECONDS = 3600;

    private StageProperties() {
    }

    static List<Property> of(Session session, Stage stage) {
        Axis axis = (Axis) stage.eContainer();
        AxisAnalysis analysis = session.analysis(axis);
        int place = axis.getStages().indexOf(stage);
        StageSpec spec = analysis.spec().stages().get(place);
        Scale scale = analysis.spec().scale();
        IndexRange indices = spec.rows().indices();
        Entries entries = new Entries(stage, "“" + stage.getName() + "”");
        List<Property> all = new ArrayList<>(List.of(
                entries.text(Literals.STAGE__NAME, "name", "What this stage is called.", STAGE),
                entries.choice(Literals.STAGE__SOURCE, "source", "Bought, or printed in the shop.", STAGE, StageSource.VALUES),
                entries.quantity(Literals.STAGE__PITCH, "pitch", "Tooth spacing: 5 mm or 0.24 in, a circular pitch as "
                        + "1/4 in CP, a diametral pitch as 24 DP, or module 1"
                        + (scale.turn() > 0 ? "; or 360 per turn." : "."), STAGE, false, typed -> readPitch(typed, scale)),
                Entries.derived("spacing", "spacing", "The pitch as a spacing, with today's correction.", STAGE,
                        scale.format(spec.pitch())),
                index(entries, stage, indices),
                Entries.derived("indices", "index range", "Follows from the two rows and the least engaged teeth.", TEETH,
                        indices.isEmpty() ? "none: the rows never meet" : TrueMinus.in(indices.first() + " to " + indices.last())),
                Entries.derived("engaged", "engaged teeth", "Rider teeth that lie over base teeth now.", TEETH,
                        String.valueOf(spec.rows().engagedBase(stage.getIndex()).count())),
                entries.integer(Literals.STAGE__MINIMUM_ENGAGED, "least engaged teeth", "How many teeth must stay engaged.",
                        TEETH, 1, Properties.MOST_TEETH),
                entries.integer(Literals.STAGE__START, "start tooth",
                        "The base tooth, counted from 0, under the rider's first tooth at index 0.", TEETH,
                        -Properties.MOST_TEETH, Properties.MOST_TEETH),
                entries.decimal(Literals.STAGE__RELEASE_SECONDS, "release (s)", "Seconds to release and clamp this stage.",
                        EFFORT, 0, LONGEST_SECONDS),
                entries.decimal(Literals.STAGE__PER_TOOTH_SECONDS, "per tooth (s)", "Seconds for each tooth counted.", EFFORT, 0,
                        LONGEST_SECONDS),
                entries.decimal(Literals.STAGE__REVERSAL_SECONDS, "turning round (s)",
                        "Seconds each time this stage starts to move against its last direction.", EFFORT, 0, LONGEST_SECONDS),
                entries.choice(Literals.STAGE__LAST_MOVE, "last move", "Which way this stage moved last; none where that is not "
                        + "known.", EFFORT, LastMove.VALUES),
                entries.text(Literals.STAGE__MATERIAL, "material", "What the teeth are made of.", MATERIAL),
                entries.decimal(Literals.STAGE__EXPANSION_PPM_PER_K, "expansion (ppm/K)",
                        "Thermal expansion; steel is near 11.5, PLA near 68. 0 leaves temperature out.", MATERIAL, -1000, 1000),
                entries.quantity(Literals.STAGE__SCATTER, "tooth scatter (1 σ)", "How far single teeth stand off; an angle on a rotary axis.",
                        MATERIAL, true, Properties.above(HoldProperties.scale(stage, scale), "A tooth scatter", -1)),
                Entries.derived("indexErrors", "index errors", "Measured errors of single indices, kept in the file.",
                        MATERIAL, indexErrors(stage, spec, scale))));
        all.addAll(HoldProperties.of(stage, scale));
        all.addAll(ToothFormProperties.of(stage));
        return all;
    }

    private static String indexErrors(Stage stage, StageSpec spec, Scale scale) {
        int count = stage.getIndexErrors().size();
        return count == 0 ? "none" : count + ", at most " + scale.formatSize(spec.errors().largest());
    }

    private static Property index(Entries entries, Stage stage, IndexRange indices) {
        return indices.isEmpty()
                ? Entries.derived("index", "index", "Teeth by which the stage stands off its zero.", STAGE, "none")
                : entries.integer(Literals.STAGE__INDEX, "index", "Teeth by which the stage stands off its zero.", STAGE,
                        indices.first(), indices.last(), index -> new MoveStage(stage, index));
    }

    private static void readPitch(String typed, Scale scale) {
        if (Pitch.parse(typed).units(scale) <= 0) {
            throw new QuantityException("A pitch of " + typed.strip() + " is not allowed; it must be above 0.");
        }
    }
}
