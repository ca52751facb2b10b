// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.BufferedOutputStream;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * The standard streams as text. They are UTF-8 whatever the locale says, since the sentences hold “, µ and °, and a
 * file or a pipe keeps them; only a Windows console shows the characters of its code page and no others.
 */
final class Terminal {
    /** As much as a pipe takes at once on Linux. */
    private static final int BUFFER = 1 << 16;

    private Terminal() {
    }

    /** The output stream. */
    static PrintWriter out() {
        return writer(FileDescriptor.out);
    }

    /** The error stream. */
    static PrintWriter err() {
        return writer(FileDescriptor.err);
    }

    private static PrintWriter writer(FileDescriptor stream) {
        Charset charset = charset(System.getProperty("os.name"), System.console());
        // An answer goes out in one piece, so that a reader who stops after its first line is no error.
        Writer whole = new OutputStreamWriter(new BufferedOutputStream(new FileOutputStream(stream), BUFFER), charset);
        return new PrintWriter(new PlainWriter(whole, charset.newEncoder()));
    }

    private static Charset charset(String system, Console console) {
        boolean windows = system.toLowerCase(Locale.ROOT).startsWith("windows");
        return windows && console != null ? console.charset() : StandardCharsets.UTF_8;
    }
}
