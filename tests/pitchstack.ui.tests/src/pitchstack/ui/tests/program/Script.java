// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.program;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IViewReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import pitchstack.edit.MoveStage;
import pitchstack.edit.Session;

/** What somebody does in a window that has just opened. */
enum Script {
    /** Moves the lowest stage to index 12, and leaves it unsaved. */
    CHANGE {
        @Override
        void begin() {
            Driven.once(() -> session().isPresent(), () -> {
                session().get().run(new MoveStage(session().get().axis().getStages().get(0), INDEX));
                Driven.say("changed");
            });
        }
    },
    /** Takes the unsaved work back that is offered, saves it, and ends the program. */
    RECOVER {
        @Override
        void begin() {
            Driven.once(() -> question().isPresent(), () -> {
                press(question().get(), "Recover");
                Driven.once(() -> session().filter(Session::isDirty).isPresent(), () -> {
                    page().saveEditor(page().getActiveEditor(), false);
                    Driven.say("index " + session().get().axis().getStages().get(0).getIndex());
                    PlatformUI.getWorkbench().close();
                });
            });
        }
    },
    /** Looks whether anything is asked, for longer than it takes to ask, and ends the program without saving. */
    WATCH {
        @Override
        void begin() {
            Driven.once(() -> session().isPresent(), () -> {
                long end = System.currentTimeMillis() + WATCHED_MS;
                Driven.once(() -> question().isPresent() || System.currentTimeMillis() > end, () -> {
                    Driven.say(question().isPresent() ? "asked" : "quiet");
                    question().ifPresent(Shell::close);
                    page().closeAllEditors(false);
                    PlatformUI.getWorkbench().close();
                });
            });
        }
    },
    /** Makes the window another size, closes a view and opens another, and ends the program. */
    ARRANGE {
        @Override
        void begin() {
            Driven.once(() -> page() != null, () -> {
                try {
                    page().getWorkbenchWindow().getShell().setBounds(60, 40, 1000, 700);
                    page().hideView(page().findViewReference("pitchstack.ui.views.wear"));
                    page().showView("pitchstack.ui.views.guide");
                } catch (PartInitException e) {
                    throw new IllegalStateException(e);
                }
                Driven.once(() -> true, Script::tellAndClose);
            });
        }
    },
    /** Tells how the window is arranged, and ends the program. */
    TELL {
        @Override
        void begin() {
            Driven.once(() -> page() != null, Script::tellAndClose);
        }
    },
    /** Resets the layout as Window > Reset Layout does, tells how the window is arranged, and ends the program. */
    RESET {
        @Override
        void begin() {
            Driven.once(() -> page() != null, () -> {
                page().resetPerspective();
                Driven.once(() -> true, Script::tellAndClose);
            });
        }
    };

    /** The index that {@link #CHANGE} sets. */
    static final int INDEX = 12;
    private static final int WATCHED_MS = 3000;

    /** Begins; goes on by itself. Runs in the thread of the window. */
    abstract void begin();

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows().length == 0 ? null
                : PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private static Optional<Session> session() {
        return Optional.ofNullable(page()).map(IWorkbenchPage::getActiveEditor).map(editor -> editor.getAdapter(Session.class));
    }

    private static Optional<Shell> question() {
        return Stream.of(Display.getCurrent().getShells())
                .filter(shell -> shell.isVisible() && shell.getText().equals("Unsaved work was found")).findFirst();
    }

    private static void press(Composite within, String text) {
        for (Control control : within.getChildren()) {
            if (control instanceof Button button && button.getText().replace("&", "").equals(text)) {
                button.notifyListeners(SWT.Selection, new Event());
                return;
            }
            if (control instanceof Composite inner) {
                press(inner, text);
            }
        }
    }

    private static void tellAndClose() {
        Driven.say(Arrays.stream(page().getViewReferences()).map(IViewReference::getId).sorted()
                .collect(Collectors.joining(" ")) + " in " + page().getWorkbenchWindow().getShell().getSize());
        PlatformUI.getWorkbench().close();
    }
}
