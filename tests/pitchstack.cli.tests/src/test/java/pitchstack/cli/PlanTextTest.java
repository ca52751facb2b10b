// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person reads. The settings follow from 5 mm = 50 and 4.9 mm = 49 tenths: 50 a + 49 b with a = −b is a tenth. */
class PlanTextTest {
    @TempDir
    private Path folder;

    @Test
    void tellsEveryStepOfTheMoveAndWhatItCosts() throws Exception {
        CommandRun run = plan(StackTexts.COMMON_PRACTICE, "--at", "0.3mm");
        assertEquals(List.of("Test bench, axis “Slide”",
                "Now at: 0.000 mm (Rack 0; Fine 0)",
                "Target: 0.300 mm, tolerance 0.000 mm",
                "Reached: 0.300 mm, exactly on the target",
                "1. Rack: 3 teeth forward, from 0 to 3.",
                "2. Fine: 3 teeth back, from 0 to −3.",
                "Effort: 14 s"), run.lines());
        assertEquals(0, run.code());
        assertEquals("", run.err());
    }

    @Test
    void saysThatAStageGoesOneToothFurtherForItsApproach() throws Exception {
        CommandRun run = plan(StackTexts.COMMON_PRACTICE.replace("<axes ", "<axes approach=\"forward\" "), "--at", "0.3mm");
        assertEquals(List.of("1. Rack: 3 teeth forward, from 0 to 3.",
                "2. Fine: 4 teeth back, from 0 to −4, one tooth further than its place.",
                "3. Fine: 1 tooth forward, from −4 to −3, so that it ends moving forward.",
                "Effort: 16 s"), run.lines().subList(4, 8));
    }

