// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reads 3MF with the JDK's ZIP and XML readers, by the relationships of the package. */
final class ReadThreeMf {
    private static final String MODEL = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";

    private final Map<String, byte[]> parts = new LinkedHashMap<>();
    private final List<ZipEntry> entries = new ArrayList<>();

    ReadThreeMf(byte[] file) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put("/" + entry.getName(), zip.readAllBytes());
                entries.add(entry);
            }
        }
    }

    List<ZipEntry> entries() {
        return entries;
    }

    Document xml(String part) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(parts.get(part)));
    }

    /** The part that the start relationship leads to. */
    String modelPart() throws Exception {
        return elements(xml("/_rels/.rels"), "Relationship").filter(r -> r.getAttribute("Type").equals(MODEL))
                .map(r -> r.getAttribute("Target")).findFirst().orElseThrow();
    }

    byte[] bytes(String part) {
        return parts.get(part);
    }

    Document model() throws Exception {
        return xml(modelPart());
    }

    static Stream<Element> elements(Document document, String name) {
        return list(document.getElementsByTagNameNS("*", name));
    }

    static Stream<Element> elements(Element parent, String name) {
        return list(parent.getElementsByTagNameNS("*", name));
    }

    private static Stream<Element> list(NodeList nodes) {
        return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i));
    }

    /** Corners of an object, three numbers each. */
    static List<double[]> corners(Element object) {
        return elements(object, "vertex").map(v -> Stream.of("x", "y", "z").map(v::getAttribute)
                .mapToDouble(Double::parseDouble).toArray()).toList();
    }

    /** Triangles of an object, three indices each. */
    static List<int[]> triangles(Element object) {
        return elements(object, "triangle").map(t -> Stream.of("v1", "v2", "v3").map(t::getAttribute)
                .mapToInt(Integer::parseInt).toArray()).toList();
    }
}
