// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.util.Arrays;
import java.util.List;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;

/**
 * The one arrangement of the window: the drawing in the middle, target and outline on its right, findings and properties
 * below. Views are named by id, so the plug-ins that bring them need not be known here; one that is not installed is
 * left out.
 */
public final class StackPerspective implements IPerspectiveFactory {

    /** Id of this perspective. */
    public static final String ID = "pitchstack.app.perspective.stack";

    private static final String TARGET_VIEW = "pitchstack.ui.views.target";
    private static final String FINDINGS_VIEW = "pitchstack.ui.views.findings";
    /** Part of the width, and of the height, that the drawing keeps. */
    private static final float DRAWING_PART = 0.68f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        addFolder(layout, "right", IPageLayout.RIGHT, TARGET_VIEW, IPageLayout.ID_OUTLINE);
        addFolder(layout, "bottom", IPageLayout.BOTTOM, IPageLayout.ID_PROP_SHEET, FINDINGS_VIEW);
    }

    private static void addFolder(IPageLayout layout, String folderId, int side, String... wanted) {
        List<String> installed = Arrays.stream(wanted).filter(StackPerspective::isInstalled).toList();
        if (installed.isEmpty()) {
            return;
        }
        IFolderLayout folder = layout.createFolder(folderId, side, DRAWING_PART, layout.getEditorArea());
        for (String id : installed) {
            folder.addView(id);
            layout.addShowViewShortcut(id);
        }
    }

    private static boolean isInstalled(String viewId) {
        return PlatformUI.getWorkbench().getViewRegistry().find(viewId) != null;
    }
}
