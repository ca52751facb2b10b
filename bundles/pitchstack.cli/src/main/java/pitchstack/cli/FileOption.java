// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import picocli.CommandLine.Parameters;

/** Which stack file a command is about. */
final class FileOption {
    @Parameters(paramLabel = "FILE", description = "The stack file.")
    private String file;

    /**
     * Reads the file.
     *
     * @throws BadInputException if it cannot be read, or is no sound stack file
     */
    LoadedStack load() throws BadInputException {
        return LoadedStack.load(file);
    }
}
