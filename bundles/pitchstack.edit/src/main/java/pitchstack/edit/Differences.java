// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;
import pitchstack.model.Target;

/** What one document says otherwise than another, in words. Elements are matched by their place in their list. */
public final class Differences {
    private final List<String> found = new ArrayList<>();

    private Differences() {
    }

    /** One short line for every difference, in the order of the file; empty where both say the same. */
    public static List<String> between(Positioner before, Positioner after) {
        Differences differences = new Differences();
        differences.compare("", before, after);
        return List.copyOf(differences.found);
    }

    private void compare(String place, EObject before, EObject after) {
        for (EStructuralFeature feature : before.eClass().getEAllStructuralFeatures()) {
            if (feature instanceof EAttribute attribute) {
                attribute(place, attribute, before.eGet(feature), after.eGet(feature));
            } else if (feature instanceof EReference reference && reference.isContainment()) {
                parts(place, reference, list(before.eGet(feature)), list(after.eGet(feature)));
            }
        }
    }

    private void attribute(String place, EAttribute attribute, Object before, Object after) {
        if (!Objects.equals(before, after)) {
            found.add(place + words(attribute.getName()) + ": " + text(before) + " → " + text(after));
        }
    }

    private void parts(String place, EReference reference, List<? extends EObject> before, List<? extends EObject> after) {
        int both = Math.min(before.size(), after.size());
        for (int i = 0; i < both; i++) {
            if (!EcoreUtil.equals(before.get(i), after.get(i))) {
                compare(place + title(reference, after.get(i), i) + ", ", before.get(i), after.get(i));
            }
        }
        for (int i = both; i < after.size(); i++) {
            found.add(place + title(reference, after.get(i), i) + " added");
        }
        for (int i = both; i < before.size(); i++) {
            found.add(place + title(reference, before.get(i), i) + " removed");
        }
    }

    private static List<? extends EObject> list(Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(EObject.class::cast).toList();
        }
        return value == null ? List.of() : List.of((EObject) value);
    }

    private static String title(EReference reference, EObject part, int number) {
        String name = part instanceof Axis axis ? axis.getName() : part instanceof Stage stage ? stage.getName()
                : part instanceof Target target ? target.getName() : null;
        String kind = words(part.eClass().getName());
        if (name != null && !name.isBlank()) {
            return kind + " “" + name + "”";
        }
        return reference.isMany() ? kind + " " + (number + 1) : words(reference.getName());
    }

    /** {@code baseRow} becomes “base row”. */
    private static String words(String name) {
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    private static String text(Object value) {
        return value == null || value.toString().isEmpty() ? "nothing" : value.toString();
    }
}
