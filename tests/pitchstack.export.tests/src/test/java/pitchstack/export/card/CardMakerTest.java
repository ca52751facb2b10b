// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.stack.Setting;
import pitchstack.model.Positioner;

/** What stands on a card, against sums done here. */
class CardMakerTest {
    @TempDir
    private Path folder;

    static List<Named<SettingCard>> cards() {
        return Cards.ofAllExamples();
    }

    /** 13 targets: 37.625 in ± 0.002 in lies midway between steps of 0.010 in, and 98 in beyond the stop at 96 in. */
    @Test
    void theFenceHasAllTargetsButTheTwoThatCannotBeSet() throws Exception {
        SettingCard card = Cards.ofExample("cross-cut-fence");
        assertEquals(13, card.entries().size());
        assertEquals(List.of(9, 13), card.entries().stream().filter(entry -> entry.way().isEmpty())
                .map(SettingCard.Entry::number).toList());
        assertTrue(card.entries().get(12).whyNot().contains("beyond the travel"), card.entries().get(12).whyNot());
    }

    /** 12 in is 48 teeth of 1/4 in; 9.76 in is 40 of them less one of 0.24 in. */
    @Test
    void countsAreThoseOfTheFenceWorkedOutByHand() throws Exception {
        SettingCard card = Cards.ofExample("cross-cut-fence");
        assertEquals(Setting.of(48, 0), setting(card, 0));
        assertEquals(Setting.of(40, -1), setting(card, 2));
    }

    @ParameterizedTest
    @MethodSource("cards")
    void stepsLeadFromEntryToEntryAndFromHomeToTheCountsThatStandThere(SettingCard card) {
        int[] at = card.home().toArray();
        for (SettingCard.Entry entry : card.entries()) {
            if (entry.way().isPresent()) {
                SettingCard.Way way = entry.way().get();
                int[] counts = way.fromPrevious().setting().toArray();
                assertEquals(Arrays.toString(counts), Arrays.toString(after(at, way.fromPrevious())), entry.name());
                way.fromHome().ifPresent(move -> assertEquals(Arrays.toString(counts),
                        Arrays.toString(after(card.home().toArray(), move)), entry.name()));
                assertEquals(card.axis().position(Setting.of(counts)), way.fromPrevious().position(), entry.name());
                assertTrue(Math.abs(way.fromPrevious().error()) <= entry.tolerance(), entry.name());
                at = counts;
            }
        }
    }

    private static int[] after(int[] from, PlannedSetting move) {
        int[] at = from.clone();
        move.steps().forEach(step -> {
            assertEquals(at[step.stage()], step.from());
            at[step.stage()] = step.to();
        });
        return at;
    }

    private static Setting setting(SettingCard card, int entry) {
        return card.entries().get(entry).way().orElseThrow().fromPrevious().setting();
    }

    /** 5 and 4.9 mm: one forward and one back is 0.1 mm; the rack has 2 base teeth and 1 rider tooth, so one step. */
    @Test
    void pocketTablesSayWhatCountsAreWorthAsFarAsRowsGo() throws Exception {
        Positioner positioner = Cards.read(folder, Texts.SMALL);
        SettingCard card = Cards.of(positioner, positioner.getAxes().get(0), StopOrder.GIVEN);
        long tenth = card.axis().scale().parse("0.1 mm");
        assertEquals(List.of(1, 2), card.pocket().get(0).rows().stream().map(PocketTable.Row::count).toList());
        assertEquals(Arrays.asList(50 * tenth, 49 * tenth), card.pocket().get(0).rows().get(0).travel());
        assertEquals(Arrays.asList(null, 98 * tenth), card.pocket().get(0).rows().get(1).travel());
        assertEquals(List.of(tenth), card.pocket().get(1).rows().get(0).travel());
    }

    @Test
    void homeIsTheNearestIndexToZeroThatTheRowsAllow() throws Exception {
        Positioner positioner = Cards.read(folder, Texts.SMALL.replace("start=\"0\"", "start=\"-3\" index=\"3\""));
        SettingCard card = Cards.of(positioner, positioner.getAxes().get(0), StopOrder.GIVEN);
        assertEquals(Setting.of(3, 0), card.home());
    }

    @Test
    void saysForWhichTemperatureAndCorrectionsItHolds() throws Exception {
        Positioner positioner = Cards.read(folder, Texts.SMALL.replace("unit=\"mm\"", "unit=\"mm\" temperatureC=\"24.5\"")
                .replace("pitch=\"4.9 mm\"", "pitch=\"4.9 mm\" correctionPpm=\"-120\" correctionUncertaintyPpm=\"30\""
                        + " correctionRun=\"r1\"")
                .replace("</axes>", "<runs id=\"r1\" date=\"2026-01-20\" temperatureC=\"21\"/></axes>"));
        SettingCard card = Cards.of(positioner, positioner.getAxes().get(0), StopOrder.GIVEN);
        assertTrue(card.holds().get(0).startsWith("For stages at 24.5 °C."), card.holds().get(0));
        assertEquals("Fine: pitch corrected by −120 ppm (standard uncertainty 30 ppm), measured 2026-01-20 at 21 °C.",
                card.holds().get(1));
    }
}
