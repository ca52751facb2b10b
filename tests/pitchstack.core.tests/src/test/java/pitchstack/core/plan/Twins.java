// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.TreeMap;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.WornRange;

/** Axes and requests that must have the same answer as others, but for what was changed. */
final class Twins {
    private Twins() {
    }

    /** The axis seen from its other side: index n becomes −n, position x becomes −x. */
    static AxisSpec mirrored(AxisSpec a) {
        List<StageSpec> stages = new ArrayList<>();
        for (StageSpec s : a.stages()) {
            RowPair rows = s.rows();
            // The rider covers base teeth [s + n, s + n + r − 1]; counted from the other end, [b − s − r − n, …].
            int start = rows.base().teeth() - rows.start() - rows.rider().teeth();
            stages.add(new StageSpec(s.name(), s.source(), s.nominalPitch(), s.pitch(),
                    new RowPair(mirrored(rows.base()), mirrored(rows.rider()), start, rows.minimumEngaged()), s.cost(),
                    errors(s, -1, -1)));
        }
        Approach approach = switch (a.approach()) {
            case EITHER -> Approach.EITHER;
            case FORWARD -> Approach.BACK;
            case BACK -> Approach.FORWARD;
        };
        AxisSpec full = withBothStops(a);
        return new AxisSpec(a.name(), a.scale(), stages, -a.datum(), negated(full.high()), negated(full.low()),
                a.shiftLimits(), approach, a.tolerance(), a.wantedStep());
    }

    /** The errors of a stage at indices multiplied by a sign, themselves multiplied by a factor. */
    private static IndexErrors errors(StageSpec stage, int sign, long factor) {
        IndexRange range = stage.rows().meeting();
        TreeMap<Integer, Long> errors = new TreeMap<>();
        for (int n = range.first() - 1; n <= range.last() + 1; n++) {
            errors.put(sign * n, factor * stage.errors().at(n));
        }
        return IndexErrors.of(errors);
    }

    private static RowSpec mirrored(RowSpec row) {
        int last = row.teeth() - 1;
        return new RowSpec(row.teeth(), row.worn().stream().map(w -> new WornRange(
                new ToothSpan(last - w.teeth().last(), last - w.teeth().first()), w.wear())).toList());
    }

    static Setting mirrored(Setting setting) {
        return Setting.of(setting.toList().stream().mapToInt(n -> -n).toArray());
    }

    static Directions mirrored(Directions last) {
        return new Directions(last.byStage().stream().map(way -> switch (way) {
            case UNKNOWN -> Direction.UNKNOWN;
            case FORWARD -> Direction.BACK;
            case BACK -> Direction.FORWARD;
        }).toList());
    }

    static PlanRequest mirrored(PlanRequest r) {
        return new PlanRequest(-r.target(), r.tolerance(), mirrored(r.from()), mirrored(r.last()), r.worn(),
                r.alternatives());
    }

    static SequenceRequest mirrored(SequenceRequest r) {
        return new SequenceRequest(r.stops().stream().map(s -> new Stop(s.name(), -s.target(), s.tolerance())).toList(),
                mirrored(r.from()), mirrored(r.last()), r.worn(), r.order(), r.memoryBytes());
    }

    /** On a rotary axis with one stop, what a missing one means. */
    private static AxisSpec withBothStops(AxisSpec a) {
        if (a.scale().turn() == 0 || a.low().isEmpty() && a.high().isEmpty()) {
            return a;
        }
        return new AxisSpec(a.name(), a.scale(), a.stages(), a.datum(), OptionalLong.of(a.low().orElse(0)),
                OptionalLong.of(a.high().orElse(a.scale().turn() - 1)), a.shiftLimits(), a.approach(), a.tolerance(),
                a.wantedStep());
    }

    private static OptionalLong negated(OptionalLong stop) {
        return stop.isPresent() ? OptionalLong.of(-stop.getAsLong()) : stop;
    }

    private static OptionalLong plus(OptionalLong stop, long shift) {
        return stop.isPresent() ? OptionalLong.of(stop.getAsLong() + shift) : stop;
    }

    private static OptionalLong times(OptionalLong stop, long factor) {
        return stop.isPresent() ? OptionalLong.of(stop.getAsLong() * factor) : stop;
    }

    /** The axis with its datum and stops moved along. */
    static AxisSpec shifted(AxisSpec a, long shift) {
        AxisSpec full = withBothStops(a);
        return new AxisSpec(a.name(), a.scale(), a.stages(), a.datum() + shift, plus(full.low(), shift),
                plus(full.high(), shift), a.shiftLimits(), a.approach(), a.tolerance(), a.wantedStep());
    }

    /** A linear axis with every length multiplied. */
    static AxisSpec scaled(AxisSpec a, long factor) {
        List<StageSpec> stages = a.stages().stream().map(s -> new StageSpec(s.name(), s.source(),
                s.nominalPitch() * factor, s.pitch() * factor, s.rows(), s.cost(), errors(s, 1, factor))).toList();
        List<ShiftLimit> limits = a.shiftLimits().stream()
                .map(l -> new ShiftLimit(l.lowest(), l.highest(), l.limit() * factor)).toList();
        return new AxisSpec(a.name(), a.scale(), stages, a.datum() * factor, times(a.low(), factor),
                times(a.high(), factor), limits, a.approach(), a.tolerance(), a.wantedStep());
    }

    static PlanRequest with(PlanRequest r, long target, long tolerance) {
        return new PlanRequest(target, tolerance, r.from(), r.last(), r.worn(), r.alternatives());
    }

    /** The axis with more teeth of one row marked. */
    static AxisSpec marked(AxisSpec a, int stage, boolean base, WornRange mark) {
        List<StageSpec> stages = new ArrayList<>(a.stages());
        StageSpec s = stages.get(stage);
        RowPair rows = s.rows();
        RowPair more = new RowPair(base ? marked(rows.base(), mark) : rows.base(),
                base ? rows.rider() : marked(rows.rider(), mark), rows.start(), rows.minimumEngaged());
        stages.set(stage, s.withRows(more));
        return new AxisSpec(a.name(), a.scale(), stages, a.datum(), a.low(), a.high(), a.shiftLimits(), a.approach(),
                a.tolerance(), a.wantedStep());
    }

    private static RowSpec marked(RowSpec row, WornRange mark) {
        List<WornRange> marks = new ArrayList<>(row.worn());
        marks.add(mark);
        return new RowSpec(row.teeth(), marks);
    }
}
