// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.ui.editor.places.Bands;

class BandsTest {
    /** Ruler and two gaps of 10, a body of 19 more than there are stages, and 10 + 2 · 8 for the rows of each. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 6, 8})
    void fitsTheHeightAsLongAsNamesCanBeRead(int stages) {
        int least = Bands.RULER + 2 * 10 + (stages + 1) * 19 + stages * (10 + 2 * Bands.STRIP);
        for (int height = least; height < 1500; height++) {
            assertTrue(Bands.of(stages, height).height() <= height, stages + " stages in " + height);
        }
        assertEquals(least, Bands.of(stages, least).height());
        assertEquals(least, Bands.of(stages, 50).height(), "lower than that it scrolls");
    }

    @Test
    void liftsAStageWithAllThatRidesOnItAndNothingElse() {
        Bands still = Bands.of(3, 600);
        Bands lifted = still.lifted(1, 1);
        int by = still.teeth() + 2;
        assertEquals(still.stageTop(2) - by, lifted.stageTop(2));
        assertEquals(still.riderTop(1) - by, lifted.riderTop(1));
        assertEquals(still.baseTop(1), lifted.baseTop(1), "the row below stays");
        assertEquals(still.baseTop(2) - by, lifted.baseTop(2), "a row on the lifted body goes along");
        assertEquals(still.stageTop(0), lifted.stageTop(0));
        assertEquals(still, still.lifted(0, 0));
        assertTrue(Bands.of(6, 350 + 10).height() <= 360, "six stages are seen in a window of usual size");
    }

    @Test
    void showsAllWhereThereIsRoom() {
        assertTrue(Bands.of(2, 400).roomy());
        assertFalse(Bands.of(6, 470).roomy());
    }
}
