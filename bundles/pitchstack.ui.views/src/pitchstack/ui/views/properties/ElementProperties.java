// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.properties;

import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.IPropertySource;
import pitchstack.edit.Properties;
import pitchstack.edit.Property;
import pitchstack.edit.Session;

/** The properties of one element of an open document; none once the element has left it. */
final class ElementProperties implements IPropertySource {
    private final EObject element;
    private List<Property> properties = List.of();

    /** @param element an element of any document, open or not */
    ElementProperties(EObject element) {
        this.element = element;
    }

    /** Reads the properties anew; values are then given as read here, until the next call. */
    @Override
    public IPropertyDescriptor[] getPropertyDescriptors() {
        properties = session().map(s -> Properties.of(s, element)).orElse(List.of());
        return properties.stream().map(PropertyField::new).toArray(IPropertyDescriptor[]::new);
    }

    @Override
    public Object getPropertyValue(Object id) {
        return property(id).map(PropertyField::valueOf).orElse("");
    }

    @Override
    public void setPropertyValue(Object id, Object value) {
        Session session = session().orElse(null);
        Property property = property(id).orElse(null);
        if (session == null || property == null || property.isDerived()) {
            return;
        }
        String typed = PropertyField.text(property, value);
        if (!typed.equals(property.text()) && property.enter(typed) instanceof Property.Entry.Accepted accepted) {
            session.run(accepted.edit());
        }
    }

    @Override
    public Object getEditableValue() {
        return element;
    }

    /** There is no default to go back to other than undo. */
    @Override
    public boolean isPropertySet(Object id) {
        return false;
    }

    @Override
    public void resetPropertyValue(Object id) {
        // never offered: see isPropertySet
    }

    private Optional<Session> session() {
        return Session.of(element);
    }

    private Optional<Property> property(Object id) {
        return properties.stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
