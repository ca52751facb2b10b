// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import pitchstack.core.units.Scale;
import pitchstack.ui.editor.places.Dots;

/** Says what the dots on the ruler stand for. */
final class DotWords {
    private DotWords() {
    }

    static String of(Dots dots, Scale scale) {
        if (dots.offsets().length == 0) {
            return "A dot marks each position that can be reached. None is in sight here but where the carriage stands.";
        }
        String what = dots.thinned() ? "Dots mark positions that can be reached, but not all of them: those less than "
                + scale.formatSize(dots.apart()) + " from a dot may be left out. Zoom in to see more."
                : "Dots mark every position in sight that can be reached.";
        return dots.ended() ? what + " Those farthest from the carriage took too long to find." : what;
    }
}
