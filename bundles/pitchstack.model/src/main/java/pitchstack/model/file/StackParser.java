// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFileException.Problem;

/** Reads the text of a stack file with a parser that opens nothing else: no DTD, no entity, no other file. */
final class StackParser {
    /** More than twice the depth of the model; the parser stops there before anything is built. */
    static final int MAX_DEPTH = 16;
    /** More than twice the attributes of a stage, which has the most. */
    static final int MAX_ATTRIBUTES = 64;
    private static final String APACHE = "http://apache.org/xml/features/";
    private static final String SAX = "http://xml.org/sax/features/";
    private static final String NO_LIMIT = "0";
    private static final String LIMIT = "http://www.oracle.com/xml/jaxp/properties/";

    private StackParser() {
    }

    /** The positioner in a text; nothing is returned unless all of it could be read. */
    static Positioner parse(StackText text) throws StackFileException {
        if (text.text().isBlank()) {
            throw new StackFileException(Problem.NOT_A_STACK_FILE, text.file(),
                    "the file is empty; a stack file holds one Positioner.", null);
        }
        Spot spot = new Spot(text);
        StackHandler handler = new StackHandler(spot);
        try {
            hardened().parse(new InputSource(new StringReader(text.text())), handler);
            return handler.positioner();
        } catch (SAXParseException e) {
            throw MalformedXml.explain(text, handler, e);
        } catch (SAXException e) {
            if (e.getException() instanceof StackFileException known) {
                throw known;
            }
            throw new IllegalStateException(e);
        } catch (ParserConfigurationException | IOException e) {
            // The text is in memory, and every Java 17 or later has the parser and its switches.
            throw new IllegalStateException(e);
        }
    }

    private static SAXParser hardened() throws ParserConfigurationException, SAXException {
        // The platform's own parser: another one on the class path might know none of these switches.
        SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
        factory.setXIncludeAware(false);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature(APACHE + "disallow-doctype-decl", true);
        factory.setFeature(APACHE + "nonvalidating/load-external-dtd", false);
        factory.setFeature(SAX + "external-general-entities", false);
        factory.setFeature(SAX + "external-parameter-entities", false);
        SAXParser parser = factory.newSAXParser();
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        parser.setProperty(LIMIT + "maxElementDepth", Integer.toString(MAX_DEPTH));
        parser.setProperty(LIMIT + "elementAttributeLimit", Integer.toString(MAX_ATTRIBUTES));
        // Without a DTD there are no entities but the five of XML, and the size of the file bounds how often they stand
        // there. Newer platforms count them all the same, and would refuse a long text with many quotation marks.
        for (String count : List.of("maxGeneralEntitySizeLimit", "totalEntitySizeLimit", "entityExpansionLimit")) {
            parser.setProperty(LIMIT + count, NO_LIMIT);
        }
        return parser;
    }
}
