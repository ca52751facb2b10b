// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.ui.editor.parts.Elements;

/** Takes the selected stage, target or worn range out of the document. */
final class DeleteElement extends Action {
    private final Session session;
    private final IWorkbenchPartSite site;

    DeleteElement(Session session, IWorkbenchPartSite site) {
        super("&Delete");
        this.session = session;
        this.site = site;
        setId(ActionFactory.DELETE.getId());
        setActionDefinitionId(ActionFactory.DELETE.getCommandId());
        setImageDescriptor(PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_DELETE));
        setEnabled(false);
    }

    private Optional<EObject> removable() {
        return Elements.selected(site.getPage().getSelection())
                .filter(element -> element.eResource() == session.document() && RemoveElement.canRemove(element));
    }

    void update() {
        setEnabled(removable().isPresent());
    }

    @Override
    public void run() {
        removable().ifPresent(element -> session.run(new RemoveElement(element)));
    }
}
