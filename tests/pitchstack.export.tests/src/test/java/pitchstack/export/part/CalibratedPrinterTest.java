// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.analysis.part.PartSet;
import pitchstack.analysis.part.RowReading;
import pitchstack.core.geometry.RowShape;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/**
 * The whole way of a scale: an invented printer makes the coupon, a caliper reads it by its plan, the readings go into a
 * file, and a row that is exported from that file comes out of the same printer as it was drawn.
 */
class CalibratedPrinterTest {
    /** What the printer does to every length along x and y of its bed, and what it lays on every face. */
    private static final BigDecimal SCALE_X = new BigDecimal("1.0032");
    private static final BigDecimal SCALE_Y = new BigDecimal("0.9985");
    private static final BigDecimal LAID_ON_MM = new BigDecimal("0.07");
    private static final double PITCH_MM = 4.9;
    private static final int TEETH = 40;

    @TempDir
    private Path folder;
    private RowReading.Ready row;

    @BeforeEach
    void measureTheCoupon() throws Exception {
        String spans = CouponPlan.spans().stream().map(CalibratedPrinterTest::measured).collect(Collectors.joining());
        Path file = Files.writeString(folder.resolve("stack.pitchstack"), "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<ps:Positioner xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:ps=\"pitchstack:model/1\">"
                + "<printSetups name=\"bed\">" + spans + "</printSetups>"
                + "<axes name=\"Slide\"><stages name=\"Fine\" pitch=\"4.9 mm\" source=\"printed\"><baseRow teeth=\"" + TEETH
                + "\" printSetup=\"bed\"/></stages></axes></ps:Positioner>");
        Positioner positioner = StackFile.load(file).positioner();
        row = PartSet.ready(PartSet.printed(positioner, positioner.getAxes())).get(0);
    }

    /** What the caliper shows over two posts and between them, and half the sum of both, as the plan says. */
    private static String measured(CouponPlan.Span span) {
        BigDecimal scale = span.direction().equals("x") ? SCALE_X : SCALE_Y;
        BigDecimal laidOn = LAID_ON_MM.add(LAID_ON_MM);
        BigDecimal over = BigDecimal.valueOf(span.overMm()).multiply(scale).add(laidOn);
        BigDecimal between = BigDecimal.valueOf(span.betweenMm()).multiply(scale).subtract(laidOn);
        BigDecimal half = over.add(between).divide(BigDecimal.valueOf(2));
        return "<spans direction=\"" + span.direction() + "\" drawn=\"" + BigDecimal.valueOf(span.drawnMm())
                + " mm\" measured=\"" + half.toPlainString() + " mm\"/>";
    }

    @Test
    void theFactorsUndoWhatThePrinterDoes() {
        assertTrue(row.scale().measuredX() && row.scale().measuredY());
        assertEquals(1 / SCALE_X.doubleValue(), row.scale().factorX(), 1e-12);
        assertEquals(1 / SCALE_Y.doubleValue(), row.scale().factorY(), 1e-12);
    }

    @Test
    void thePrintedPitchIsTheDrawnOneOverManyTeeth() throws Exception {
        PartFile<?> file = PartFile.of("Bench", List.of(row));
        List<double[]> corners = ReadThreeMf.corners(ReadThreeMf.elements(new ReadThreeMf(file.threeMf()).model(), "object")
                .findFirst().orElseThrow());
        double tip = corners.stream().mapToDouble(c -> c[1]).max().orElseThrow();
        double[] tips = corners.stream().filter(c -> c[1] == tip && c[2] == 0).mapToDouble(c -> c[0]).sorted().toArray();
        assertEquals(2 * TEETH, tips.length);
        for (int i = 1; i < TEETH; i++) {
            // From one flank to another of the same hand, so that what is laid on every face drops out; to a nanometre.
            assertEquals(i * PITCH_MM, (tips[2 * i] - tips[0]) * SCALE_X.doubleValue(), 1e-6);
        }
        // The height of the row is printed true as well, but for the lower and the upper face.
        RowShape shape = row.part().shape();
        double drawn = shape.bodyMm() + shape.form().addendumMm() - shape.form().floorMm();
        assertEquals(drawn, tip * SCALE_Y.doubleValue(), 1e-6);
    }
}
