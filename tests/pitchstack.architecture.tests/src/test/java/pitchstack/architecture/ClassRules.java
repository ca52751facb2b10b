// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Holds the bytecode of a bundle against the table.
 *
 * @param table who may use whom
 */
record ClassRules(BundleTable table) {
    /** What is wrong in a folder of class files, one sentence for each use or place. */
    SortedSet<String> complaints(BundleRule bundle, Path classes) {
        SortedSet<String> complaints = new TreeSet<>();
        for (JavaClass one : new ClassFileImporter().importPath(classes)) {
            if (!bundle.defines(one.getPackageName())) {
                complaints.add(one.getName() + " stands in " + bundle.name() + ", whose classes belong in "
                        + String.join(" or ", new TreeSet<>(bundle.packages())) + ".");
            }
            for (Dependency dependency : one.getDirectDependenciesFromSelf()) {
                JavaClass used = dependency.getTargetClass().getBaseComponentType();
                complaint(bundle, one.getPackageName(), used).ifPresent(why -> complaints.add(bundle.name() + ": "
                        + one.getName() + " uses " + used.getName() + ", which " + why + "."));
            }
        }
        return complaints;
    }

    private Optional<String> complaint(BundleRule bundle, String from, JavaClass used) {
        String to = used.getPackageName();
        if (used.isPrimitive() || bundle.defines(to)) {
            return bundle.name().equals("pitchstack.core") && !used.isPrimitive()
                    ? CoreOrder.complaint(from, to) : Optional.empty();
        }
        Optional<BundleRule> owner = table.owner(to);
        if (owner.isPresent()) {
            String name = owner.get().name();
            return table.mayUse(bundle.name()).contains(name) ? Optional.empty()
                    : Optional.of("belongs to " + name + ": the arrow from " + bundle.name() + " is not in the table");
        }
        return bundle.mayUseForeign(to) ? Optional.empty()
                : Optional.of("is not among what " + bundle.name() + " may use");
    }
}
