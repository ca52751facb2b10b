// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A folder of bundles, one folder each, as they lie in the source tree after a build.
 *
 * @param bundles the folder
 * @param table who may use whom
 */
record Folders(Path bundles, BundleTable table) {
    /** What is wrong in any of the bundles. */
    SortedSet<String> complaints() throws IOException {
        SortedSet<String> complaints = new TreeSet<>();
        for (Path folder : list()) {
            String name = folder.getFileName().toString();
            Optional<BundleRule> rule = table.rule(name);
            if (rule.isEmpty()) {
                complaints.add("There is no line for the bundle " + name
                        + ": add it to BundleTable, with what it may use.");
            } else {
                complaints.addAll(complaints(folder, rule.get()));
            }
        }
        return complaints;
    }

    /** The folders of the bundles, by name. */
    List<Path> list() throws IOException {
        try (Stream<Path> folders = Files.list(bundles)) {
            return folders.filter(Files::isDirectory).sorted().toList();
        }
    }

    private SortedSet<String> complaints(Path folder, BundleRule rule) throws IOException {
        SortedSet<String> complaints = new TreeSet<>();
        Path manifest = folder.resolve("META-INF").resolve("MANIFEST.MF");
        if (Files.exists(manifest)) {
            complaints.addAll(new ManifestRules(table).complaints(rule, manifest));
        }
        Path classes = folder.resolve("target").resolve("classes");
        if (has(classes, ".class")) {
            complaints.addAll(new ClassRules(table).complaints(rule, classes));
        } else if (has(folder, ".java")) {
            complaints.add(rule.name() + " is not built: run the whole reactor to its end, this test is the last.");
        }
        return complaints;
    }

    private static boolean has(Path folder, String ending) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.anyMatch(file -> file.toString().endsWith(ending));
        }
    }
}
