// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.units.TrueMinus;
import pitchstack.ui.editor.figures.Badge;

/**
 * What the checks found at one place of the drawing.
 *
 * @param findings in the order of the checks
 */
record Found(List<Finding> findings) {
    /** What concerns a stage or a part of it; the axis itself for none. */
    static Found at(List<Finding> all, OptionalInt stage) {
        return new Found(all.stream().filter(finding -> finding.place().stage().equals(stage)).toList());
    }

    /** What concerns a row of the stage, or its marks. */
    Found of(Place.Part part) {
        return new Found(findings.stream().filter(finding -> finding.place().part() == part).toList());
    }

    /** The mark to draw, if anything was found. */
    Optional<Badge> badge() {
        return findings.stream().map(Finding::severity).min(Comparator.naturalOrder())
                .map(worst -> new Badge(worst, findings.size()));
    }

    /** All sentences, each on a line of its own, to follow what else a tip says. */
    String lines() {
        return findings.stream().map(finding -> "\n" + TrueMinus.in(finding.sentence())).collect(Collectors.joining());
    }
}
