// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/**
 * One command that was run, and what it left.
 *
 * @param code the exit code
 * @param out the text on the output stream, with line feeds
 * @param err the text on the error stream, with line feeds
 */
record CommandRun(int code, String out, String err) {
    /** Runs a command in this process. */
    static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(arguments, new PrintWriter(out), new PrintWriter(err));
        return new CommandRun(code, withLineFeeds(out), withLineFeeds(err));
    }

    /** The lines of the output without the blanks around them, and without the empty ones. */
    List<String> lines() {
        return out.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    private static String withLineFeeds(StringWriter text) {
        return text.toString().replace(System.lineSeparator(), "\n");
    }
}
