// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** What ezdxf, a library of others that reads DXF of all releases, finds in a file; it runs in a Python of its own. */
public final class Ezdxf {
    /** The Python for which Debian installs its packages, whichever comes first on the path. */
    private static final String PYTHON = "/usr/bin/python3";
    private static final String ABSENT = "The tests of DXF files need ezdxf, which is not installed: apt install python3-ezdxf";

    private final List<String[]> facts;

    private Ezdxf(List<String[]> facts) {
        this.facts = facts;
    }

    /** Opens a file, which must be one that ezdxf can read. */
    public static Ezdxf of(String dxf) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("dxf");
        Path file = folder.resolve("drawing.dxf");
        Path script = folder.resolve("read.py");
        Path said = folder.resolve("said.txt");
        Path errors = folder.resolve("errors.txt");
        try (InputStream source = Ezdxf.class.getResourceAsStream("read.py")) {
            Files.copy(source, script);
            Files.writeString(file, dxf, StandardCharsets.US_ASCII);
            Process process = start(new ProcessBuilder(PYTHON, script.toString(), file.toString())
                    .redirectOutput(said.toFile()).redirectError(errors.toFile()));
            if (process.waitFor() != 0) {
                String error = Files.readString(errors);
                throw new AssertionError(error.contains("No module named 'ezdxf'") ? ABSENT
                        : "ezdxf cannot read the file:\n" + error);
            }
            return new Ezdxf(Files.readAllLines(said).stream().map(line -> line.split("\t", -1)).toList());
        } finally {
            for (Path path : List.of(file, script, said, errors, folder)) {
                Files.deleteIfExists(path);
            }
        }
    }

    private static Process start(ProcessBuilder builder) {
        try {
            return builder.start();
        } catch (IOException absent) {
            throw new AssertionError(ABSENT, absent);
        }
    }

    private Stream<String[]> facts(String kind) {
        return facts.stream().filter(fact -> fact[0].equals(kind));
    }

    /** The one fact of a kind whose first word is given, as numbers. */
    private double[] numbers(String kind, String name) {
        List<String[]> found = facts(kind).filter(fact -> name.isEmpty() || fact[1].equals(name)).toList();
        if (found.size() != 1) {
            throw new AssertionError("ezdxf found " + found.size() + " × " + kind + ' ' + name);
        }
        String[] fact = found.get(0);
        return Arrays.stream(fact).skip(name.isEmpty() ? 1 : 2).mapToDouble(Double::parseDouble).toArray();
    }

    /** What its audit finds wrong, mended or not. */
    public List<String> faults() {
        return facts("fault").map(fact -> fact[1]).toList();
    }

    /** The release, such as AC1009. */
    public String version() {
        return facts("version").findFirst().orElseThrow()[1];
    }

    /** Layers with their line types, such as {@code "CHAIN CENTER"}, in the order of the file. */
    public List<String> layers() {
        return facts("layer").map(fact -> fact[1] + ' ' + fact[2]).toList();
    }

    /** Every entity with its layer, such as {@code "LINE THIN"}, in the order of the file. */
    public List<String> entities() {
        return facts("entity").map(fact -> fact[1] + ' ' + fact[2]).toList();
    }

    /** Texts as they are shown. */
    public List<String> texts() {
        return facts("text").map(fact -> fact[3]).toList();
    }

    /** For each text its height and by how many degrees it is turned. */
    public List<String> letters() {
        return facts("text").map(fact -> Double.parseDouble(fact[1]) + " " + Double.parseDouble(fact[2])).toList();
    }

    /** Centre and radius of the circles of a layer. */
    public List<double[]> circles(String layer) {
        return facts("circle").filter(fact -> fact[1].equals(layer))
                .map(fact -> Arrays.stream(fact).skip(2).mapToDouble(Double::parseDouble).toArray()).toList();
    }

    /** The radii of the arcs in the polylines of a layer. */
    public double[] bends(String layer) {
        return facts("bend").filter(fact -> fact[1].equals(layer)).mapToDouble(fact -> Double.parseDouble(fact[2])).toArray();
    }

    /**
     * Lowest x and y, highest x and y of all that is not text.
     *
     * @param layer a layer, or {@code "all"}
     */
    public double[] reach(String layer) {
        return numbers("reach", layer);
    }

    /** The same of everything, as the head of the file has it. */
    public double[] stated() {
        return numbers("stated", "");
    }
}
