// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PitchWayTest {
    private static final Scale MM = new LinearScale(LengthUnit.MM);
    private static final Scale INCH = new LinearScale(LengthUnit.INCH);

    @ParameterizedTest
    @CsvSource({"5 mm,5,MM", "4.9mm,4.9,MM", "5,5,MM", "0.24 in,0.24,INCH", "1/4 \",1/4,INCH", "module 1.5,1.5,MODULE",
        "1 mod,1,MODULE", "24 DP,24,DP", "dp 24,24,DP", "1/4 in CP,1/4,CP_INCH", "CP 6.35 mm,6.35,CP_MM", "5 CP,5,CP_MM"})
    void takesAPitchApart(String text, String number, PitchWay way) {
        assertEquals(Optional.of(new PitchWay.Parts(number, way)), PitchWay.split(text, MM));
        assertEquals(Pitch.parse(text).units(MM), Pitch.parse(way.join(number)).units(MM), "and it comes to the same again");
    }

    @Test
    void takesABareNumberAsTheUnitOfTheAxis() {
        assertEquals(Optional.of(new PitchWay.Parts("0.24", PitchWay.INCH)), PitchWay.split("0.24", INCH));
    }

    @ParameterizedTest
    @CsvSource({"5 furlongs", "200 thou", "soon", "''"})
    void leavesOtherTextsWhole(String text) {
        assertEquals(Optional.empty(), PitchWay.split(text, MM));
    }

    @Test
    void putsAWholePitchBackAsItIs() {
        assertEquals("module 1", PitchWay.MM.join("module 1"));
        assertEquals("200 thou", PitchWay.DP.join(" 200 thou "));
        assertEquals("24 DP", PitchWay.DP.join("24"));
        assertEquals("1 1/2 in CP", PitchWay.CP_INCH.join("1 1/2"));
    }

    @Test
    void offersWhatBelongsToTheAxis() {
        Scale turn = RotaryScale.dividing(List.of(360L));
        assertEquals(List.of(PitchWay.PER_TURN, PitchWay.DEGREES), PitchWay.of(turn));
        assertTrue(PitchWay.of(MM).contains(PitchWay.MODULE));
        assertEquals(Optional.of(new PitchWay.Parts("360", PitchWay.PER_TURN)), PitchWay.split("360 per turn", turn));
        assertEquals(Optional.of(new PitchWay.Parts("1.5", PitchWay.DEGREES)), PitchWay.split("1.5°", turn));
        assertEquals(Optional.empty(), PitchWay.split("1°01'", turn), "an angle with minutes is whole");
        assertEquals("1°", PitchWay.DEGREES.join("1"));
    }
}
