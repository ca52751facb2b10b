// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.properties;

import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.eclipse.ui.views.properties.IPropertySource;
import org.eclipse.ui.views.properties.PropertySheet;
import pitchstack.edit.Session;

/**
 * Gives the Properties view what it shows: of an element its properties, of an editor in which nothing is selected
 * those of the whole positioner, and the page that shows them.
 */
public final class PropertyAdapters implements IAdapterFactory {
    @Override
    public <T> T getAdapter(Object adaptable, Class<T> type) {
        if (type == IPropertySource.class) {
            return type.cast(source(adaptable));
        }
        boolean page = type == IPropertySheetPage.class && adaptable instanceof PropertySheet;
        return page ? type.cast(new ElementSheetPage()) : null;
    }

    private static IPropertySource source(Object adaptable) {
        if (adaptable instanceof EObject element) {
            return new ElementProperties(element);
        }
        Session session = adaptable instanceof IEditorPart editor ? editor.getAdapter(Session.class) : null;
        return session == null ? null : new ElementProperties(session.positioner());
    }

    @Override
    public Class<?>[] getAdapterList() {
        return new Class<?>[] {IPropertySource.class, IPropertySheetPage.class};
    }
}
