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
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.coverage.Ways;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.units.Scale;
import pitchstack.edit.Session;
import pitchstack.ui.views.Background;
import pitchstack.ui.views.coverage.strip.Spot;

/**
 * The words at the pointer: the position, whether it is reached, where the nearest setting stands, and how many settings
 * reach it.
 */
final class StripHint {
    /** So long the pointer rests before the nearest setting is looked for. */
    private static final int REST_MS = 200;

    private final StripCanvas strip;
    private final Supplier<Optional<Session>> session;
    private final Canvas canvas;
    private final Background background;
    private final Runnable look = this::look;
    private Charted charted;
    private Spot spot;

    /** What is looked up where the pointer rests. */
    private record Found(Answer nearest, Ways ways) { }

    StripHint(StripCanvas strip, Supplier<Optional<Session>> session) {
        this.strip = strip;
        this.session = session;
        canvas = strip.control();
        background = new Background(canvas.getDisplay(), share -> { });
        canvas.addListener(SWT.MouseMove, this::moved);
        canvas.addListener(SWT.MouseExit, e -> point(null));
        canvas.addListener(SWT.Dispose, e -> forget());
    }

    /** Speaks of what is shown, or of nothing for {@code null}. */
    void show(Charted shown) {
        charted = shown;
        forget();
        canvas.setToolTipText(null);
    }

    private void forget() {
        canvas.getDisplay().timerExec(-1, look);
        background.forget();
        spot = null;
    }

    private void moved(Event e) {
        Spot now = charted == null ? null : strip.spot(e.x).orElse(null);
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
                + CoverageWords.reached(charted.coverage().at(spot.position()));
    }

    /** A tolerance of 0 asks for the nearest on both sides. */
    private void look() {
        session.get().filter(s -> spot != null && !s.analysis().hasErrors()).ifPresent(s -> {
            AxisAnalysis axis = s.analysis();
            Scale scale = axis.spec().scale();
            Charted on = charted;
            PlanRequest request = new PlanRequest(spot.position(), 0, axis.current(), WornPolicy.ALLOW, 0);
            background.ask("Look up a position", progress -> new Found(axis.planner().orElseThrow().plan(request),
                    on.reach().ways(request.target(), on.coverage().tolerance())), found -> {
                        if (!canvas.isDisposed() && spot != null && found.isPresent()) {
                            canvas.setToolTipText(words() + ".\n" + near(scale, found.get().nearest())
                                    + CoverageWords.ways(found.get().ways()));
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
