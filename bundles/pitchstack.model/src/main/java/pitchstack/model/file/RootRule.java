// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.xml.sax.SAXException;
import pitchstack.model.PitchstackPackage;
import pitchstack.model.file.StackFileException.Problem;

/** What the root of a stack file is: one Positioner of this version of the model. */
record RootRule(Spot spot) {
    private static final String NAME = "Positioner";
    private static final Pattern VERSIONED = Pattern.compile("pitchstack:model/([1-9][0-9]{0,8})");

    /** Refuses any other root. */
    void check(String uri, String name) throws SAXException {
        if (uri.equals(PitchstackPackage.eNS_URI) && name.equals(NAME)) {
            return;
        }
        int known = version(PitchstackPackage.eNS_URI);
        int found = version(uri);
        if (found > known) {
            throw spot.tag(Problem.NEWER_VERSION, "This file was written by a newer Pitchstack (model " + found
                    + "); this one reads model " + known + ".");
        }
        if (name.equals("XMI")) {
            throw spot.tag(Problem.WRONG_CONTENT, "the root is a wrapper for several roots; a stack file has one root,"
                    + " a Positioner.");
        }
        String namespace = uri.isEmpty() ? "without a namespace" : "in the namespace " + Words.quote(uri);
        throw spot.tag(found == known ? Problem.WRONG_CONTENT : Problem.NOT_A_STACK_FILE, "the root is "
                + Words.quote(name) + " " + namespace + "; a stack file has one root, a Positioner in the namespace "
                + PitchstackPackage.eNS_URI + ".");
    }

    private static int version(String uri) {
        Matcher m = VERSIONED.matcher(uri);
        return m.matches() ? Integer.parseInt(m.group(1)) : 0;
    }
}
