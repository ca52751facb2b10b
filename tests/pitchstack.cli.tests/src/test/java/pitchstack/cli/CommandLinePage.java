// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page of the user guide on the command line. Its examples are blocks marked {@code console}, in which a line that
 * begins with a dollar sign is a command, and the lines after it are what it prints.
 *
 * @param text the page with line feeds
 */
record CommandLinePage(String text) {
    /** Relative to the folder of the tests, where they run. */
    static final Path FILE = Path.of("../../bundles/pitchstack.help/docs/command-line.md");
    private static final Path EXAMPLES = Path.of("../../bundles/pitchstack.help/examples");
    private static final Pattern BLOCK = Pattern.compile("(?<=^```console\\n).*?(?=^```$)", Pattern.MULTILINE | Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"|(\\S+)");
    private static final String EXIT_CODE = "echo $?";

    /**
     * A command on the page.
     *
     * @param line the command line behind the dollar sign
     * @param printed the lines after it
     */
    record Shown(String line, String printed) {
        /** Whether it asks for the exit code of the command before it. */
        boolean asksForExitCode() {
            return line.equals(EXIT_CODE);
        }
    }

    /** Reads the page. */
    static CommandLinePage read() throws IOException {
        return new CommandLinePage(Files.readString(FILE).replace("\r\n", "\n"));
    }

    /** The commands of all blocks, in order. */
    List<Shown> commands() {
        List<Shown> commands = new ArrayList<>();
        Matcher block = BLOCK.matcher(text);
        while (block.find()) {
            commands.addAll(commands(block.group()));
        }
        return commands;
    }

    private static List<Shown> commands(String block) {
        List<Shown> commands = new ArrayList<>();
        for (String part : block.split("(?m)^\\$ ")) {
            if (!part.isEmpty()) {
                int end = part.indexOf('\n');
                commands.add(new Shown(part.substring(0, end), part.substring(end + 1)));
            }
        }
        return commands;
    }

    /** The page with what each command prints today. */
    String renewed() {
        return BLOCK.matcher(text).replaceAll(block -> {
            StringBuilder renewed = new StringBuilder();
            int code = -1;
            for (Shown shown : commands(block.group())) {
                CommandRun run = shown.asksForExitCode() ? new CommandRun(code, code + "\n", "") : run(shown.line());
                renewed.append("$ ").append(shown.line()).append('\n').append(run.out()).append(run.err());
                code = run.code();
            }
            return Matcher.quoteReplacement(renewed.toString());
        });
    }

    /** Runs a command line of the page as if the folder of the examples were the current one. */
    static CommandRun run(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1).replaceAll("\\\\(.)", "$1"));
        }
        if (!words.remove(0).equals("pitchstack")) {
            throw new IllegalArgumentException("Not a command of ours: " + line);
        }
        words.replaceAll(w -> Files.exists(EXAMPLES.resolve(w)) ? EXAMPLES.resolve(w).toString() : w);
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        String folder = EXAMPLES + "/";
        return new CommandRun(run.code(), run.out().replace(folder, ""), run.err().replace(folder, ""));
    }
}
