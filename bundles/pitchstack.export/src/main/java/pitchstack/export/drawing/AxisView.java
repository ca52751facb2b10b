// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;
import java.util.stream.Stream;
import pitchstack.core.stack.AxisSpec;

/**
 * An axis as drawn, in millimetres of the part: x along the travel from the datum, which is where the reference of the
 * carriage stands when every index is 0; y up from the underside of the base. A rotary axis is unrolled, a millimetre for
 * a degree.
 *
 * @param number from 1, in the order of the file
 * @param spec the axis in numbers
 * @param stages the lowest first, at least one
 * @param mmPerCount millimetres of a count of the scale
 * @param low where the reference stands at the lowest position
 * @param high where it stands at the highest position
 * @param isThicknessStated whether the file says of every row how thick the part behind its teeth is
 */
record AxisView(int number, AxisSpec spec, List<StageView> stages, double mmPerCount, Travel low, Travel high,
        boolean isThicknessStated) {
    /**
     * An end of the travel.
     *
     * @param count the position, in counts of the scale
     * @param x where the reference stands there
     */
    record Travel(long count, double x) { }

    /** Copies the list. */
    AxisView {
        stages = List.copyOf(stages);
    }

    /** Whether it goes round and round. */
    boolean isEndless() {
        return isRotary() && high.count() - low.count() >= spec.scale().turn();
    }

    boolean isRotary() {
        return spec.scale().turn() != 0;
    }

    /** Its name, or its number where it has none. */
    String name() {
        return spec.name().isBlank() ? "Axis " + number : spec.name();
    }

    /** Where the reference of the carriage stands as drawn. */
    double reference() {
        return stages.stream().mapToDouble(stage -> stage.index() * stage.rider().tooth().pitchMm()).sum();
    }

    RowView lowest() {
        return stages.get(0).base();
    }

    RowView carriage() {
        return stages.get(stages.size() - 1).rider();
    }

    /** All rows, from the base up. */
    List<RowView> rows() {
        return stages.stream().flatMap(stage -> Stream.of(stage.base(), stage.rider())).toList();
    }

    double left() {
        return rows().stream().mapToDouble(RowView::left).min().orElseThrow();
    }

    double right() {
        return rows().stream().mapToDouble(RowView::right).max().orElseThrow();
    }

    /** From the underside of the base to the top of the carriage. */
    double height() {
        return carriage().back();
    }
}
