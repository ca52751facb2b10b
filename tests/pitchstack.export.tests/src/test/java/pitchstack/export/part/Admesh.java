// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What ADMesh, a program of others that looks for faults in triangle meshes and mends them, says of an STL file.
 *
 * @param facets how many there are in the file
 * @param disconnected those with an edge that meets no other, as they are in the file
 * @param degenerate those without area
 * @param reversed those that point inwards
 * @param wrongNormals those whose normal is not that of their corners
 * @param backwards edges that two facets run along in the same direction
 * @param parts pieces that do not touch each other
 * @param volume in mm³, summed in 32 bits
 * @param box lowest and highest x, y and z
 */
record Admesh(int facets, int disconnected, int degenerate, int reversed, int wrongNormals, int backwards, int parts,
        double volume, double[] box) {
    private static final String NUMBER = "\\s*[:=]\\s*(-?[0-9.]+)";

    /** Opens a file. */
    static Admesh of(Path stl) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder("admesh", stl.toString()).redirectErrorStream(true);
        builder.environment().putAll(Map.of("LC_ALL", "C"));
        Process process = start(builder);
        String report = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        if (process.waitFor() != 0) {
            throw new AssertionError("admesh ended with " + process.exitValue() + ":\n" + report);
        }
        double[] box = new double[6];
        for (int i = 0; i < box.length; i++) {
            box[i] = number(report, (i < 3 ? "Min " : "Max ") + "XYZ".charAt(i % 3));
        }
        return new Admesh(count(report, "Number of facets"), count(report, "Total disconnected facets"),
                count(report, "Degenerate facets"), count(report, "Facets reversed"), count(report, "Normals fixed"),
                count(report, "Backwards edges"), count(report, "Number of parts"), number(report, "Volume"), box);
    }

    private static Process start(ProcessBuilder builder) {
        try {
            return builder.start();
        } catch (IOException absent) {
            throw new AssertionError("The tests of parts need admesh, which is not installed: apt install admesh", absent);
        }
    }

    private static int count(String report, String what) {
        return (int) number(report, what);
    }

    /** The first number after some words: in a row of two, that of the file before it is mended. */
    private static double number(String report, String what) {
        Matcher matcher = Pattern.compile(what + NUMBER).matcher(report);
        if (!matcher.find()) {
            throw new AssertionError("admesh said nothing of “" + what + "”:\n" + report);
        }
        return Double.parseDouble(matcher.group(1));
    }
}
