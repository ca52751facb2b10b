// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.ext.Locator2;
import pitchstack.model.file.StackFileException.Problem;

/**
 * Where the parser stands, and failures at that place. The parser only tells where a tag ends, so tags and attributes
 * are looked up in the text.
 */
final class Spot {
    private final StackText text;
    private Locator locator;

    Spot(StackText text) {
        this.text = text;
    }

    /** Takes over the parser's own idea of where it stands. */
    void follow(Locator parser) {
        locator = parser;
    }

    /** Refuses XML 1.1, whose control characters could not be saved again. */
    void requireVersion1() throws SAXException {
        if (locator instanceof Locator2 l && !"1.0".equals(l.getXMLVersion())) {
            throw at(0, Problem.NOT_A_STACK_FILE, "this is XML " + l.getXMLVersion() + "; a stack file is XML 1.0.");
        }
    }

    /** A failure where the parser stands. */
    SAXException here(Problem problem, String sentence) {
        return at(end(), problem, sentence);
    }

    /** A failure at the start of the tag that the parser has just read. */
    SAXException tag(Problem problem, String sentence) {
        return at(tagStart(), problem, sentence);
    }

    /** A failure at an attribute of the tag that the parser has just read. */
    SAXException attribute(String name, Problem problem, String sentence) {
        return at(attributeStart(name), problem, sentence);
    }

    /** The offset of an attribute of the tag that the parser has just read. */
    int attributeStart(String name) {
        int start = tagStart();
        return new TagScanner(text.text(), start).attribute(name).orElse(start);
    }

    /** A failure at an offset that was noted before. */
    SAXException at(int offset, Problem problem, String sentence) {
        return new SAXException(new StackFileException(problem, text.file(), text.at(offset), sentence, null));
    }

    private int end() {
        return text.offset(new Place(locator.getLineNumber(), locator.getColumnNumber()));
    }

    /** No "<" stands within a tag but at its start: in a value it has to be written as an entity. */
    private int tagStart() {
        int end = end();
        return Math.max(0, text.text().lastIndexOf('<', end - 1));
    }
}
