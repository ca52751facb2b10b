// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.recovery;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The running program that keeps a copy of unsaved work, as it stands in the copy's name. A program with the same number
 * that began at another time is another one: numbers are given out again.
 *
 * @param process the system's number of the program
 * @param begunMs when it began, in milliseconds since 1970, 0 where the system does not tell
 */
public record Owner(long process, long begunMs) {
    private static final Pattern IN_NAME = Pattern.compile("\\.(\\d{1,18})-(\\d{1,18})(?:\\.[^.]+)?$");

    /** This program. */
    public static Owner self() {
        return of(ProcessHandle.current());
    }

    private static Owner of(ProcessHandle running) {
        return new Owner(running.pid(), running.info().startInstant().map(Instant::toEpochMilli).orElse(0L));
    }

    /** Who keeps a copy, by the copy's name. */
    static Optional<Owner> of(Path copy) {
        Matcher name = IN_NAME.matcher(copy.getFileName().toString());
        return name.find() ? Optional.of(new Owner(Long.parseLong(name.group(1)), Long.parseLong(name.group(2))))
                : Optional.empty();
    }

    /** What stands in the name of a copy. */
    String inName() {
        return "." + process + "-" + begunMs;
    }

    /** Whether it still runs, on this computer; what another computer runs cannot be seen from here. */
    boolean runs() {
        return ProcessHandle.of(process).filter(ProcessHandle::isAlive).map(Owner::of).filter(this::equals)
                .isPresent();
    }
}
