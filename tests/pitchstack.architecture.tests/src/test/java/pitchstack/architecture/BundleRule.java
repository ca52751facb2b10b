// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import java.util.Set;

/**
 * What one bundle is and may use.
 *
 * @param name its symbolic name, also the name of its folder
 * @param packages the packages it may define, each with all below it
 * @param bundles the bundles of ours that it may use, and through them those that they may use
 * @param foreign the names, of packages or bundles of others, that it may use, each with all below it
 */
record BundleRule(String name, Set<String> packages, Set<String> bundles, Set<String> foreign) {
    /** Whether the bundle may define a class in a package. */
    boolean defines(String packageName) {
        return covers(packages, packageName);
    }

    /** Whether it may use a package or bundle of others. */
    boolean mayUseForeign(String other) {
        return covers(Set.of("java"), other) || covers(foreign, other);
    }

    private static boolean covers(Set<String> prefixes, String name) {
        return prefixes.stream().anyMatch(prefix -> name.equals(prefix) || name.startsWith(prefix + "."));
    }
}
