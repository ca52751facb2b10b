// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.edit.start.ShopDefaults.Key;
import pitchstack.edit.start.ShopDefaults.Theme;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;

/** What a person has chosen for all files. */
final class ShopDefaultsTest {
    @Test
    void beginsInTheUnitOfTheCountry() {
        assertEquals(DisplayUnit.INCH, ShopDefaults.of(Locale.US).unit());
        assertEquals(DisplayUnit.MM, ShopDefaults.of(Locale.GERMANY).unit());
    }

    @Test
    void isReadAsItWasKept() {
        ShopDefaults chosen = new ShopDefaults(DisplayUnit.INCH, true, new StageCosts(7, 0.25, 3), Theme.DARK, "0.6 mm",
                "250 mm");
        Map<String, String> kept = new HashMap<>();
        chosen.texts().forEach((key, text) -> kept.put(key.word(), text));
        assertEquals(chosen, ShopDefaults.read(kept::get, Locale.GERMANY));
    }

    @Test
    void takesTheUsualForWhatIsMissingOrSpoiled() {
        Map<String, String> kept = Map.of("unit", "FURLONG", "releaseSeconds", "-1", "theme", "DARK", "lineWidth", "wide");
        ShopDefaults usual = ShopDefaults.of(Locale.GERMANY);
        assertEquals(new ShopDefaults(usual.unit(), false, usual.costs(), Theme.DARK, usual.lineWidth(), usual.bed()),
                ShopDefaults.read(kept::get, Locale.GERMANY));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"RELEASE | -1 | from 0 to 3600", "RELEASE | NaN | from 0", "PER_TOOTH | 0,5 | comma",
        "REVERSAL | soon | not a number", "LINE_WIDTH | 0 | above 0", "LINE_WIDTH | 9 mm | at most 5 mm",
        "BED | 20 | from 50 mm", "BED | 2 feet | not a unit"})
    void saysWhyATextCannotBeKept(Key key, String text, String part) {
        Optional<String> complaint = ShopDefaults.complaint(key, text);
        assertTrue(complaint.orElse("").contains(part), complaint.toString());
    }

    @Test
    void beginsNewFilesWithWhatWasChosen() {
        Positioner positioner = new ShopDefaults(DisplayUnit.INCH, true, new StageCosts(7, 0.25, 3), Theme.DARK, "0.6 mm",
                "250 mm").newPositioner();
        assertEquals(DisplayUnit.INCH, positioner.getUnit());
        assertEquals("0.6 mm", positioner.getLineWidth());
        assertTrue(positioner.getAxes().get(0).getStages().stream().allMatch(stage -> stage.getReleaseSeconds() == 7
                && stage.getPerToothSeconds() == 0.25 && stage.getReversalSeconds() == 3));
    }

    @Test
    void gathersAUnitForALineWidthWithoutOne() {
        Map<Key, String> texts = ShopDefaults.of(Locale.GERMANY).texts();
        texts.put(Key.LINE_WIDTH, "0.5");
        texts.put(Key.BED, "10 in");
        assertEquals("0.5 mm", ShopDefaults.of(texts).lineWidth());
        assertEquals(254_000_000_000_000L, ShopDefaults.of(texts).bedLength());
    }
}
