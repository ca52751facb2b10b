// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The user guide in the window: pages, links by keyboard, tables; and that no link of any page leads nowhere. */
class GuideTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)[^)]*\\)");

    private final Hands hands = new Hands();
    private Bench bench;
    private IViewPart view;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        view = bench.view("pitchstack.ui.views.guide");
    }

    @AfterEach
    void close() {
        bench.page().hideView(view);
        hands.settle();
    }

    @Test
    void showsHeadingsAndTablesWithoutMarkdown() {
        String text = page().getText();
        assertTrue(text.startsWith("User guide\n"));
        assertTrue(text.contains("\npositioner\tthe whole device, one or more axes\n"));
        assertFalse(text.contains("|"), "no bars of tables");
        assertFalse(text.contains("**"), "no stars of emphasis");
        StyleRange title = page().getStyleRangeAtOffset(0);
        assertTrue(title.font.getFontData()[0].getHeight() > page().getFont().getFontData()[0].getHeight());
        assertTrue(page().getLineTabStops(page().getLineAtOffset(text.indexOf("positioner\t"))).length == 1);
    }

    @Test
    void followsLinksByKeyboardAndComesBack() {
        hands.focus(page());
        hands.key(0, SWT.TAB);
        assertEquals("The job", page().getSelectionText());
        hands.enter(0);
        assertEquals(page().getText().indexOf("\nThe job\n") + 1, page().getCaretOffset());
        while (!page().getSelectionText().equals("Command line")) {
            hands.key(0, SWT.TAB);
        }
        hands.enter(0);
        hands.picture(bench.shell(), "guide-command-line");
        assertTrue(page().getText().startsWith("The command line\n"));
        hands.key(0, SWT.BS);
        assertTrue(page().getText().startsWith("User guide\n"));
        hands.picture(bench.shell(), "guide");
    }

    @Test
    void showsPicturesAsWideAsTheViewAtMost() {
        List<StyleRange> pictures = Arrays.stream(page().getStyleRanges()).filter(style -> style.metrics != null).toList();
        assertFalse(pictures.isEmpty());
        for (StyleRange picture : pictures) {
            int width = picture.metrics.width;
            assertTrue(width > 200 && width <= page().getClientArea().width, width + " of " + page().getClientArea().width);
        }
    }

    @Test
    void hasNoLinkThatLeadsNowhere() throws IOException {
        List<URL> pages = Collections.list(Platform.getBundle("pitchstack.help").findEntries("docs", "*.md", false));
        assertFalse(pages.isEmpty());
        for (URL url : pages) {
            String text;
            try (InputStream in = url.openStream()) {
                text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            }
            Matcher link = LINK.matcher(text);
            while (link.find()) {
                String goal = link.group(1);
                if (!goal.matches("[a-z]+:.*")) {
                    String path = URI.create("/docs/").resolve(goal).getPath();
                    assertNotNull(Platform.getBundle("pitchstack.help").getEntry(path), url.getPath() + " links to " + goal);
                }
            }
        }
    }

    private StyledText page() {
        return hands.the(bench.shell(), StyledText.class, t -> t.getVerticalBar() != null && t.getLineSpacing() > 0);
    }
}
