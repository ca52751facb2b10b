// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Holds the manifest of a plug-in against the table: what it asks for at run time, used or not.
 *
 * @param table who may use whom
 */
record ManifestRules(BundleTable table) {
    /** One clause of a header: its name, then attributes whose quoted values may hold commas. */
    private static final Pattern CLAUSE = Pattern.compile("\\s*([^,;\"]+)((?:;[^,;\"=]+=(?:\"[^\"]*\"|[^,;\"]*))*)\\s*(?:,|$)");

    /** What is wrong in a manifest, one sentence for each name. */
    SortedSet<String> complaints(BundleRule bundle, Path manifest) throws IOException {
        SortedSet<String> complaints = new TreeSet<>();
        Attributes headers = read(manifest);
        for (String header : List.of("Require-Bundle", "Import-Package", "Fragment-Host", "DynamicImport-Package")) {
            for (String name : names(headers.getValue(header))) {
                if (!mayUse(bundle, name)) {
                    complaints.add(bundle.name() + ": " + header + " names " + name + ", which is not among what "
                            + bundle.name() + " may use.");
                }
            }
        }
        String own = String.join("", names(headers.getValue("Bundle-SymbolicName")));
        if (!own.equals(bundle.name())) {
            complaints.add(bundle.name() + ": the manifest names the bundle " + own + ", not as its folder.");
        }
        return complaints;
    }

    private static Attributes read(Path manifest) throws IOException {
        try (InputStream in = Files.newInputStream(manifest)) {
            return new Manifest(in).getMainAttributes();
        }
    }

    /** The names in a header, without versions and directives. */
    static List<String> names(String header) {
        List<String> names = new ArrayList<>();
        Matcher m = CLAUSE.matcher(header == null ? "" : header);
        while (m.lookingAt() && m.end() > m.start()) {
            names.add(m.group(1).strip());
            m.region(m.end(), m.regionEnd());
        }
        if (header != null && m.regionStart() != header.length()) {
            throw new IllegalArgumentException("A header that cannot be read: " + header);
        }
        return names;
    }

    private boolean mayUse(BundleRule bundle, String name) {
        return table.owner(name).map(BundleRule::name)
                .map(owner -> owner.equals(bundle.name()) || table.mayUse(bundle.name()).contains(owner))
                .orElseGet(() -> bundle.mayUseForeign(name));
    }
}
