// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Small stack files, written as text. In each, releasing a stage costs 4 s and a tooth 1 s, which is what a file that
 * says nothing means.
 */
final class StackTexts {
    /** 100 base teeth under 20, 10 of them engaged at least: indices from 10 − 20 = −10 to 100 − 10 = 90. */
    static final String RACK = stage("Rack", "5 mm", 0, 100, "");
    /** 40 base teeth under 20 that start at the tenth: indices from 10 − 20 − 10 = −20 to 40 − 10 − 10 = 20. */
    static final String FINE = stage("Fine", "4.9 mm", 10, 40, "");
    /** "Common practice, no source": a 5 mm step forward and a 4.9 mm step back advance 0.1 mm. */
    static final String COMMON_PRACTICE = positioner("mm", axis("Slide", "linear", RACK + FINE));
    /** Base tooth 5 of the rack is worn; the rider covers it at every index from 5 − 19 = −14 to 5. */
    static final String WORN = positioner("mm", axis("Slide", "linear",
            stage("Rack", "5 mm", 0, 100, "<worn first=\"5\" last=\"5\"/>") + FINE));
    /** As the cross-cut fence: 1/4 in circular pitch below, 0.24 in above, positions in inches. */
    static final String INCH = positioner("in", axis("Fence", "linear",
            stage("Rack", "1/4 in CP", 0, 100, "") + stage("Carriage", "0.24 in", 10, 40, "")));
    /** A ring of 360 teeth, and a sector with teeth 1°01' apart; 60 base teeth under 20: indices −30 to 30. */
    static final String ROTARY = positioner("mm", axis("Table", "rotary",
            stage("Ring", "360 per turn", 20, 60, "") + stage("Sector", "1°01'", 20, 60, "")));
    /** Two axes, X and Y. */
    static final String TWO_AXES = positioner("mm", axis("X", "linear", RACK + FINE) + axis("Y", "linear", RACK));

    /** A warning: with equal pitches one forward and one back moves nothing. */
    static final String WARNED = COMMON_PRACTICE.replace("4.9 mm", "5 mm").replace("\"Fine\"", "\"Fine\" source=\"printed\"");
    /** A note: the datum, 0, lies outside the stops; one tooth of the rack, 5 mm, lies inside. */
    static final String NOTED = withStops(COMMON_PRACTICE);

    private StackTexts() {
    }

    static String positioner(String unit, String axes) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<ps:Positioner xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:ps=\"pitchstack:model/1\""
                + " title=\"Test bench\" unit=\"" + unit + "\">\n" + axes + "</ps:Positioner>\n";
    }

    static String axis(String name, String kind, String stages) {
        return "<axes name=\"" + name + "\" kind=\"" + kind + "\" tolerance=\"0\">\n" + stages + "</axes>\n";
    }

    static String stage(String name, String pitch, int start, int baseTeeth, String worn) {
        return "<stages name=\"" + name + "\" pitch=\"" + pitch + "\" start=\"" + start + "\" minimumEngaged=\"10\">"
                + "<baseRow teeth=\"" + baseTeeth + "\">" + worn + "</baseRow><riderRow teeth=\"20\"/></stages>\n";
    }

    /** Stops at 1 and 100 mm, with the carriage at 5 mm between them. */
    static String withStops(String text) {
        return text.replace("tolerance=", "low=\"1 mm\" high=\"100 mm\" tolerance=")
                .replace("name=\"Rack\"", "name=\"Rack\" index=\"1\"");
    }

    /** Writes a text as a stack file and tells its name. */
    static String write(Path folder, String text) throws IOException {
        Path file = folder.resolve("bench.pitchstack");
        return Files.writeString(file, text).toString();
    }
}
