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
    /** Ruler and two gaps of 14, a body of 24 more than there are stages, and 14 + 2 · 8 for the rows of each. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 6, 8})
    void fitsTheHeightAsLongAsNamesCanBeRead(int stages) {
        int least = Bands.RULER + 2 * 14 + (stages + 1) * 24 + stages * (14 + 2 * Bands.STRIP);
        for (int height = least; height < 1500; height++) {
            assertTrue(Bands.of(stages, height).height() <= height, stages + " stages in " + height);
        }
        assertEquals(least, Bands.of(stages, least).height());
        assertEquals(least, Bands.of(stages, 50).height(), "lower than that it scrolls");
    }

    @Test
    void showsAllWhereThereIsRoom() {
        assertTrue(Bands.of(2, 400).roomy());
        assertFalse(Bands.of(6, 470).roomy());
    }
}
