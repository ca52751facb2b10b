// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.List;
import java.util.Optional;
import pitchstack.core.Stacks;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.thermal.Temperature;
import pitchstack.core.stack.RowPair;

/** Axes for tests, built up by copies with one thing changed. */
final class Accuracies {
    /** Known exactly, so that the temperature alone counts. */
    static final Expansion STEEL = new Expansion(11.5e-6, 0);
    static final Expansion PLA = new Expansion(68e-6, 0);

    private Accuracies() {
    }

    static RowAccuracy printed(double scale, double scatterM) {
        return new RowAccuracy(new RowLength.Scaled(scale, "bed"), scatterM, 0, PLA);
    }

    static RowAccuracy alone(double scale, Expansion expansion) {
        return new RowAccuracy(new RowLength.Scaled(scale, ""), 0, 0, expansion);
    }

    static StageAccuracy stage(String title, double pitchM, int bases, int riders, int start, RowAccuracy base,
            RowAccuracy rider, double seatM) {
        return new StageAccuracy(title, new RowPair(Stacks.row(bases), Stacks.row(riders), start, 1), pitchM, base, rider,
                seatM, Optional.empty());
    }

    static AxisAccuracy axis(double sharedScale, Temperature temperature, StageAccuracy... stages) {
        return new AxisAccuracy(List.of(stages), sharedScale, Optional.empty(), 0, temperature, Optional.empty(), false);
    }

    static AxisAccuracy at20(double sharedScale, StageAccuracy... stages) {
        return axis(sharedScale, new Temperature(20, 0), stages);
    }
}
