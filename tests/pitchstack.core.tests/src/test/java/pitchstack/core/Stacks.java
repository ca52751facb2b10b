// SPDX-License-Identifier: EPL-2.0
package pitchstack.core;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Scale;

/** Stacks for tests, built up by copies with one thing changed. */
public final class Stacks {
    /** Femtometres. */
    public static final long MM = 1_000_000_000_000L;
    /** Femtometres. */
    public static final long UM = MM / 1000;
    /** Millimetres. */
    public static final Scale LINEAR = new LinearScale(LengthUnit.MM);

    private Stacks() { }

    /** A printed stage whose index range is given, by way of a rider of one tooth. */
    public static StageSpec stage(String name, long pitch, int first, int last, EffortCost cost) {
        RowPair rows = new RowPair(row(last - first + 1), row(1), -first, 1);
        return new StageSpec(name, Source.PRINTED, pitch, pitch, rows, cost);
    }

    /** As above, where only the teeth are counted, 1 ms each. */
    public static StageSpec stage(String name, long pitch, int first, int last) {
        return stage(name, pitch, first, last, new EffortCost(0, 1));
    }

    /** A row with marks. */
    public static RowSpec row(int teeth, WornRange... marks) {
        return new RowSpec(teeth, List.of(marks));
    }

    /** A mark. */
    public static WornRange mark(int first, int last, Wear wear) {
        return new WornRange(new ToothSpan(first, last), wear);
    }

    /** A linear axis from 0, without stops. */
    public static AxisSpec axis(StageSpec... stages) {
        return axis(LINEAR, stages);
    }

    /** An axis from 0, without stops. */
    public static AxisSpec axis(Scale scale, StageSpec... stages) {
        return new AxisSpec("axis", scale, Arrays.asList(stages), 0, OptionalLong.empty(), OptionalLong.empty(),
                List.of(), 0, OptionalLong.empty());
    }

    /** With other rows. */
    public static StageSpec with(StageSpec s, RowPair rows) {
        return new StageSpec(s.name(), s.source(), s.nominalPitch(), s.pitch(), rows, s.cost());
    }

    /** With another cost. */
    public static StageSpec with(StageSpec s, EffortCost cost) {
        return new StageSpec(s.name(), s.source(), s.nominalPitch(), s.pitch(), s.rows(), cost);
    }

    /** With another pitch. */
    public static StageSpec withPitch(StageSpec s, long pitch) {
        return new StageSpec(s.name(), s.source(), pitch, pitch, s.rows(), s.cost());
    }

    /** With another datum. */
    public static AxisSpec withDatum(AxisSpec a, long datum) {
        return new AxisSpec(a.name(), a.scale(), a.stages(), datum, a.low(), a.high(), a.shiftLimits(), a.approach(),
                a.tolerance(),
                a.wantedStep());
    }

    /** With stops; null for none. */
    public static AxisSpec withStops(AxisSpec a, Long low, Long high) {
        return new AxisSpec(a.name(), a.scale(), a.stages(), a.datum(),
                low == null ? OptionalLong.empty() : OptionalLong.of(low),
                high == null ? OptionalLong.empty() : OptionalLong.of(high), a.shiftLimits(), a.approach(),
                a.tolerance(),
                a.wantedStep());
    }

    /** With shift limits. */
    public static AxisSpec withLimits(AxisSpec a, ShiftLimit... limits) {
        return new AxisSpec(a.name(), a.scale(), a.stages(), a.datum(), a.low(), a.high(), List.of(limits), a.approach(),
                a.tolerance(), a.wantedStep());
    }

    /** With a tolerance and a wanted step. */
    public static AxisSpec withSteps(AxisSpec a, long tolerance, long wantedStep) {
        return new AxisSpec(a.name(), a.scale(), a.stages(), a.datum(), a.low(), a.high(), a.shiftLimits(), a.approach(), tolerance,
                OptionalLong.of(wantedStep));
    }

    /** With one stage replaced. */
    public static AxisSpec withStage(AxisSpec a, int j, StageSpec stage) {
        StageSpec[] stages = a.stages().toArray(StageSpec[]::new);
        stages[j] = stage;
        return new AxisSpec(a.name(), a.scale(), List.of(stages), a.datum(), a.low(), a.high(), a.shiftLimits(), a.approach(),
                a.tolerance(), a.wantedStep());
    }
}
