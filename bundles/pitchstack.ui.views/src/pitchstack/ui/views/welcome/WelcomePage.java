// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.welcome;

import java.util.List;
import java.util.Map;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import pitchstack.ui.views.Colours;
import pitchstack.ui.views.Commands;

/** What the welcome page shows: what the program is for, what to begin with, the examples, and the cautions. */
final class WelcomePage {
    private static final String PURPOSE = "Pitchstack is for positioners that are set by counting teeth instead of turning"
            + " a screw. Draw the stack of toothed stages, type where the carriage shall stand, and read which stages to"
            + " move by how many teeth. Where a position cannot be reached, it says why, and how near the stack can come.";
    private static final List<String> CAUTIONS = List.of(
            "Such a positioner helps to place things. It is never a guard and never carries the load: let a clamp or a"
                    + " metal stop take the force.",
            "Switch the machine off and lock it out before you reach in or move a stage.",
            "Check each new setting with an instrument you trust, and again after a knock, a change of season or a new part."
                    + " What is computed here is not measured.",
            "One tooth miscounted is a whole pitch wrong. Read the position on a second scale before you cut or press.",
            "The manual of the machine and the rules of your workplace come before anything said here.");
    private static final int TEXT_WIDTH = 780;
    private static final int MARGIN = 24;
    private static final int LINE_GAP = 6;

    private final LocalResourceManager resources;
    private final Composite content;
    private final Commands commands;
    private Control first;

    WelcomePage(Composite parent, Commands commands) {
        this.commands = commands;
        ScrolledComposite scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        content = new Composite(scroll, SWT.NONE);
        Colours.follow(content,
                () -> content.setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND)));
        content.setBackgroundMode(SWT.INHERIT_FORCE);
        resources = new LocalResourceManager(JFaceResources.getResources(), content);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).spacing(0, LINE_GAP).applyTo(content);
        fill();
        scroll.setContent(content);
        scroll.addListener(SWT.Resize,
                e -> scroll.setMinHeight(content.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y));
    }

    private void fill() {
        heading("Pitchstack", 2.2);
        text(PURPOSE);
        heading("Begin", 1.3);
        begin("Take the first tour, on the cross-cut fence", Commands.TOUR);
        begin("Design a new stack from travel and finest step…", Commands.DESIGN);
        begin("Start from a small ready stack, and change it", Commands.NEW);
        begin("Open a file…", Commands.ASK_AND_OPEN);
        begin("Read the user guide", Commands.GUIDE);
        List<Example> examples = commands.offers(Commands.OPEN_COPY) ? Example.all() : List.of();
        if (!examples.isEmpty()) {
            heading("Examples", 1.3);
            text("Each opens as a copy, so nothing you try can spoil it.");
            examples.forEach(this::example);
        }
        heading("Before you set a machine", 1.3);
        Composite list = new Composite(content, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(LINE_GAP, LINE_GAP).applyTo(list);
        CAUTIONS.forEach(caution -> item(list, caution));
    }

    void setFocus() {
        if (first != null) {
            first.setFocus();
        } else {
            content.setFocus();
        }
    }

    private void heading(String text, double size) {
        Label label = new Label(content, SWT.NONE);
        label.setText(text);
        label.setFont(font(size));
        GridDataFactory.fillDefaults().indent(0, 2 * LINE_GAP).applyTo(label);
    }

    private Font font(double factor) {
        FontDescriptor normal = FontDescriptor.createFrom(content.getFont());
        int height = (int) Math.round(normal.getFontData()[0].getHeight() * factor);
        return resources.create(normal.setHeight(height).setStyle(SWT.BOLD));
    }

    private void text(String text) {
        Label label = new Label(content, SWT.WRAP);
        label.setText(text);
        GridDataFactory.swtDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(label);
    }

    private static void item(Composite list, String text) {
        Label bullet = new Label(list, SWT.NONE);
        bullet.setText("•");
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(bullet);
        Label label = new Label(list, SWT.WRAP);
        label.setText(text);
        GridDataFactory.swtDefaults().hint(TEXT_WIDTH - MARGIN, SWT.DEFAULT).applyTo(label);
    }

    private void begin(String text, String command) {
        if (commands.offers(command)) {
            link("<a>" + text + "</a>", () -> commands.run(command, Map.of()));
        }
    }

    private void example(Example example) {
        link("<a>" + example.title() + "</a>" + (example.about().isEmpty() ? "" : " — " + example.about()),
                () -> commands.run(Commands.OPEN_COPY, Map.of(Commands.PATH, example.file().toString())));
    }

    private void link(String text, Runnable what) {
        Link link = new Link(content, SWT.WRAP);
        link.setText(text.replace("&", "&&"));
        link.addListener(SWT.Selection, e -> what.run());
        GridDataFactory.swtDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(link);
        if (first == null) {
            first = link;
        }
    }
}
