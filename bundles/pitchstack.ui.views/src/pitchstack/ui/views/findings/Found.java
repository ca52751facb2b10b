// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EObject;
import pitchstack.analysis.Places;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.edit.Session;
import pitchstack.model.Axis;

/**
 * A finding with the axis it was made on.
 *
 * @param axis the axis
 * @param where the place in words; names the axis where the positioner has several
 * @param finding what was found
 */
record Found(Axis axis, String where, Finding finding) {
    /** All findings of a document, the worst first, otherwise in the order of the axes and their stages. */
    static List<Found> in(Session session) {
        List<Found> all = new ArrayList<>();
        List<Axis> axes = session.positioner().getAxes();
        for (Axis axis : axes) {
            for (Finding finding : session.analysis(axis).findings()) {
                all.add(new Found(axis, where(axis, finding, axes.size() > 1), finding));
            }
        }
        all.sort(Comparator.comparing(found -> found.finding().severity()));
        return all;
    }

    private static String where(Axis axis, Finding finding, boolean several) {
        String place = Places.words(axis, finding.place());
        boolean named = !several || finding.place().stage().isEmpty();
        return named ? place : "axis “" + axis.getName() + "”, " + place;
    }

    /** The element that the finding is about. */
    EObject element() {
        return Places.element(axis, finding.place());
    }

    /** The severity in a word. */
    String severity() {
        return switch (finding.severity()) {
            case ERROR -> "Error";
            case WARNING -> "Warning";
            case NOTE -> "Note";
        };
    }

    /** The line that is copied: the columns with tabs between them. */
    String line() {
        return String.join("\t", severity(), where, finding.sentence(), finding.value(), finding.limit());
    }

    /** How many there are of each severity, in words: {@code 1 error, 2 warnings}. */
    static String count(List<Found> all) {
        List<String> parts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long n = all.stream().filter(found -> found.finding().severity() == severity).count();
            if (n > 0) {
                parts.add(n + " " + severity.name().toLowerCase(Locale.ROOT) + (n == 1 ? "" : "s"));
            }
        }
        return String.join(", ", parts);
    }
}
