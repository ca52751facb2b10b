// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pitchstack.cli.CommandLinePage.Shown;

/**
 * The user guide must show what the program does. That what it prints is right is for the other tests to say; this one
 * keeps the page from growing old. After a change of the program, run it with {@code -Dpage.renew=true} and read what
 * has become of the page.
 */
class CommandLinePageTest {
    @Test
    void everyExitCodeOnThePageHolds() throws Exception {
        List<Shown> commands = CommandLinePage.read().commands();
        TreeSet<Integer> codes = new TreeSet<>();
        for (int i = 0; i < commands.size(); i++) {
            if (commands.get(i).asksForExitCode()) {
                Shown before = commands.get(i - 1);
                int code = Integer.parseInt(commands.get(i).printed().strip());
                assertEquals(code, CommandLinePage.run(before.line()).code(), before.line());
                codes.add(code);
            }
        }
        assertEquals(new TreeSet<>(List.of(0, 1, 2)), codes, "the page shows every exit code");
    }

    @Test
    void everyCommandOnThePagePrintsWhatStandsThere() throws Exception {
        CommandLinePage page = CommandLinePage.read();
        if (Boolean.getBoolean("page.renew")) {
            Files.writeString(CommandLinePage.FILE, page.renewed());
            return;
        }
        assertTrue(page.commands().size() > 1);
        assertEquals(page.text(), page.renewed());
    }

    @Test
    void thePageNamesEveryOption() throws Exception {
        String page = CommandLinePage.read().text();
        List<String> missing = new ArrayList<>();
        for (String command : List.of("plan", "table", "coverage", "wear", "check", "budget", "fit", "evaluate", "draw",
                "card", "part")) {
            CommandRun help = CommandRun.of(command, "--help");
            help.out().lines().map(String::strip).filter(line -> line.startsWith("--"))
                    .map(line -> line.split("[= ,]")[0]).filter(option -> !page.contains("`" + option))
                    .forEach(missing::add);
        }
        assertEquals(List.of(), missing);
    }
}
