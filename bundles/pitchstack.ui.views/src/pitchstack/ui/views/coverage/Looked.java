// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.eclipse.swt.widgets.Canvas;
import pitchstack.ui.views.coverage.strip.Sight;

/** A chart along one line that can be looked at closer. */
public interface Looked {
    /** Where it is drawn. */
    Canvas control();

    /** What is in sight; empty while nothing is shown. */
    Optional<Sight> sight();

    /** Looks elsewhere; does nothing while nothing is shown. */
    void look(UnaryOperator<Sight> at);

    /** A place on the canvas as one on the chart, from 0 at its left edge. */
    int onChart(int x);

    /** The width of the chart, in pixels. */
    int width();

    /** What to look closer at where nobody points; empty for the middle. */
    OptionalDouble interest();
}
