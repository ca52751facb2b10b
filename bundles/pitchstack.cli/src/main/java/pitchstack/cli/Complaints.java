// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in one line what is wrong with the input. */
final class Complaints {
    /** Set to anything, it makes an unexpected fault show where it came from. */
    private static final String DEBUG = "PITCHSTACK_DEBUG";

    private final PrintWriter err;

    /** @param err the error stream */
    Complaints(PrintWriter err) {
        this.err = err;
    }

    /** Writes one sentence as one line. */
    void say(String sentence) {
        err.println("pitchstack: " + String.join(" ", sentence.strip().split("\\s*\\R\\s*")));
        err.flush();
    }

    /** The command line itself is wrong. */
    int notUnderstood(ParameterException e, String[] arguments) {
        say(e instanceof UnmatchedArgumentException unmatched ? unmatched(unmatched, arguments)
                : sentence(e.getMessage()) + seeHelp(e));
        return ExitCode.BAD_INPUT;
    }

    private static String unmatched(UnmatchedArgumentException e, String[] arguments) {
        String first = e.getUnmatched().get(0);
        if (first.startsWith("-")) {
            List<String> similar = e.getSuggestions();
            return "There is no option " + first + (similar.isEmpty() ? "." : "; did you mean " + similar.get(0) + "?")
                    + seeHelp(e);
        }
        if (e.getCommandLine().getParent() == null) {
            return "There is no command “" + first + "”; " + (first.endsWith(".pitchstack")
                    ? "to open a file in the window: pitchstack --window " + first
                    : "write " + commands(e.getCommandLine()) + ".");
        }
        return "“" + first + "” is one word too many" + (continuesLength(first, arguments)
                ? "; put a length with a space in it in quotation marks, like \"37 5/8in\"." : "." + seeHelp(e));
    }

    /** All commands as a sentence names them: {@code plan, table or check}. */
    static String commands(CommandLine program) {
        List<String> names = List.copyOf(program.getSubcommands().keySet());
        int last = names.size() - 1;
        return String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    private static String sentence(String message) {
        String text = message.strip();
        return text.endsWith(".") ? text : text + ".";
    }

    private static String seeHelp(ParameterException e) {
        return " See " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help";
    }

    /** Whether an argument looks like the rest of a length whose beginning was taken by the option before it. */
    private static boolean continuesLength(String argument, String[] arguments) {
        int i = Arrays.asList(arguments).indexOf(argument);
        return i >= 2 && arguments[i - 1].matches("(--[a-z]+=)?[+-]?[0-9.]+")
                && argument.matches("[0-9]+/[0-9]+.*|[a-zA-Zµμ°\"]+");
    }

    /** The command was understood and then failed. */
    int failed(Exception e, CommandLine commandLine, ParseResult parsed) {
        if (e instanceof BadInputException) {
            say(e.getMessage());
            return ExitCode.BAD_INPUT;
        }
        if (e instanceof StoppedException) {
            say(e.getMessage());
            return ExitCode.STOPPED;
        }
        return fault(e);
    }

    /** Something that should not happen. */
    int fault(Throwable fault) {
        say("This is a fault in Pitchstack, not in what you typed (" + fault + "). Please report it with the command "
                + "and the file; with " + DEBUG + "=1 set it shows where it came from.");
        if (System.getenv(DEBUG) != null) {
            fault.printStackTrace(err);
            err.flush();
        }
        return ExitCode.BAD_INPUT;
    }
}
