// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.mark;
import static pitchstack.core.Stacks.row;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected numbers are counted by hand on a row of 10 base teeth, 0 to 9, and a rider of 4. */
class RowPairTest {
    private final RowPair rows = new RowPair(row(10), row(4), 3, 2);

    @ParameterizedTest
    @CsvSource({"0, 3, 6, 0, 3", "-3, 0, 3, 0, 3", "-5, 0, 1, 2, 3", "3, 6, 9, 0, 3", "4, 7, 9, 0, 2", "5, 8, 9, 0, 1"})
    void engagesTheTeethThatLieOverEachOther(int index, int firstBase, int lastBase, int firstRider, int lastRider) {
        assertEquals(new ToothSpan(firstBase, lastBase), rows.engagedBase(index));
        assertEquals(new ToothSpan(firstRider, lastRider), rows.engagedRider(index));
    }

    @ParameterizedTest
    @CsvSource({"-7", "7", "-100", "100"})
    void engagesNothingWhereTheRowsDoNotMeet(int index) {
        assertTrue(rows.engagedBase(index).isEmpty());
        assertTrue(rows.engagedRider(index).isEmpty());
        assertEquals(0, rows.engagedBase(index).count());
    }

    @ParameterizedTest
    @CsvSource({"1, -6, 6", "2, -5, 5", "3, -4, 4", "4, -3, 3", "0, -6, 6", "-9, -6, 6"})
    void rangesOverTheIndicesThatEngageEnough(int minimum, int first, int last) {
        IndexRange range = new RowPair(row(10), row(4), 3, minimum).indices();
        assertEquals(new IndexRange(first, last), range);
        assertEquals(last - first + 1, range.count());
    }

    @Test
    void hasNoIndexWhereMoreTeethAreAskedThanTheShorterRowHas() {
        assertEquals(IndexRange.EMPTY, new RowPair(row(10), row(4), 3, 5).indices());
        assertEquals(IndexRange.EMPTY, new RowPair(row(4), row(10), 3, 5).indices());
        assertEquals(IndexRange.EMPTY, new RowPair(row(10), row(0), 3, 1).indices());
    }

    @Test
    void rangesOverARiderLongerThanItsBase() {
        // 4 base teeth under 10 rider teeth, all 4 engaged: the rider's first tooth stands over base tooth −6 to 0.
        RowPair overhanging = new RowPair(row(4), row(10), -2, 4);
        assertEquals(new IndexRange(-4, 2), overhanging.indices());
        assertEquals(new ToothSpan(6, 9), overhanging.engagedRider(-4));
        assertEquals(new ToothSpan(0, 3), overhanging.engagedRider(2));
    }

    @Test
    void countsAMarkOnlyWhileItsTeethAreEngaged() {
        RowPair marked = new RowPair(row(10, mark(8, 8, Wear.WORN)), row(4, mark(0, 0, Wear.BARRED)), 3, 2);
        // The rider covers [3 + n, 6 + n], so base tooth 8 from n = 2 on; rider tooth 0 hangs free below n = −3.
        assertEquals(Wear.CLEAN, marked.wearAt(-4));
        assertEquals(Wear.BARRED, marked.wearAt(-3));
        RowPair baseOnly = new RowPair(marked.base(), row(4), 3, 2);
        assertEquals(Wear.CLEAN, baseOnly.wearAt(1));
        for (int n = 2; n <= 5; n++) {
            assertEquals(Wear.WORN, baseOnly.wearAt(n));
        }
    }

    @Test
    void doesNotCountMarksOutsideTheRow() {
        RowPair marked = new RowPair(row(10, mark(10, 20, Wear.BARRED), mark(-5, -1, Wear.BARRED)),
                row(4, mark(4, 9, Wear.BARRED), mark(2, 1, Wear.BARRED)), 3, 2);
        for (int n = -5; n <= 5; n++) {
            assertEquals(Wear.CLEAN, marked.wearAt(n));
        }
    }

    @Test
    void takesTheWorstOfMarksThatOverlap() {
        RowPair marked = new RowPair(row(10, mark(5, 8, Wear.WORN), mark(8, 9, Wear.BARRED)), row(4), 3, 2);
        assertEquals(Wear.WORN, marked.wearAt(0));
        assertEquals(Wear.BARRED, marked.wearAt(2));
    }

    @Test
    void keepsSpansStraight() {
        ToothSpan span = new ToothSpan(2, 5);
        assertEquals(4, span.count());
        assertTrue(span.contains(new ToothSpan(2, 5)));
        assertTrue(span.contains(new ToothSpan(9, 3)));
        assertFalse(span.contains(new ToothSpan(1, 5)));
        assertTrue(span.meets(new ToothSpan(5, 9)));
        assertFalse(span.meets(new ToothSpan(6, 9)));
        assertEquals(new ToothSpan(0, 3), span.shift(-2));
    }

    @Test
    void clampsAnIndexIntoARange() {
        IndexRange range = new IndexRange(-3, 4);
        assertEquals(-3, range.clamp(-9));
        assertEquals(4, range.clamp(9));
        assertEquals(0, range.clamp(0));
        assertTrue(range.contains(-3) && range.contains(4));
        assertFalse(range.contains(5));
    }

    @Test
    void knowsWhereTheRowsMeetByASingleTooth() {
        // A rider of 4 on a base of 10 that starts at 2: its last tooth over the first, or its first over the last.
        RowPair rows = new RowPair(row(10), row(4), 2, 3);
        assertEquals(new IndexRange(-5, 7), rows.meeting());
        assertEquals(1, rows.engagedBase(-5).count());
        assertEquals(1, rows.engagedBase(7).count());
        assertTrue(rows.engagedBase(-6).isEmpty() && rows.engagedBase(8).isEmpty());
        assertEquals(IndexRange.EMPTY, new RowPair(row(0), row(4), 2, 3).meeting());
    }
}
