// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchstack.core.geometry.Side;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/** Several rows at once. */
public final class PartSet {
    /** Says that there is nothing to print. */
    public static final String NONE_PRINTED = "No row is printed: none has a print set-up, and no stage is printed.";

    private PartSet() {
    }

    /** Why some rows cannot all be made: the first reason, or nothing. */
    public static Optional<String> refusal(List<RowReading> rows) {
        return rows.stream().filter(RowReading.Refused.class::isInstance).map(RowReading.Refused.class::cast)
                .map(RowReading.Refused::why).findFirst();
    }

    /** Those of some rows that can be made. */
    public static List<RowReading.Ready> ready(List<RowReading> rows) {
        return rows.stream().filter(RowReading.Ready.class::isInstance).map(RowReading.Ready.class::cast).toList();
    }

    /** Every printed row of some axes, axis by axis from the lowest stage up, each base row before its rider. */
    public static List<RowReading> printed(Positioner positioner, List<Axis> axes) {
        PartReader reader = new PartReader(positioner);
        List<RowReading> rows = new ArrayList<>();
        for (Axis axis : axes) {
            for (Stage stage : axis.getStages()) {
                Stream.of(Side.values()).filter(side -> PartReader.isPrinted(stage, side))
                        .forEach(side -> rows.add(reader.read(axis, stage, side)));
            }
        }
        return rows;
    }

    /** The printed rows of a stage, or both where neither is printed. */
    public static List<RowReading> of(Positioner positioner, Axis axis, Stage stage) {
        PartReader reader = new PartReader(positioner);
        List<Side> printed = Stream.of(Side.values()).filter(side -> PartReader.isPrinted(stage, side)).toList();
        return (printed.isEmpty() ? List.of(Side.values()) : printed).stream()
                .map(side -> reader.read(axis, stage, side)).toList();
    }
}
