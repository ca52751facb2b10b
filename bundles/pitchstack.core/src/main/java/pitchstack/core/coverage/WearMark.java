// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.WornRange;

/**
 * Teeth supposed to be worn or barred, to see what that would cost.
 *
 * @param stage the stage, counted from the lowest, 0
 * @param row which of its rows
 * @param range which teeth, and what they would be fit for
 */
public record WearMark(int stage, Row row, WornRange range) {
    /** A row of a stage. */
    public enum Row {
        /** The row below. */
        BASE,
        /** The row on the underside of the moved body. */
        RIDER;

        /** {@code base} or {@code rider}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The one of two mating rows that this is. */
        public RowSpec of(RowPair rows) {
            return this == BASE ? rows.base() : rows.rider();
        }
    }

    /**
     * The axis as it would be, with the mark besides those that are there; the given one stays as it is.
     *
     * @throws IndexOutOfBoundsException if the axis has no such stage
     */
    public AxisSpec on(AxisSpec axis) {
        StageSpec spec = axis.stages().get(stage);
        RowPair rows = spec.rows();
        RowPair marked = row == Row.BASE
                ? new RowPair(marked(rows.base()), rows.rider(), rows.start(), rows.minimumEngaged())
                : new RowPair(rows.base(), marked(rows.rider()), rows.start(), rows.minimumEngaged());
        return axis.withStage(stage, spec.withRows(marked));
    }

    private RowSpec marked(RowSpec one) {
        List<WornRange> all = new ArrayList<>(one.worn());
        all.add(range);
        return new RowSpec(one.teeth(), all);
    }

    /**
     * The axis as it would be without one mark like this, to see what the mark costs; the same where there is none.
     *
     * @throws IndexOutOfBoundsException if the axis has no such stage
     */
    public AxisSpec off(AxisSpec axis) {
        StageSpec spec = axis.stages().get(stage);
        RowPair rows = spec.rows();
        RowPair fit = row == Row.BASE
                ? new RowPair(unmarked(rows.base()), rows.rider(), rows.start(), rows.minimumEngaged())
                : new RowPair(rows.base(), unmarked(rows.rider()), rows.start(), rows.minimumEngaged());
        return axis.withStage(stage, spec.withRows(fit));
    }

    private RowSpec unmarked(RowSpec one) {
        List<WornRange> rest = new ArrayList<>(one.worn());
        rest.remove(range);
        return new RowSpec(one.teeth(), rest);
    }

    /** The axis as it would be with several marks. */
    public static AxisSpec onAll(AxisSpec axis, List<WearMark> marks) {
        AxisSpec marked = axis;
        for (WearMark mark : marks) {
            marked = mark.on(marked);
        }
        return marked;
    }
}
