// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Display;
import pitchstack.core.plan.Step;
import pitchstack.core.stack.Setting;
import pitchstack.edit.Session;
import pitchstack.ui.editor.places.StepMotion;

/**
 * Shows a proposed move as it is made by hand, step by step: a stage is lifted, moved tooth by tooth, and seated. It can
 * be paused, and gone through one step at a time; the document stays as it is.
 */
public final class Playback {
    private static final int FRAME_MS = 40;

    private final SideView view;
    private final Display display;
    private final Runnable changed;
    private final Runnable frame = this::frame;
    private List<Step> steps = List.of();
    private Setting before;
    private int number;
    private int elapsedMs;
    private boolean running;
    private boolean oneStep;

    /**
     * @param view what shows it
     * @param display whose thread is used
     * @param changed called whenever {@link #words}, {@link #isPlaying} or {@link #isRunning} may have changed
     */
    public Playback(SideView view, Display display, Runnable changed) {
        this.view = view;
        this.display = display;
        this.changed = changed;
    }

    private Session session() {
        return view.session();
    }

    /** Whether a move is being shown, paused or not. */
    public boolean isPlaying() {
        return !steps.isEmpty();
    }

    /** Whether it goes on by itself. */
    public boolean isRunning() {
        return running;
    }

    /** Whether there is a move to show. */
    public boolean isPossible() {
        return isPlaying() || session().proposal().filter(move -> !move.steps().isEmpty()).isPresent();
    }

    /** Starts, pauses or goes on. */
    public void toggle() {
        if (running) {
            running = false;
            changed.run();
        } else if (begin()) {
            oneStep = false;
            run();
        }
    }

    /** Goes on to the end of the step, and pauses there. */
    public void step() {
        if (begin()) {
            oneStep = true;
            run();
        }
    }

    /** Ends it, and shows again where the stages stand. */
    public void stop() {
        if (!isPlaying()) {
            return;
        }
        display.timerExec(-1, frame);
        steps = List.of();
        running = false;
        view.lift(0, 0);
        if (session().preview().isPresent()) {
            session().preview(null);
        }
        changed.run();
    }

    private boolean begin() {
        if (isPlaying()) {
            return true;
        }
        steps = session().proposal().map(move -> move.steps()).orElse(List.of());
        before = session().analysis().current();
        number = 0;
        elapsedMs = 0;
        if (isPlaying()) {
            session().play(before);
        }
        return isPlaying();
    }

    private void run() {
        running = true;
        changed.run();
        display.timerExec(FRAME_MS, frame);
    }

    private void frame() {
        if (!running || !isPlaying()) {
            return;
        }
        if (!session().isPlaying()) {
            // Something else is shown by now: a drag, another document.
            stop();
            return;
        }
        advance(FRAME_MS);
        if (running) {
            display.timerExec(FRAME_MS, frame);
        }
    }

    private void advance(int ms) {
        elapsedMs += ms;
        StepMotion motion = new StepMotion(steps.get(number));
        if (elapsedMs < motion.durationMs()) {
            show(motion);
            return;
        }
        elapsedMs = motion.durationMs();
        show(motion);
        before = before.with(steps.get(number).stage(), steps.get(number).to());
        elapsedMs = 0;
        number++;
        if (number == steps.size()) {
            number = steps.size() - 1;
            stop();
        } else if (oneStep) {
            running = false;
            changed.run();
        }
    }

    private void show(StepMotion motion) {
        Step step = steps.get(number);
        view.lift(step.stage(), motion.lift(elapsedMs));
        Setting shown = before.with(step.stage(), motion.index(elapsedMs));
        if (session().preview().equals(Optional.of(shown))) {
            view.refresh();
        } else {
            session().play(shown);
        }
        changed.run();
    }

    /** Which step is shown and what happens in it, in a few words; empty where none is. */
    public String words() {
        if (!isPlaying()) {
            return "";
        }
        Step step = steps.get(number);
        String stage = session().analysis().spec().stages().get(step.stage()).title(step.stage());
        StepMotion motion = new StepMotion(step);
        String doing = switch (motion.phase(elapsedMs)) {
            case LIFT -> "lift " + stage;
            case MOVE -> stage + " at " + StageWords.signed(motion.index(elapsedMs));
            case SEAT -> "seat " + stage + " at " + StageWords.signed(step.to());
        };
        return "Step " + (number + 1) + " of " + steps.size() + ": " + doing + (running ? "" : ", paused");
    }
}
