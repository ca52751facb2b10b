// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {
    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "plan --help", "plan -h", "table --help", "coverage --help", "wear --help", "part --help",
            "check --help"})
    void tellsTheUsageWithExamplesAndExitCodes(String words) {
        CommandRun run = CommandRun.of(words.split(" "));
        assertEquals(0, run.code());
        assertEquals("", run.err());
        assertTrue(run.out().contains("Usage: pitchstack"), run.out());
        assertTrue(run.out().contains("Examples:\n  pitchstack "), run.out());
        assertTrue(run.out().contains("Exit codes: 0 "), run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 100), run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--at=X", "--by=D", "--axis", "--temperature", "--approach", "--from", "--tolerance",
        "--worn", "--alternatives", "--json", "FILE"})
    void namesEveryOptionOfPlan(String option) {
        assertTrue(CommandRun.of("plan", "--help").out().contains(option));
    }

    @Test
    void tellsItsVersion() {
        CommandRun run = CommandRun.of("--version");
        assertEquals(0, run.code());
        assertTrue(run.out().matches("Pitchstack \\d+\\.\\d+\\.\\d+(-SNAPSHOT)? \\(Java \\S+\\)\n"), run.out());
    }
}
