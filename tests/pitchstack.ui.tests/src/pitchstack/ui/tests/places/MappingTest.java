// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Detail;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Mapping;

class MappingTest {
    private static final Extent REACH = new Extent(-2e14, 4e14);

    @Test
    void fitsTheReachBetweenLabelsAndEdge() {
        Mapping fit = Mapping.fit(REACH, 1000);
        assertEquals(Mapping.GUTTER + Mapping.MARGIN, fit.px(REACH.from()), 1e-9);
        assertEquals(1000 - Mapping.MARGIN, fit.px(REACH.to()), 1e-9);
        assertEquals(1000, fit.width(), "no scroll bar is needed");
    }

    @Test
    void goesThereAndBack() {
        Mapping mapping = Mapping.fit(REACH, 733).zoomed(40, 5e12, 733);
        for (double px = -500; px < 50_000; px += 317.3) {
            assertEquals(px, mapping.px(mapping.place(px)), 1e-6);
        }
    }

    @Test
    void zoomsWithinWhatIsUseful() {
        Mapping fit = Mapping.fit(REACH, 1000);
        assertEquals(2 * fit.pxPerCount(), fit.zoomed(2, 5e12, 1000).pxPerCount(), 1e-24);
        assertEquals(240 / 5e12, fit.zoomed(1e9, 5e12, 1000).pxPerCount(), 1e-20, "a tooth of the finest row 240 px wide");
        assertEquals(fit.pxPerCount() / 2, fit.zoomed(1e-9, 5e12, 1000).pxPerCount(), 1e-24);
        assertEquals(fit.pxPerCount(), fit.zoomed(9, 0, 1000).pxPerCount(), 1e-24, "without teeth nothing is to be seen closer");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 6})
    void layersABandForEveryStageWithoutGapOrOverlap(int stages) {
        for (int height = 100; height < 1500; height += 57) {
            Bands bands = Bands.of(stages, height);
            for (int stage = 0; stage < stages; stage++) {
                assertEquals(bands.stageTop(stage - 1), bands.stageTop(stage) + bands.stageHeight());
                assertEquals(bands.riderTop(stage), bands.stageTop(stage) + bands.body());
                assertEquals(bands.baseTop(stage) + Bands.STRIP, bands.stageTop(stage - 1), "the strip stands on the body below");
                assertEquals(bands.teeth(), bands.baseTop(stage) - bands.teethTop(stage));
            }
            assertTrue(bands.stageTop(stages - 1) >= Bands.RULER);
            assertTrue(bands.height() >= bands.stageTop(-1) + bands.body());
        }
        assertTrue(Bands.of(stages, 1200).height() <= 1200);
    }

    @ParameterizedTest
    @CsvSource({"2.99,false,10", "3,true,10", "0.5,false,10", "0.49,false,100", "0.05,false,100", "0.004,false,10000"})
    void drawsTeethFromThreePixelsAndTicksAtPowersOfTenBelow(double pitchPx, boolean teeth, int every) {
        assertEquals(teeth, new Detail(pitchPx).teeth());
        assertEquals(every, new Detail(pitchPx).tickEvery());
    }

    @ParameterizedTest
    @CsvSource({"40,40,1", "39,40,2", "10,40,5", "4.1,40,10", "1,40,50", "0.1,40,500"})
    void numbersTeethAsOftenAsTheNumbersHaveRoom(double pitchPx, double widthPx, int every) {
        assertEquals(every, new Detail(pitchPx).numberEvery(widthPx));
    }

    @Test
    void meetsAndJoinsStretches() {
        assertEquals(new Extent(3, 5), new Extent(0, 5).intersect(new Extent(3, 9)));
        assertTrue(new Extent(0, 5).intersect(new Extent(6, 9)).isEmpty());
        assertEquals(new Extent(0, 9), new Extent(0, 5).union(new Extent(6, 9)));
        assertFalse(new Extent(0, 5).isEmpty());
        assertEquals(2.5, new Extent(0, 5).middle());
    }
}
