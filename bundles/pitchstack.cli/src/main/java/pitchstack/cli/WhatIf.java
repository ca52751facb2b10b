// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;

/**
 * What an axis would reach with some teeth worse than they are.
 *
 * @param marks the teeth
 * @param supposed what it would reach
 * @param change what that changes of what it reaches now
 * @param effort what it changes of a list of targets; empty where there is none
 * @param unread one sentence for each target that could not be read
 */
record WhatIf(List<WearMark> marks, Mapped supposed, CoverageChange change, Optional<EffortChange> effort,
        List<String> unread) {
    /** Copies the lists. */
    WhatIf {
        marks = List.copyOf(marks);
        unread = List.copyOf(unread);
    }

    /** What is supposed: {@code base teeth 100 to 101 of “Rack” barred}. */
    String words() {
        return marks.stream().map(this::words).collect(Collectors.joining("; "));
    }

    private String words(WearMark mark) {
        StageSpec stage = supposed.axis().stages().get(mark.stage());
        ToothSpan teeth = mark.range().teeth();
        return row(mark) + (teeth.count() == 1 ? " tooth " + teeth.first()
                : " teeth " + teeth.first() + " to " + teeth.last()) + " of " + (stage.name().isBlank() ? "stage " : "")
                + stage.title(mark.stage()) + (mark.range().wear() == Wear.BARRED ? " barred" : " worn");
    }

    /** {@code base} or {@code rider}. */
    static String row(WearMark mark) {
        return mark.row().name().toLowerCase(Locale.ROOT);
    }
}
