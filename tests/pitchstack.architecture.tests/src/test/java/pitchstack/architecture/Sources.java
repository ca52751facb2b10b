// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;

/** Writes and compiles a bundle of a few classes. What they use is compiled beside it, and is no part of it. */
final class Sources {
    private final Path bundle;
    private final Path others;
    private final List<String> own = new ArrayList<>();
    private final List<String> used = new ArrayList<>();

    private Sources(Path bundle, Path others) {
        this.bundle = bundle;
        this.others = others;
    }

    /** A bundle in a folder of bundles, and a folder elsewhere for what it uses. */
    static Sources write(Path bundles, String name, Path others) throws IOException {
        return new Sources(Files.createDirectories(bundles.resolve(name)), others);
    }

    /** A class {@code Uses} in a package, with a field of another class, in an array and through a method. */
    Sources use(String packageName, String other) throws IOException {
        String path = packageName.replace('.', '/') + "/Uses.java";
        own.add(put(bundle.resolve("src").resolve(path), "package " + packageName + "; class Uses { " + other
                + "[] used() { return null; } }"));
        int point = other.lastIndexOf('.');
        if (!other.startsWith("java")) {
            used.add(put(others.resolve(other.replace('.', '/') + ".java"), "package " + other.substring(0, point)
                    + "; public class " + other.substring(point + 1) + " { }"));
        }
        return this;
    }

    /** Compiles everything into the bundle's own folder of classes, and what it uses elsewhere. */
    void compile() throws IOException {
        Path usedClasses = Files.createDirectories(others.resolve("classes"));
        if (!used.isEmpty()) {
            compile(usedClasses, usedClasses, used);
        }
        compile(Files.createDirectories(bundle.resolve("target/classes")), usedClasses, own);
    }

    private static void compile(Path to, Path with, List<String> files) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> arguments = new ArrayList<>(List.of("-proc:none", "-d", to.toString(), "-cp", with.toString()));
        arguments.addAll(files);
        if (compiler.run(null, null, null, arguments.toArray(String[]::new)) != 0) {
            throw new IllegalStateException("The fixture does not compile: " + files);
        }
    }

    private static String put(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        try (Writer out = Files.newBufferedWriter(file)) {
            out.write(text);
        }
        return file.toString();
    }
}
