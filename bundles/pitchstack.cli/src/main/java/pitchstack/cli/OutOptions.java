// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The file to write, besides the answer or as the answer. */
final class OutOptions {
    @Option(names = "--out", paramLabel = "NAME", description = "The file to write; the ending of NAME tells the format.")
    private String out;

    @Option(names = "--force", description = "Let --out replace a file; the old one is kept as NAME.bak~.")
    private boolean force;

    /**
     * The file to write; empty where none is wanted.
     *
     * @param endings the endings of the formats that can be written
     * @throws BadInputException if it may not be written
     */
    Optional<OutFile> file(List<String> endings) throws BadInputException {
        return out == null ? Optional.empty() : Optional.of(OutFile.of(out, force, endings));
    }

    /**
     * The file to write, of a command that does nothing else.
     *
     * @param endings the endings of the formats that can be written
     * @throws BadInputException if none is given, or it may not be written
     */
    OutFile needed(List<String> endings) throws BadInputException {
        return file(endings).orElseThrow(() -> new BadInputException("--out is missing: give the name of the file to write,"
                + " which ends with ." + String.join(" or .", endings) + "."));
    }
}
