// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;

/**
 * The one arrangement of the window: the drawing in the middle, the outline on its left, the target and the list of
 * targets on its right, properties, findings, coverage, wear and accuracy below. Views are named by id, so the plug-ins
 * that bring them need not be known here; one that is not installed is left out.
 */
public final class StackPerspective implements IPerspectiveFactory {

    /** Id of this perspective. */
    public static final String ID = "pitchstack.app.perspective.stack";

    private static final String TARGET_VIEW = "pitchstack.ui.views.target";
    private static final String LIST_VIEW = "pitchstack.ui.views.list";
    /** The view of what the checks found. */
    static final String FINDINGS_VIEW = "pitchstack.ui.views.findings";
    private static final String COVERAGE_VIEW = "pitchstack.ui.views.coverage";
    private static final String WEAR_VIEW = "pitchstack.ui.views.wear";
    private static final String RUNS_VIEW = "pitchstack.ui.views.runs";
    private static final String ACCURACY_VIEW = "pitchstack.ui.views.accuracy";
    private static final String TOUR_VIEW = "pitchstack.ui.views.tour";
    private static final String GUIDE_VIEW = "pitchstack.ui.views.guide";
    /** At 1280 x 800 this leaves the drawing 650 x 450, the target 400 wide, and the outline 210. */
    private static final float OUTLINE_PART = 0.17f;
    private static final float DRAWING_WIDTH_PART = 0.62f;
    private static final float TOUR_HEIGHT_PART = 0.35f;
    private static final float DRAWING_HEIGHT_PART = 0.65f;
    /** On a narrower screen the outline goes to the bottom, or the fields of the target would be cut off. */
    private static final int LEAST_WIDTH = 1024;
    /** At 800 x 600 this leaves the target 350 wide, which its buttons need. */
    private static final float NARROW_DRAWING_WIDTH_PART = 0.56f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        boolean narrow = Display.getCurrent().getPrimaryMonitor().getClientArea().width < LEAST_WIDTH;
        if (!narrow) {
            addFolder(layout, "left", IPageLayout.LEFT, OUTLINE_PART, IPageLayout.ID_OUTLINE);
            // Under the outline, so that neither the target nor the strip hides what the tour says of them.
            layout.createPlaceholderFolder("tour", IPageLayout.BOTTOM, TOUR_HEIGHT_PART, "left")
                    .addPlaceholder(TOUR_VIEW);
        }
        addFolder(layout, "right", IPageLayout.RIGHT, narrow ? NARROW_DRAWING_WIDTH_PART : DRAWING_WIDTH_PART,
                TARGET_VIEW, LIST_VIEW, RUNS_VIEW).ifPresent(folder -> folder.addPlaceholder(GUIDE_VIEW));
        Optional<IFolderLayout> bottom = addFolder(layout, "bottom", IPageLayout.BOTTOM, DRAWING_HEIGHT_PART,
                IPageLayout.ID_PROP_SHEET, FINDINGS_VIEW, COVERAGE_VIEW, WEAR_VIEW, ACCURACY_VIEW);
        if (narrow && bottom.isPresent()) {
            bottom.get().addView(IPageLayout.ID_OUTLINE);
            layout.addShowViewShortcut(IPageLayout.ID_OUTLINE);
        }
    }

    private static Optional<IFolderLayout> addFolder(IPageLayout layout, String folderId, int side, float part,
            String... wanted) {
        List<String> installed = Arrays.stream(wanted).filter(StackPerspective::isInstalled).toList();
        if (installed.isEmpty()) {
            return Optional.empty();
        }
        IFolderLayout folder = layout.createFolder(folderId, side, part, layout.getEditorArea());
        for (String id : installed) {
            folder.addView(id);
            layout.addShowViewShortcut(id);
        }
        return Optional.of(folder);
    }

    private static boolean isInstalled(String viewId) {
        return PlatformUI.getWorkbench().getViewRegistry().find(viewId) != null;
    }
}
