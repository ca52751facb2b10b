// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import pitchstack.core.plan.Progress;

/**
 * Tells a person who waits how far a long piece of work is, in lines of the error stream, and lets it be stopped. Short
 * work says nothing.
 */
final class Watch implements Progress {
    private static final long FIRST_NS = TimeUnit.SECONDS.toNanos(1);
    private static final long EACH_NS = TimeUnit.SECONDS.toNanos(3);

    private final PrintWriter err;
    private final LongSupplier nanoTime;
    private boolean begun;
    private long next;
    private volatile boolean cancelled;

    /**
     * @param err the error stream
     * @param nanoTime a clock that counts nanoseconds
     */
    Watch(PrintWriter err, LongSupplier nanoTime) {
        this.err = err;
        this.nanoTime = nanoTime;
    }

    /** Ends the work without a result, from any thread. */
    void cancel() {
        cancelled = true;
    }

    @Override
    public boolean isCancelled() {
        return cancelled;
    }

    /** The work has several parts, each of which counts from 0. */
    @Override
    public void done(long part, long of) {
        long now = nanoTime.getAsLong();
        if (!begun) {
            begun = true;
            next = now + FIRST_NS;
        }
        if (now - next < 0 || of <= 0) {
            return;
        }
        next = now + EACH_NS;
        int percent = (int) (100.0 * part / of);
        err.println("pitchstack: still working" + (percent == 0 ? "" : ", this part is done to " + percent + " %")
                + "; Ctrl+C stops it.");
        err.flush();
    }
}
