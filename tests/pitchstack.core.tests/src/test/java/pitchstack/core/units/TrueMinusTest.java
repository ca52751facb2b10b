// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TrueMinusTest {
    @Test
    void writesSignsAndLeavesDashes() {
        assertEquals("−44.100 mm", TrueMinus.in("-44.100 mm"));
        assertEquals("−18 to −3", TrueMinus.in("-18 to -3"));
        assertEquals("[−1, 2, −30]", TrueMinus.in("[-1, 2, -30]"));
        assertEquals("run-1 of 2026-11-25, −.5", TrueMinus.in("run-1 of 2026-11-25, -.5"));
        assertEquals("print set-up", TrueMinus.in("print set-up"));
    }
}