    @Test
    void saysSoWhereNothingNeedsToMove() throws Exception {
        CommandRun run = plan(StackTexts.COMMON_PRACTICE, "--at", "0");
        assertEquals(List.of("Reached: 0.000 mm, exactly on the target",
                "Nothing to move: the stages stand there already."), run.lines().subList(3, 5));
        assertEquals(5, run.lines().size());
        assertEquals(0, run.code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--at -1mm --from -3,2", "--at=-1mm --from=-3,2", "--at -1mm --from -3,2 --axis slide",
        "--at −1 --from −3,+2", "--at -1000um --from=-3,2"})
    void takesNegativeNumbersWithAndWithoutAnEqualsSign(String options) throws Exception {
        CommandRun run = plan(StackTexts.COMMON_PRACTICE, options.split(" "));
        assertEquals(List.of("Now at: −5.200 mm (Rack −3; Fine 2)",
                "Target: −1.000 mm, tolerance 0.000 mm",
                "Reached: −1.000 mm, exactly on the target",
                "1. Rack: 7 teeth back, from −3 to −10.",
                "2. Fine: 8 teeth forward, from 2 to 10.",
                "Effort: 23 s"), run.lines().subList(1, 7));
        assertEquals(0, run.code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.01", "1.01in", "1 1/100", "1 1/100 in", "1-1/100in", "25.654mm", "25654 um"})
    void takesLengthsInEveryUnitAndInFractions(String length) throws Exception {
        // 1.01 in = 5 · 0.25 in − 0.24 in.
        CommandRun run = plan(StackTexts.INCH, "--at", length);
        assertEquals(List.of("Reached: 1.010 in, exactly on the target",
                "1. Rack: 5 teeth forward, from 0 to 5.",
                "2. Carriage: 1 tooth back, from 0 to −1.",
                "Effort: 14 s"), run.lines().subList(3, 7));
    }

    @Test
    void countsAnErrorOfTheToleranceItselfAsReached() throws Exception {
        // 0.15 mm lies 0.05 mm from (1, −1) and from (2, −2); the first costs 2 · 4 + 2 s, the second 2 · 4 + 4 s.
        CommandRun run = plan(StackTexts.COMMON_PRACTICE, "--at", "0.15", "--tolerance", "0.05");
        assertEquals(0, run.code());
        assertEquals("Reached: 0.100 mm, 0.050 mm below the target", run.lines().get(3));
        CommandRun tighter = plan(StackTexts.COMMON_PRACTICE, "--at", "0.15", "--tolerance", "0.049999999999");
        assertEquals(1, tighter.code());
        assertEquals("Not reachable: 0.150 mm lies between 0.100 mm and 0.200 mm; both are 0.050 mm away, "
                + "just over the tolerance.", tighter.lines().get(3));
    }

    @Test
    void givesBothNeighboursOfATargetBetweenSteps() throws Exception {
        CommandRun run = plan(StackTexts.COMMON_PRACTICE, "--at", "0.17mm", "--tolerance", "10um");
        assertEquals(List.of(
                "Not reachable: 0.170 mm lies between 0.100 mm and 0.200 mm; the nearer is 0.030 mm away, "
                        + "and the tolerance is 0.010 mm.",
                "Nearest below: 0.100 mm, 0.070 mm below the target",
                "1. Rack: 1 tooth forward, from 0 to 1.",
                "2. Fine: 1 tooth back, from 0 to −1.",
                "Effort: 10 s",
                "Nearest above: 0.200 mm, 0.030 mm above the target",
                "1. Rack: 2 teeth forward, from 0 to 2.",
                "2. Fine: 2 teeth back, from 0 to −2.",
                "Effort: 12 s"), run.lines().subList(3, 12));
        assertEquals(1, run.code());
        assertEquals("", run.err());
    }

    @Test
    void namesTheEndOfTheTravelForATargetBeyondIt() throws Exception {
        // 90 · 5 mm + 20 · 4.9 mm = 548 mm; −10 · 5 mm − 20 · 4.9 mm = −148 mm.
        CommandRun above = plan(StackTexts.COMMON_PRACTICE, "--at", "600");
        assertEquals(List.of("Not reachable: 600.000 mm is beyond the travel; the highest position that can be set is "
                + "548.000 mm.", "Nearest below: 548.000 mm, 52.000 mm below the target"), above.lines().subList(3, 5));
        assertEquals("Nearest above: none", above.lines().get(above.lines().size() - 1));
        assertEquals(1, above.code());
        CommandRun below = plan(StackTexts.COMMON_PRACTICE, "--at", "-150");
        assertEquals(List.of("Not reachable: −150.000 mm is beyond the travel; the lowest position that can be set is "
                + "−148.000 mm.", "Nearest below: none", "Nearest above: −148.000 mm, 2.000 mm above the target"),
                below.lines().subList(3, 6));
        assertEquals(1, below.code());
    }

    @Test
    void listsAlternativesAndSaysWhereThereAreNoMore() throws Exception {
        CommandRun run = plan(StackTexts.COMMON_PRACTICE, "--at", "0.15", "--tolerance", "0.05", "--alternatives", "3");
        assertEquals(List.of("Alternative 1: 0.200 mm, 0.050 mm above the target",
                "1. Rack: 2 teeth forward, from 0 to 2.",
                "2. Fine: 2 teeth back, from 0 to −2.",
                "Effort: 12 s",
                "No more settings come within tolerance."), run.lines().subList(7, 12));
        assertEquals(12, run.lines().size());
        CommandRun none = plan(StackTexts.COMMON_PRACTICE, "--at", "0.1", "--alternatives", "1");
        assertEquals("No other setting comes within tolerance.", none.lines().get(none.lines().size() - 1));
        CommandRun enough = plan(StackTexts.COMMON_PRACTICE, "--at", "0.15", "--tolerance", "0.05", "--alternatives", "1");
        assertEquals(11, enough.lines().size());
    }

    @Test
    void warnsOfWornTeethAndTellsWhatRefusingThemCosts() throws Exception {
        // 0.1 mm takes the rack to index 1, over the worn tooth. Off it, with the rack at 6 or more, (6, −6) is next above.
        CommandRun avoiding = plan(StackTexts.WORN, "--at", "0.1");
        assertEquals(0, avoiding.code());
        assertTrue(avoiding.lines().contains(
                "Caution: This stands on worn teeth of “Rack”; check the position before you rely on it."), avoiding.out());
        CommandRun never = plan(StackTexts.WORN, "--at", "0.1", "--worn", "never");
        assertEquals(1, never.code());
        assertEquals("Not reachable: 0.100 mm could be set only over teeth that may not be used; the nearest positions "
                + "that can be set are −3.000 mm and 0.600 mm.", never.lines().get(3));
        assertTrue(never.lines().contains("Over worn teeth the target can be reached: --worn avoid"), never.out());
    }

    @Test
    void readsAndShowsAnglesOnARotaryAxis() throws Exception {
        CommandRun run = plan(StackTexts.ROTARY, "--at", "0°01'");
        assertEquals(List.of("Reached: 0°01'00\", exactly on the target",
                "1. Ring: 1 tooth back, from 0 to −1.",
                "2. Sector: 1 tooth forward, from 0 to 1."), run.lines().subList(3, 6));
    }

    @Test
    void plansOnTheAxisThatIsNamed() throws Exception {
        CommandRun run = plan(StackTexts.TWO_AXES, "--axis", "Y", "--at", "10");
        assertEquals("Test bench, axis “Y”", run.lines().get(0));
        assertEquals("1. Rack: 2 teeth forward, from 0 to 2.", run.lines().get(4));
        assertEquals(0, run.code());
    }

    private CommandRun plan(String stack, String... options) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("plan", StackTexts.write(folder, stack)));
        arguments.addAll(List.of(options));
        return CommandRun.of(arguments.toArray(String[]::new));
    }
}
