// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.Places;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.core.units.TrueMinus;

/** Findings for a person, the worst first. */
final class FindingsText {
    private final PrintWriter out;

    /** @param out takes the text */
    FindingsText(PrintWriter out) {
        this.out = out;
    }

    /**
     * Writes what was found, axis by axis, after one line that sums it up.
     *
     * @param title the title of the stack
     * @param analyses one for each axis
     */
    void write(String title, List<AxisAnalysis> analyses) {
        List<Finding> all = analyses.stream().flatMap(a -> a.findings().stream()).toList();
        out.println(title + ": " + counts(all) + ".");
        for (AxisAnalysis analysis : analyses) {
            for (Severity severity : Severity.values()) {
                for (Finding finding : analysis.findings()) {
                    if (finding.severity() == severity) {
                        write(analysis, finding);
                    }
                }
            }
        }
    }

    private void write(AxisAnalysis analysis, Finding finding) {
        String axis = finding.place().stage().isPresent() ? "axis “" + analysis.spec().name() + "”, " : "";
        out.println();
        out.println(capitalised(word(finding.severity())) + ", " + axis
                + Places.words(analysis.axis(), finding.place()) + ":");
        out.println("  " + TrueMinus.in(finding.sentence()));
    }

    /** How many there are of each severity: {@code 1 error, 2 warnings}; {@code nothing found} where there is none. */
    static String counts(List<Finding> findings) {
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = findings.stream().filter(f -> f.severity() == severity).count();
            if (count > 0) {
                counts.add(count + " " + word(severity) + (count == 1 ? "" : "s"));
            }
        }
        return counts.isEmpty() ? "nothing found" : String.join(", ", counts);
    }

    /** A severity as a word. */
    static String word(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }

    private static String capitalised(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
