// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page Preload, for the joints of {@link AccuracyDesk}; numbers by hand stand at {@link AccuracyViewTest}. */
class AccuracyTeethTest {
    private static final int HALF = 2;
    private static final int STRESS = 6;

    private AccuracyDesk desk;

    @BeforeEach
    void open(@TempDir Path folder) {
        desk = new AccuracyDesk(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void movesPreloadAndTeethAsTheLawSays() {
        desk.page("Preload");
        desk.awaits("For half of the flanks to bear it takes 580 N");
        desk.type("Preload", "582.5");
        desk.awaits("“582.5” is not allowed; give a whole number from");
        desk.type("Preload", "583");
        desk.awaits("At 583 N, 50 % of the flanks bear. The errors of the teeth leave the seat within ±0.015 mm"
                + " (95 %)");
        assertTrue(desk.says("At the preload set the root of a tooth bears 6.1 MPa"));
        desk.slide("Engaged teeth, slider", SWT.ARROW_RIGHT);
        desk.hands().until("a tooth more", () -> desk.named(Text.class, "Engaged teeth").getText().equals("21"));
        desk.awaits("For half of the flanks to bear it takes 610 N");
        desk.type("Engaged teeth", "20");
        desk.type("Scatter", "84.9");
        desk.awaits("For half of the flanks to bear it takes 1200 N");
        desk.hands().until("the chart is drawn", () -> desk.inked("Preload against bearing flanks and error"));
        desk.hands().picture(desk.shell(), "accuracy-preload");
        desk.push("As in the &File");
        desk.awaits("For half of the flanks to bear it takes 580 N");
    }

    /** A slot makes two leaves: each less than half as thick, so many times softer, and higher stressed. */
    @Test
    void showsWhatASlotSavesAndWhatItCosts() {
        desk.page("Preload");
        desk.awaits("For half of the flanks to bear it takes 580 N");
        double solid = desk.cell("Tooth", 0, HALF);
        desk.slide("Slot, slider", SWT.END);
        desk.hands().until("a slot", () -> !desk.named(Text.class, "Slot").getText().equals("0.00"));
        desk.hands().until("less preload", () -> desk.cell("Tooth", 0, HALF) < solid / 2);
        assertEquals(solid, desk.cell("Tooth", 1, HALF), 1e-9, "the solid tooth beside it stays");
        assertTrue(desk.cell("Tooth", 2, STRESS) > desk.cell("Tooth", 1, STRESS), "the slot costs strength");
    }

    /** At 20° and μ = 0.3: lifts at 1/0.0577 = 17.3 times the preload, and 54.8 % of it reaches the flanks. */
    @Test
    void tellsWhatFrictionDoes() {
        desk.page("Preload");
        desk.type("Preload", "100");
        desk.awaits("a force along the travel lifts the row when it is more than 1700 N; 55 % of the preload reaches"
                + " the flanks");
        desk.type("Friction", "0.4");
        desk.awaits("these flanks lock: no force along the travel, however large, lifts the row");
    }

    @Test
    void checksTheLawByChance() {
        desk.page("Preload");
        desk.awaits("For half of the flanks to bear it takes 580 N");
        desk.type("Preload", "583");
        desk.push("&Check by Chance");
        desk.awaitsWork("rows drawn by chance: ");
        assertTrue(desk.says("and 95 % of the seats lie within ±0.015 mm. The law is off by "));
    }

    @Test
    void stopsTheCheckByEscape() {
        desk.page("Preload");
        desk.type("Engaged teeth", "200");
        Button check = desk.hands().the(desk.shell(), Button.class, b -> b.getText().equals("&Check by Chance"));
        desk.hands().focus(check);
        check.notifyListeners(SWT.Selection, new Event());
        desk.hands().stroke(SWT.ESC);
        desk.awaits("Stopped.");
    }

    @Test
    void saysWhyTheTeethOfARingAreNotWorkedOut() {
        desk.open("ring", Stacks.table());
        desk.page("Preload");
        desk.awaits("The teeth of a ring are not worked out: the file has no radius");
        assertTrue(!desk.named(Text.class, "Preload").isEnabled());
        desk.page("Warmth");
        desk.awaits("Warmth makes no difference to an angle");
        desk.page("Budget");
        desk.awaits("″ of what is counted (95 %)");
    }
}
