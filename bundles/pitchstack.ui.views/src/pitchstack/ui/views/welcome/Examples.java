// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.welcome;

import java.nio.file.Path;
import java.util.Optional;
import pitchstack.model.file.StackFile;

/** The examples that ship with the program, for other parts of the window. */
public final class Examples {
    private Examples() {
    }

    /** The file of an example by its name without the ending; empty if it is not installed. */
    public static Optional<Path> file(String name) {
        return Example.all().stream().map(Example::file)
                .filter(file -> file.getFileName().toString().equals(name + "." + StackFile.EXTENSION)).findFirst();
    }
}
