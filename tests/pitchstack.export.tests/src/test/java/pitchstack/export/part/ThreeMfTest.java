// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.solid.RowSolid;

/** Against the 3MF core specification 1.4.0 of the 3MF Consortium, and the Open Packaging Conventions (ECMA-376, part 2). */
class ThreeMfTest {
    private static Schema schema() throws SAXException {
        return SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(ThreeMfTest.class.getResource("3mf-as-written.xsd"));
    }

    private static ReadThreeMf read(PartFile<?> file) throws Exception {
        return new ReadThreeMf(file.threeMf());
    }

    @Test
    void theModelIsValid() throws Exception {
        for (PartFile<?> file : List.of(SampleRows.both(), PartFile.coupon())) {
            ReadThreeMf read = read(file);
            schema().newValidator().validate(new StreamSource(new ByteArrayInputStream(read.bytes(read.modelPart()))));
        }
    }

    @Test
    void theSchemaFindsWhatIsWrong() throws Exception {
        ReadThreeMf read = read(SampleRows.file(SampleRows.small()));
        String model = new String(read.bytes(read.modelPart()), StandardCharsets.UTF_8);
        for (String[] change : new String[][] {{"millimeter", "inch"}, {"objectid=\"1\"", "objectid=\"2\""},
            {"v1=\"0\"", "v1=\"-1\""}, {"<build>", "<built>"}, {"x=\"0\"", "x=\"0,5\""}}) {
            String wrong = model.replace(change[0], change[1]);
            assertTrue(!wrong.equals(model), change[0]);
            assertThrows(SAXException.class, () -> schema().newValidator()
                    .validate(new StreamSource(new java.io.StringReader(wrong))), change[0]);
        }
    }

    @Test
    void thePackageLeadsToTheModelAndNamesTheTypeOfEveryPart() throws Exception {
        ReadThreeMf read = read(SampleRows.both());
        assertEquals(List.of("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"),
                read.entries().stream().map(ZipEntry::getName).toList());
        assertEquals("/3D/3dmodel.model", read.modelPart());
        Document types = read.xml("/[Content_Types].xml");
        assertEquals(Set.of("rels=application/vnd.openxmlformats-package.relationships+xml",
                "model=application/vnd.ms-package.3dmanufacturing-3dmodel+xml"),
                new HashSet<>(ReadThreeMf.elements(types, "Default")
                        .map(t -> t.getAttribute("Extension") + "=" + t.getAttribute("ContentType")).toList()));
    }

    @Test
    void everyMeshIsClosedOrientedAndOfTheVolumeOfItsRow() throws Exception {
        PartFile<RowSolid> file = SampleRows.both();
        List<Element> objects = ReadThreeMf.elements(read(file).model(), "object").toList();
        assertEquals(2, objects.size());
        for (int i = 0; i < objects.size(); i++) {
            List<double[]> corners = ReadThreeMf.corners(objects.get(i));
            List<int[]> triangles = ReadThreeMf.triangles(objects.get(i));
            Set<Long> edges = new HashSet<>();
            for (int[] t : triangles) {
                for (int k = 0; k < 3; k++) {
                    assertTrue(edges.add((long) t[k] << 32 | t[(k + 1) % 3]), "an edge runs one way once");
                }
            }
            assertTrue(edges.stream().allMatch(e -> edges.contains(Long.rotateLeft(e, 32))), "and back once");
            double volume = triangles.stream().mapToDouble(t -> six(corners.get(t[0]), corners.get(t[1]), corners.get(t[2])))
                    .sum() / 6;
            // Chords of arcs stand off by 2 µm at most, over less than 4 mm of arc a tooth and 80 mm of holes.
            assertEquals(file.plate().get(i).solid().volumeMm3(), volume, 0.002 * (4 * SampleRows.TEETH + 80) * 12);
        }
    }

    private static double six(double[] a, double[] b, double[] c) {
        return a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }

    @Test
    void thePitchMeasuredOverManyTeethIsTrueToANanometre() throws Exception {
        List<Element> objects = ReadThreeMf.elements(read(SampleRows.both()).model(), "object").toList();
        for (Side side : Side.values()) {
            List<double[]> corners = ReadThreeMf.corners(objects.get(side.ordinal()));
            double tip = side == Side.RIDER ? 0 : corners.stream().mapToDouble(c -> c[1]).max().orElseThrow();
            double[] tips = corners.stream().filter(c -> c[1] == tip && c[2] == 0).mapToDouble(c -> c[0]).sorted().toArray();
            assertEquals(2 * SampleRows.TEETH, tips.length);
            for (int i = 1; i < SampleRows.TEETH; i++) {
                double drawn = i * SampleRows.PITCH_MM * SampleRows.FACTOR_X;
                assertEquals(drawn, tips[2 * i] - tips[0], 1e-6);
                assertEquals(drawn, tips[2 * i + 1] - tips[1], 1e-6);
            }
        }
    }

    @Test
    void namesAndPlacesOfRowsAreInTheFile() throws Exception {
        PartFile<RowSolid> file = SampleRows.both();
        Document model = read(file).model();
        assertEquals(List.of("Rack & “fine”, base row", "Rack & “fine”, rider row"),
                ReadThreeMf.elements(model, "object").map(o -> o.getAttribute("name")).toList());
        List<String> transforms = ReadThreeMf.elements(model, "item").map(i -> i.getAttribute("transform")).toList();
        assertEquals("1 0 0 0 1 0 0 0 1 0 0 0", transforms.get(0));
        double second = Double.parseDouble(transforms.get(1).split(" ")[10]);
        assertEquals(file.plate().get(0).solid().extent().yMm() + 5, second, 1e-7);
        assertEquals("Bench <1>", ReadThreeMf.elements(model, "metadata").findFirst().orElseThrow().getTextContent());
    }

    @Test
    void theSameRowsGiveTheSameBytesInEveryTimeZone() {
        byte[] here = SampleRows.both().threeMf();
        TimeZone zone = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            assertArrayEquals(here, SampleRows.both().threeMf());
        } finally {
            TimeZone.setDefault(zone);
        }
    }
}
