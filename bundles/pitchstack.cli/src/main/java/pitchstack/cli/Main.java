// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The command line. */
public final class Main {
    /** Wide enough for the examples in the help, narrow enough for half a screen. */
    private static final int HELP_WIDTH = 100;

    /** Nearly all work looks many times a second whether it is to stop. */
    private static final int LONGEST_END_SECONDS = 2;

    private Main() {
    }

    /**
     * Runs one command and ends the Java process with its exit code.
     *
     * @param arguments the command with its options
     */
    public static void main(String[] arguments) {
        PrintWriter out = Terminal.out();
        PrintWriter err = Terminal.err();
        Watch watch = new Watch(err, System::nanoTime);
        CountDownLatch answered = new CountDownLatch(1);
        // Ctrl+C begins the end of the process; the work is given the time to end as one that leaves nothing half done.
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            watch.cancel();
            if (!isEndedInTime(answered)) {
                new Complaints(err).say(StoppedException.SENTENCE);
            }
        }));
        int code = run(arguments, out, err, watch);
        answered.countDown();
        System.exit(code);
    }

    /** Some parts of the work, such as the heuristics of a library, cannot be stopped; the process ends all the same. */
    private static boolean isEndedInTime(CountDownLatch answered) {
        try {
            return answered.await(LONGEST_END_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            // Nobody interrupts the end of a process; it ends all the same.
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /**
     * Runs one command.
     *
     * @param arguments the command with its options
     * @param out where the answer goes
     * @param err where the one line goes that says what is wrong with the input
     * @return 0 reached or clean, 1 not reachable or findings, 2 bad input
     */
    public static int run(String[] arguments, PrintWriter out, PrintWriter err) {
        return run(arguments, out, err, new Watch(err, System::nanoTime));
    }

    /** The same with a watch by which the work can be stopped; it then returns 130. */
    static int run(String[] arguments, PrintWriter out, PrintWriter err, Watch watch) {
        CommandLine commandLine = new CommandLine(new PitchstackCommand(watch));
        Complaints complaints = new Complaints(err);
        commandLine.setOut(out).setErr(err)
                .setUsageHelpWidth(HELP_WIDTH).setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                // A file may be called @home.pitchstack; it is not a list of arguments.
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(complaints::notUnderstood)
                .setExecutionExceptionHandler(complaints::failed);
        int code = executed(commandLine, complaints, arguments);
        if (out.checkError()) {
            complaints.say("The answer could not be written; the disk is full or the reader has gone.");
            return ExitCode.BAD_INPUT;
        }
        return code;
    }

    /** Runs the command; what the parser's own handlers let through, such as a lack of memory, is a fault too. */
    private static int executed(CommandLine commandLine, Complaints complaints, String[] arguments) {
        try {
            return commandLine.execute(arguments);
        } catch (Exception | Error fault) {
            return complaints.fault(fault);
        }
    }
}
