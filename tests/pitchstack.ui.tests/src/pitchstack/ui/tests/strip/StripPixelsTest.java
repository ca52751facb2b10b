// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pitchstack.core.coverage.Reached;
import pitchstack.ui.views.coverage.strip.Column;
import pitchstack.ui.views.coverage.strip.StripPixels;
import pitchstack.ui.views.coverage.strip.StripPixels.Paint;

/** What can be told apart without colour: how high a column is filled, and whether it is hatched. */
class StripPixelsTest {
    private static final int HEIGHT = 50;

    private static int filled(Column column) {
        StripPixels pixels = new StripPixels(new Column[] {column}, HEIGHT);
        int filled = 0;
        for (int y = 0; y < HEIGHT; y++) {
            filled += pixels.at(0, y) == Paint.GROUND || pixels.at(0, y) == Paint.MIXED ? 0 : 1;
        }
        return filled;
    }

    private static Set<Paint> paints(Column column) {
        StripPixels pixels = new StripPixels(new Column[] {column}, HEIGHT);
        Set<Paint> paints = EnumSet.noneOf(Paint.class);
        for (int y = 0; y < HEIGHT; y++) {
            paints.add(pixels.at(0, y));
        }
        return paints;
    }

    @Test
    void tellsTheKindsApartByHeight() {
        int clean = filled(Column.of(Reached.CLEAN));
        int worn = filled(Column.of(Reached.WORN));
        int not = filled(Column.of(Reached.NOT));
        assertEquals(HEIGHT, clean);
        assertTrue(worn < 0.7 * clean && worn > 0.5 * clean, worn + " of " + clean);
        assertTrue(not > 0 && not < 0.15 * clean, not + " of " + clean);
        assertEquals(0, filled(Column.OUTSIDE));
    }

    @Test
    void hatchesWhatIsReachedOnlyOverWornTeeth() {
        assertTrue(paints(Column.of(Reached.WORN)).containsAll(Set.of(Paint.HATCH, Paint.WORN)));
        assertEquals(Set.of(Paint.CLEAN), paints(Column.of(Reached.CLEAN)));
    }

    @Test
    void stacksTheSharesOfAMixedColumn() {
        Column mixed = new Column(0.4, 0.2, 0.4);
        assertEquals(26, filled(mixed), "0.4 of 50, and 0.2 of a hatched bar of 30");
        StripPixels pixels = new StripPixels(new Column[] {mixed}, HEIGHT);
        assertEquals(Paint.CLEAN, pixels.at(0, 49));
        assertEquals(Paint.CLEAN, pixels.at(0, 30));
        assertTrue(EnumSet.of(Paint.HATCH, Paint.WORN).contains(pixels.at(0, 29)));
        assertTrue(EnumSet.of(Paint.HATCH, Paint.WORN).contains(pixels.at(0, 24)));
        assertEquals(Paint.MIXED, pixels.at(0, 23));
        assertEquals(Paint.MIXED, pixels.at(0, 4), "0.4 of 50 are not reached");
        assertEquals(Paint.GROUND, pixels.at(0, 3));
    }

    /** Crossed lines both ways, over the full height, are neither the hatching of worn teeth nor the flat line. */
    @Test
    void crossesWhatIsLost() {
        assertEquals(Set.of(Paint.LOST, Paint.GROUND), paints(Column.LOST));
        Column mixed = new Column(0.4, 0, 0.4, 0.2);
        StripPixels pixels = new StripPixels(new Column[] {mixed}, HEIGHT);
        assertEquals(Paint.CLEAN, pixels.at(0, 30));
        assertTrue(EnumSet.of(Paint.LOST, Paint.GROUND).contains(pixels.at(0, 29)), "0.2 of 50 are lost");
        assertTrue(EnumSet.of(Paint.LOST, Paint.GROUND).contains(pixels.at(0, 20)));
        assertEquals(Paint.MIXED, pixels.at(0, 19));
    }

    @Test
    void leadsFromMixedToPureWithoutAJump() {
        assertEquals(filled(Column.of(Reached.WORN)), filled(new Column(0, 1 - 1e-9, 1e-9)));
        assertEquals(filled(Column.of(Reached.CLEAN)), filled(new Column(1 - 1e-9, 1e-9, 0)));
    }
}
