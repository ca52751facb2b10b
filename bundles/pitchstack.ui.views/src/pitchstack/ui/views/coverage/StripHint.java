// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.units.Scale;
import pitchstack.edit.Session;
import pitchstack.ui.views.coverage.strip.Spot;
import pitchstack.ui.views.targets.BackgroundPlanner;

/** The words at the pointer: the position, whether it is reached, and where the nearest setting stands. */
final class StripHint {
    /** So long the pointer rests before the nearest setting is looked for. */
    private static final int REST_MS = 200;

    private final StripCanvas strip;
    private final Supplier<Optional<Session>> session;
    private final Canvas canvas;
    private final BackgroundPlanner background;
    private final Runnable look = this::look;
    private Coverage coverage;
    private Spot spot;

    StripHint(StripCanvas strip, Supplier<Optional<Session>> session) {
        this.strip = strip;
        this.session = session;
        canvas = strip.control();
        background = new BackgroundPlanner(canvas.getDisplay(), () -> { });
        canvas.addListener(SWT.MouseMove, this::moved);
        canvas.addListener(SWT.MouseExit, e -> point(null));
        canvas.addListener(SWT.Dispose, e -> forget());
    }

    /** Speaks of a coverage, or of none for {@code null}. */
    void show(Coverage shown) {
        coverage = shown;
        forget();
        canvas.setToolTipText(null);
    }

    private void forget() {
        canvas.getDisplay().timerExec(-1, look);
        background.forget();
        spot = null;
    }

    private void moved(Event e) {
        Spot now = coverage == null ? null : strip.spot(e.x).orElse(null);
        // Some systems tell of a move when the hint changes, which must not take away what was just found.
        if (Objects.equals(now, spot)) {
            return;
        }
        forget();
        spot = now;
        point(spot);
        canvas.setToolTipText(spot == null ? null : words());
        if (spot != null) {
            canvas.getDisplay().timerExec(REST_MS, look);
        }
    }

    /** Marks the position on the ruler of the drawing too. */
    private void point(Spot at) {
        session.get().ifPresent(s -> s.point(at == null ? OptionalLong.empty() : OptionalLong.of(at.position())));
    }

    private String words() {
        return spot.text() + strip.chart().map(Chart::unit).orElse("") + ": "
                + CoverageWords.reached(coverage.at(spot.position()));
    }

    /** A tolerance of 0 asks for the nearest on both sides. */
    private void look() {
        session.get().filter(s -> spot != null && !s.analysis().hasErrors()).ifPresent(s -> {
            Scale scale = s.analysis().spec().scale();
            PlanRequest request = new PlanRequest(spot.position(), 0, s.analysis().current(), WornPolicy.ALLOW, 0);
            background.ask(s.analysis(), request, answer -> {
                if (!canvas.isDisposed() && spot != null && answer.isPresent()) {
                    canvas.setToolTipText(words() + ".\n" + near(scale, answer.get()));
                }
            });
        });
    }

    private static String near(Scale scale, Answer answer) {
        if (answer instanceof Answer.Nearest nearest) {
            return Stream.of(nearest.below(), nearest.above()).flatMap(Optional::stream)
                    .min((a, b) -> Long.compare(Math.abs(a.error()), Math.abs(b.error())))
                    .map(planned -> near(scale, planned)).orElse("No setting stands anywhere near.");
        }
        return "A setting stands exactly here.";
    }

    private static String near(Scale scale, PlannedSetting planned) {
        return "The nearest setting stands " + scale.formatSize(planned.error())
                + (planned.error() < 0 ? " below, at " : " above, at ") + scale.format(planned.position())
                + (planned.wornStages().isEmpty() ? "." : ", over worn teeth.");
    }
}
