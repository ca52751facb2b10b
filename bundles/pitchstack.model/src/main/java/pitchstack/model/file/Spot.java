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

    /** Where the parser stands: just behind the tag or text that it has read. */
    Place place() {
        return new Place(locator.getLineNumber(), locator.getColumnNumber());
    }

    /** A failure at the end of what the parser has just read. */
    SAXException here(Problem problem, String sentence) {
        int end = text.offset(place());
        int next = tagStart(place());
        // Behind text the parser may have looked into the tag that follows.
        boolean within = text.text().indexOf('>', next) >= end;
        return at(within ? next : end, problem, sentence);
    }

    /** A failure at the start of the tag that the parser has just read. */
    SAXException tag(Problem problem, String sentence) {
        return at(tagStart(place()), problem, sentence);
    }

    /** A failure at an attribute of the tag that the parser has just read. */
    SAXException attribute(String name, Problem problem, String sentence) {
        return attribute(name, place(), problem, sentence);
    }

    /** A failure at an attribute of a tag that ends at a place. */
    SAXException attribute(String name, Place end, Problem problem, String sentence) {
        int start = tagStart(end);
        return at(new TagScanner(text.text(), start).attribute(name).orElse(start), problem, sentence);
    }

    private SAXException at(int offset, Problem problem, String sentence) {
        return new SAXException(new StackFileException(problem, text.file(), text.at(offset), sentence, null));
    }

    /** No "<" stands within a tag but at its start: in a value it has to be written as an entity. */
    private int tagStart(Place end) {
        return Math.max(0, text.text().lastIndexOf('<', text.offset(end) - 1));
    }
}
