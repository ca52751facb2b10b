// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import java.util.List;
import java.util.OptionalLong;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.edit.NewStack;
import pitchstack.analysis.AxisReader;
import pitchstack.model.Positioner;

/** Axes in numbers, in femtometres. */
final class Specs {
    static final double MM = 1e12;

    private Specs() {
    }

    /** The new positioner: 5 mm on 100 and 30 teeth from 0, and 4.9 mm on 90 and 30 teeth from 30. */
    static AxisSpec pair() {
        Positioner positioner = NewStack.positioner();
        return AxisReader.read(positioner, positioner.getAxes().get(0)).spec();
    }

    static AxisSpec axis(long datum, StageSpec... stages) {
        AxisSpec pair = pair();
        return new AxisSpec("axis", new LinearScale(LengthUnit.MM), List.of(stages), datum, OptionalLong.empty(),
                OptionalLong.empty(), List.of(), 0, OptionalLong.empty());
    }

    static StageSpec stage(long pitch, int base, int rider, int start, int least) {
        StageSpec known = pair().stages().get(0);
        return new StageSpec("stage", known.source(), pitch, pitch, rows(base, rider, start, least), known.cost());
    }

    static RowPair rows(int base, int rider, int start, int least) {
        return new RowPair(new RowSpec(base, List.of()), new RowSpec(rider, List.of()), start, least);
    }
}
