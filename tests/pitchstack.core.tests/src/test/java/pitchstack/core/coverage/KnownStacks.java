// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;

/** Stacks of known shape, and changes of stacks whose effect is known. */
final class KnownStacks {
    static final LinearScale MM = new LinearScale(LengthUnit.MM);

    private KnownStacks() { }

    static long mm(String number) {
        return MM.parse(number + " mm");
    }

    /** A stage of indices from {@code first} on, as many as named, with all rider teeth always engaged. */
    static StageSpec stage(long pitch, int first, int positions, int riderTeeth) {
        RowPair rows = new RowPair(new RowSpec(positions + riderTeeth - 1, List.of()),
                new RowSpec(riderTeeth, List.of()), -first, riderTeeth);
        return new StageSpec("", Source.PRINTED, pitch, pitch, rows, new EffortCost(0, 0));
    }

    static AxisSpec axis(List<StageSpec> stages, OptionalLong low, OptionalLong high, List<ShiftLimit> limits) {
        return new AxisSpec("", MM, stages, 0, low, high, limits, 0, OptionalLong.empty());
    }

    /**
     * Problem A: a rack of 2.54 mm with 1000 positions, and a pair of 5 and 4.9 mm with 20 positions each, −10 to 9,
     * whose upper stage counts backwards, tied to a net shift of 15 mm.
     */
    static AxisSpec problemA() {
        return axis(List.of(stage(mm("2.54"), 0, 1000, 20), stage(mm("5"), -10, 20, 10), stage(mm("4.9"), -9, 20, 10)),
                OptionalLong.empty(), OptionalLong.empty(), List.of(new ShiftLimit(1, 2, mm("15"))));
    }

    /** Two rings of 36 and 10 teeth that may both go once round. */
    static AxisSpec wholeTurn() {
        long turn = RotaryScale.ARC_SECONDS;
        return new AxisSpec("", new RotaryScale(turn), List.of(stage(turn / 36, 0, 36, 1), stage(turn / 10, 0, 10, 1)), 0,
                OptionalLong.empty(), OptionalLong.empty(), List.of(), 0, OptionalLong.empty());
    }

    /** The same axis seen from its other end: a setting's indices and its position change sign. */
    static AxisSpec mirrored(AxisSpec axis) {
        AxisSpec mirrored = axis;
        for (int j = 0; j < axis.stages().size(); j++) {
            StageSpec spec = axis.stages().get(j);
            RowPair rows = spec.rows();
            mirrored = mirrored.withStage(j, spec.withRows(new RowPair(mirrored(rows.base()), mirrored(rows.rider()),
                    rows.base().teeth() - rows.rider().teeth() - rows.start(), rows.minimumEngaged()))
                    .withErrors(errors(spec, -1, -1)));
        }
        return moved(mirrored, -axis.datum(), negative(axis.high()), negative(axis.low()));
    }

    /** The errors of a stage with every index as many times as large, and every error too. */
    private static IndexErrors errors(StageSpec spec, int indexTimes, long times) {
        SortedMap<Integer, Long> errors = new TreeMap<>();
        IndexRange meeting = spec.rows().meeting();
        for (int n = meeting.first(); n <= meeting.last(); n++) {
            errors.put(indexTimes * n, times * spec.errors().at(n));
        }
        return IndexErrors.of(errors);
    }

    private static OptionalLong negative(OptionalLong stop) {
        return stop.isPresent() ? OptionalLong.of(-stop.getAsLong()) : stop;
    }

    private static RowSpec mirrored(RowSpec row) {
        List<WornRange> marks = new ArrayList<>();
        for (WornRange mark : row.worn()) {
            int last = row.teeth() - 1;
            ToothSpan teeth = mark.teeth();
            marks.add(new WornRange(new ToothSpan(last - teeth.last(), last - teeth.first()), mark.wear()));
        }
        Collections.reverse(marks);
        return new RowSpec(row.teeth(), marks);
    }

    static AxisSpec moved(AxisSpec axis, long datum, OptionalLong low, OptionalLong high) {
        return new AxisSpec(axis.name(), axis.scale(), axis.stages(), datum, low, high, axis.shiftLimits(),
                axis.tolerance(), axis.wantedStep());
    }

    /** The same axis with every length as many times as long. */
    static AxisSpec scaled(AxisSpec axis, long times) {
        List<StageSpec> stages = axis.stages().stream().map(s -> new StageSpec(s.name(), s.source(),
                s.nominalPitch() * times, s.pitch() * times, s.rows(), s.cost(), errors(s, 1, times))).toList();
        List<ShiftLimit> limits = axis.shiftLimits().stream()
                .map(l -> new ShiftLimit(l.lowest(), l.highest(), l.limit() * times)).toList();
        return new AxisSpec(axis.name(), axis.scale(), stages, axis.datum() * times, times(axis.low(), times),
                times(axis.high(), times), limits, axis.tolerance(), axis.wantedStep());
    }

    private static OptionalLong times(OptionalLong stop, long times) {
        return stop.isPresent() ? OptionalLong.of(stop.getAsLong() * times) : stop;
    }
}
