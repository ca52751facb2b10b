// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Who may use whom. A new bundle gets its line here before it gets its first class. */
final class BundleTable {
    /** Objects of the model are EMF objects, so whoever has them in hand meets EMF. */
    private static final Set<String> MODEL_TYPES = Set.of("org.eclipse.emf.common", "org.eclipse.emf.ecore");
    private static final Set<String> WINDOW = Set.of("org.eclipse.core", "org.eclipse.equinox", "org.eclipse.osgi",
            "org.osgi", "org.eclipse.swt", "org.eclipse.jface", "org.eclipse.ui");

    /** The bundles as they are meant to be. */
    static final BundleTable PITCHSTACK = new BundleTable(List.of(
            bundle("pitchstack.core", uses(), Set.of("org.jgrapht", "org.hipparchus",
                    "org.locationtech.jts")),
            bundle("pitchstack.model", uses(), and(MODEL_TYPES, "javax.xml", "org.xml.sax")),
            bundle("pitchstack.analysis", uses("pitchstack.core", "pitchstack.model"), MODEL_TYPES),
            bundle("pitchstack.edit", uses("pitchstack.model", "pitchstack.analysis"),
                    and(MODEL_TYPES, "org.eclipse.emf.edit")),
            bundle("pitchstack.export", uses("pitchstack.core", "pitchstack.model", "pitchstack.analysis"),
                    and(MODEL_TYPES, "org.apache.commons.csv", "org.knowm.xchart", "javax.imageio", "org.apache.pdfbox",
                            "org.apache.fontbox", "org.dhatim.fastexcel")),
            bundle("pitchstack.cli", uses("pitchstack.analysis", "pitchstack.export"),
                    and(MODEL_TYPES, "picocli", "com.google.gson")),
            bundle("pitchstack.ui.editor", uses("pitchstack.edit"), and(and(WINDOW, MODEL_TYPES),
                    "org.eclipse.emf.edit", "org.eclipse.gef", "org.eclipse.draw2d")),
            bundle("pitchstack.ui.views", uses("pitchstack.edit", "pitchstack.export"),
                    and(and(WINDOW, MODEL_TYPES), "org.eclipse.emf.edit", "org.eclipse.e4.core.contexts",
                            "org.commonmark")),
            bundle("pitchstack.help", uses(), Set.of()),
            bundle("pitchstack.app", uses("pitchstack.ui.editor", "pitchstack.ui.views", "pitchstack.cli"), WINDOW),
            // A fragment of GEF: two classes that GEF looks for under names of the platform.
            new BundleRule("pitchstack.gefcompat", Set.of("org.eclipse.jface.util", "org.eclipse.ui.internal"), uses(),
                    Set.of("org.eclipse.swt", "org.eclipse.core", "org.eclipse.gef"))));

    private final Map<String, BundleRule> rules = new LinkedHashMap<>();

    BundleTable(List<BundleRule> rules) {
        rules.forEach(rule -> this.rules.put(rule.name(), rule));
    }

    private static BundleRule bundle(String name, Set<String> bundles, Set<String> foreign) {
        return new BundleRule(name, Set.of(name), bundles, foreign);
    }

    private static Set<String> uses(String... bundles) {
        return Set.of(bundles);
    }

    private static Set<String> and(Set<String> some, String... more) {
        return and(some, Set.of(more));
    }

    private static Set<String> and(Set<String> some, Set<String> more) {
        return Stream.concat(some.stream(), more.stream()).collect(Collectors.toUnmodifiableSet());
    }

    /** The line of a bundle, empty where it has none. */
    Optional<BundleRule> rule(String bundle) {
        return Optional.ofNullable(rules.get(bundle));
    }

    /** All lines. */
    Iterable<BundleRule> rules() {
        return rules.values();
    }

    /** The bundle of ours whose package this is, empty for a package of others. */
    Optional<BundleRule> owner(String packageName) {
        return rules.values().stream().filter(rule -> rule.packages().contains(rule.name()))
                .filter(rule -> rule.defines(packageName)).findFirst();
    }

    /** The bundles of ours that a bundle may use: those of its line, and those that they may use. */
    Set<String> mayUse(String bundle) {
        Set<String> found = new LinkedHashSet<>();
        for (String direct : rules.get(bundle).bundles()) {
            found.add(direct);
            found.addAll(mayUse(direct));
        }
        return found;
    }
}
