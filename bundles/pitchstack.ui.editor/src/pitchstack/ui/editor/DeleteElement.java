// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jface.action.Action;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import pitchstack.edit.Edit;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.ui.editor.parts.Elements;
import pitchstack.ui.editor.parts.StopMark;

/** Takes the selected stage, target or worn range out of the document, or the selected stop off its axis. */
final class DeleteElement extends Action {
    private final Session session;
    private final IWorkbenchPartSite site;
    private final Supplier<Optional<StopMark>> stop;

    /** @param stop the stop that is selected in the drawing, if one is */
    DeleteElement(Session session, IWorkbenchPartSite site, Supplier<Optional<StopMark>> stop) {
        super("&Delete");
        this.session = session;
        this.site = site;
        this.stop = stop;
        setId(ActionFactory.DELETE.getId());
        setActionDefinitionId(ActionFactory.DELETE.getCommandId());
        setImageDescriptor(PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_DELETE));
        setEnabled(false);
    }

    private Optional<Edit> removal() {
        // A stop is selected in the drawing alone; elsewhere its axis stands for it.
        Optional<StopMark> selected = site.getPage().getActivePart() == site.getPart() ? stop.get() : Optional.empty();
        return selected.map(StopMark::removal).or(() -> Elements.selected(site.getPage().getSelection())
                .filter(element -> element.eResource() == session.document() && RemoveElement.canRemove(element))
                .map(RemoveElement::new));
    }

    void update() {
        setEnabled(removal().isPresent());
    }

    @Override
    public void run() {
        removal().ifPresent(session::run);
    }
}
