// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import pitchstack.export.Decimals;

/**
 * Text on its way into a file, some at a time. A failure to write is kept until {@link #check}, since what comes from a
 * solid comes through calls that cannot throw it.
 */
final class Chunks {
    private static final int FULL = 1 << 15;
    /** A tenth of a nanometre: less than a thousandth of what can be measured on a print. */
    private static final int PLACES = 7;

    private final OutputStream to;
    private final StringBuilder text = new StringBuilder(FULL + 1000);
    private IOException failure;

    Chunks(OutputStream to) {
        this.to = to;
    }

    Chunks add(String some) {
        text.append(some);
        return flushed();
    }

    Chunks add(double length) {
        Decimals.append(text, length, PLACES);
        return flushed();
    }

    Chunks add(int number) {
        text.append(number);
        return flushed();
    }

    private Chunks flushed() {
        if (text.length() >= FULL) {
            flush();
        }
        return this;
    }

    private void flush() {
        try {
            if (failure == null) {
                to.write(text.toString().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            failure = e;
        }
        text.setLength(0);
    }

    /** @throws IOException if something could not be written since the begin */
    void check() throws IOException {
        if (failure != null) {
            throw failure;
        }
    }

    /** Writes what is left. */
    void end() throws IOException {
        flush();
        check();
    }
}
