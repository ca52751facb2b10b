// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import pitchstack.core.geometry.Point;

class GlyphsTest {
    @ParameterizedTest
    // Squares of each sign, counted on paper, and the holes that a reader sees in it.
    @CsvSource({"0,12,1", "1,8,0", "2,11,0", "3,11,0", "4,9,0", "5,11,0", "6,12,1", "7,7,0", "8,13,2", "9,12,1", "-,3,0"})
    void everySignCoversItsSquares(char sign, double squares, int holes) {
        Pocket pocket = Glyphs.of(sign);
        assertEquals(squares, pocket.areaMm2(), 1e-12);
        assertEquals(holes, pocket.islands().size());
        assertTrue(polygon(pocket).isValid());
        assertEquals(squares, polygon(pocket).getArea(), 1e-12);
    }

    @Test
    void arrowAndLettersAreSimpleOutlinesThatRunAnticlockwise() {
        for (Pocket pocket : List.of(Glyphs.arrow(), Glyphs.letterX(), Glyphs.letterY())) {
            assertTrue(polygon(pocket).isValid());
            assertEquals(polygon(pocket).getArea(), pocket.areaMm2(), 1e-12);
        }
    }

    @Test
    void thereIsNoOtherSign() {
        assertThrows(IllegalArgumentException.class, () -> Glyphs.of('A'));
    }

    private static Polygon polygon(Pocket pocket) {
        GeometryFactory factory = new GeometryFactory();
        return factory.createPolygon(ring(factory, pocket.rim()),
                pocket.islands().stream().map(island -> ring(factory, island)).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(GeometryFactory factory, List<Point> ring) {
        return factory.createLinearRing(Stream.concat(ring.stream(), ring.stream().limit(1))
                .map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
    }
}
