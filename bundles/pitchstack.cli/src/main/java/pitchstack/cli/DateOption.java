// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.Option;

/** The date of a file for paper, which is fixed so that the file comes out the same on another day. */
final class DateOption {
    @Option(names = "--date", paramLabel = "DATE",
            description = "The date of what is written, as 2026-01-15. Default: the date of issue in the file, or else today.")
    private String date;

    /**
     * The date.
     *
     * @param usual the one where none is typed
     * @throws BadInputException if it is no date
     */
    LocalDate or(LocalDate usual) throws BadInputException {
        try {
            return date == null ? usual : LocalDate.parse(date.strip());
        } catch (DateTimeException e) {
            throw new BadInputException("--date: “" + date + "” is no date; write it like 2026-01-15.");
        }
    }
}
