// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import pitchstack.ui.editor.files.RecentFiles;

/** The files used last, as entries of a menu. */
public final class RecentMenu extends CompoundContributionItem {
    @Override
    protected IContributionItem[] getContributionItems() {
        List<IContributionItem> items = new ArrayList<>();
        for (Path file : new RecentFiles().list()) {
            items.add(new ActionContributionItem(open(items.size() + 1, file)));
        }
        if (items.isEmpty()) {
            Action none = new Action("No file has been opened yet") { };
            none.setEnabled(false);
            items.add(new ActionContributionItem(none));
        }
        return items.toArray(IContributionItem[]::new);
    }

    private static Action open(int number, Path file) {
        // The platform reads & as the mark of a mnemonic, and text after @ as an accelerator.
        String name = (file.getFileName() + "  –  " + file.getParent()).replace("&", "&&").replace("@", "@@");
        return new Action((number < RecentFiles.MOST ? "&" + number : "1&0") + "  " + name) {
            @Override
            public void run() {
                IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
                new Opening(window).file(file);
            }
        };
    }
}
