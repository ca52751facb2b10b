// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pitchstack.core.coverage.StopChange;
import pitchstack.core.coverage.Supposition;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;

/**
 * What an axis would reach with some teeth worse than they are, and what that costs.
 *
 * @param marks the teeth
 * @param mapped what it would reach
 * @param answer what that changes of the travel and of a list
 * @param stops the list; empty where there is none
 * @param unread one sentence for each target of the list that could not be read
 */
record Supposed(List<WearMark> marks, Mapped mapped, Supposition answer, List<Stop> stops, List<String> unread) {
    /** Copies the lists. */
    Supposed {
        marks = List.copyOf(marks);
        stops = List.copyOf(stops);
        unread = List.copyOf(unread);
    }

    /** The stops to which something happens. */
    List<Stop> stops(Predicate<StopChange> what) {
        return answer.stops().stream().filter(what).map(change -> stops.get(change.stop())).toList();
    }

    /** How many stops are reached as the teeth are. */
    long reachedNow() {
        return answer.stops().stream().filter(stop -> stop.now().isPresent()).count();
    }

    /** The efforts of the stops that are reached both times, each from where the stages stand, in milliseconds. */
    long effortMs(Function<StopChange, Optional<PlannedSetting>> which) {
        return answer.stops().stream().filter(stop -> stop.extraMs().isPresent())
                .mapToLong(stop -> which.apply(stop).orElseThrow().effortMs()).sum();
    }

    /** What is supposed: {@code base teeth 100 to 101 of “Rack” barred}. */
    String words() {
        return marks.stream().map(this::words).collect(Collectors.joining("; "));
    }

    private String words(WearMark mark) {
        StageSpec stage = mapped.axis().stages().get(mark.stage());
        ToothSpan teeth = mark.range().teeth();
        return row(mark) + (teeth.count() == 1 ? " tooth " + teeth.first()
                : " teeth " + teeth.first() + " to " + teeth.last()) + " of " + (stage.name().isBlank() ? "stage " : "")
                + stage.title(mark.stage()) + (mark.range().wear() == Wear.BARRED ? " barred" : " worn");
    }

    /** {@code base} or {@code rider}. */
    static String row(WearMark mark) {
        return mark.row().word();
    }
}
