// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.properties;

import java.util.Locale;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.jface.viewers.ICellEditorValidator;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.views.properties.PropertyDescriptor;
import pitchstack.edit.Property;

/**
 * One line of the Properties view: a text to type, a choice, or a fact to read. The view hands values round as text,
 * or as the place among the choices where there are any.
 */
final class PropertyField extends PropertyDescriptor {
    private final Property property;

    PropertyField(Property property) {
        super(property.id(), capitalised(property.label()));
        this.property = property;
        setCategory(property.group());
        setDescription(property.tooltip());
        setAlwaysIncompatible(true);
        setValidator(validator(property));
        if (!property.choices().isEmpty()) {
            setLabelProvider(LabelProvider.createTextProvider(value -> text(property, value)));
        }
    }

    /** The value of a property as the view hands it round. */
    static Object valueOf(Property property) {
        return property.choices().isEmpty() ? property.text() : (Object) property.choices().indexOf(property.text());
    }

    /** The text that a value of the view stands for. */
    static String text(Property property, Object value) {
        if (value instanceof Integer place && !property.choices().isEmpty()) {
            return place >= 0 ? property.choices().get(place) : property.text();
        }
        return value.toString();
    }

    @Override
    public CellEditor createPropertyEditor(Composite parent) {
        if (property.isDerived()) {
            return null;
        }
        CellEditor editor = property.choices().isEmpty() ? new InsistentTextCellEditor(parent)
                : new ComboBoxCellEditor(parent, property.choices().toArray(String[]::new), SWT.READ_ONLY);
        editor.setValidator(getValidator());
        return editor;
    }

    private static ICellEditorValidator validator(Property property) {
        return value -> !property.isDerived()
                && property.enter(text(property, value)) instanceof Property.Entry.Refused refused
                        ? refused.sentence() : null;
    }

    private static String capitalised(String label) {
        return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
    }
}
