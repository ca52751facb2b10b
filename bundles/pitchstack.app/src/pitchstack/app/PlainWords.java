// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import org.eclipse.ui.internal.WorkbenchMessages;
import org.eclipse.ui.internal.views.contentoutline.ContentOutlineMessages;

/**
 * Says in this program's words what the platform says in a programmer's: files instead of resources, the layout of the
 * window instead of a perspective. The platform has no other place to change these sentences, so its own texts are
 * replaced before the first window opens. A field that is missing in another version of it stops the build.
 */
final class PlainWords {
    private PlainWords() {
    }

    /** Replaces the texts, for as long as the program runs. */
    static void use() {
        ContentOutlineMessages.ContentOutline_noOutline =
                "Open a stack, or an example from Help > Welcome, and its parts are listed here.";
        WorkbenchMessages.Save_Resource = "Save Changes";
        WorkbenchMessages.EditorManager_saveResourcesTitle = "Save Changes";
        WorkbenchMessages.EditorManager_saveResourcesMessage = "Choose the &files to save:";
        WorkbenchMessages.ResetPerspective_title = "Reset Layout";
        WorkbenchMessages.ResetPerspective_message = "Put all views back where they were at the first start?";
        WorkbenchMessages.ResetPerspective_buttonLabel = "&Reset Layout";
        WorkbenchMessages.ResetPerspective_toolTip = "Put all views back where they were at the first start";
        WorkbenchMessages.RevertPerspective_title = "Reset Layout";
        WorkbenchMessages.RevertPerspective_message = "Put all views back where they were when the layout was kept?";
        WorkbenchMessages.RevertPerspective_option = "&Also forget what was changed in the layout";
    }
}
