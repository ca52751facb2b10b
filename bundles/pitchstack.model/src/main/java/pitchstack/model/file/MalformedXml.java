// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import org.xml.sax.SAXParseException;
import pitchstack.model.file.StackFileException.Problem;

/**
 * Says in our words why a parser refused a text. The parser's own are in the language of the machine, which no switch
 * changes, and name its switches; they stay in the cause.
 */
final class MalformedXml {
    private static final String DOCTYPE_REFUSED = "disallow-doctype-decl";
    /** How the parser's messages about its own limits begin. */
    private static final String LIMIT = "JAXP";

    private MalformedXml() {
    }

    /** The failure for what the parser reported. */
    static StackFileException explain(StackText text, StackHandler handler, SAXParseException e) {
        String said = String.valueOf(e.getMessage());
        Place place = new Place(e.getLineNumber(), e.getColumnNumber());
        if (said.contains(DOCTYPE_REFUSED)) {
            return failure(Problem.NOT_A_STACK_FILE, text, place, "this is a document type (DOCTYPE); a stack file has"
                    + " none, and none is read.", e);
        }
        if (said.startsWith(LIMIT)) {
            return failure(Problem.TOO_LARGE, text, place, "this goes past what is read: " + StackParser.MAX_DEPTH
                    + " elements deep, " + StackParser.MAX_ATTRIBUTES + " attributes in one element.", e);
        }
        if (handler.finished()) {
            return failure(Problem.WRONG_CONTENT, text, place, "something follows the end of the Positioner;"
                    + " a stack file has one root.", e);
        }
        if (!text.text().stripLeading().startsWith("<")) {
            return failure(Problem.NOT_A_STACK_FILE, text, text.at(0), "this is not XML; a stack file begins with"
                    + " <?xml and holds one Positioner.", e);
        }
        if (text.text().substring(text.offset(place)).isBlank()) {
            return failure(Problem.NOT_A_STACK_FILE, text, place, "the file breaks off here; the previous version may"
                    + " stand beside it as " + text.file().getFileName() + StackFile.BACKUP_SUFFIX + ".", e);
        }
        return failure(Problem.NOT_A_STACK_FILE, text, place, "this is not well-formed XML" + handler.within()
                + "; look for a missing tag or quotation mark, or a bare & or <, just before this place.", e);
    }

    private static StackFileException failure(Problem problem, StackText text, Place place, String sentence,
            SAXParseException cause) {
        return new StackFileException(problem, text.file(), place, sentence, cause);
    }
}
