// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.welcome;

import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Enumeration;
import java.util.List;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.Bundle;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/**
 * An example that ships with the program.
 *
 * @param file the file
 * @param title the title of the positioner in it
 * @param about the second sentence of its notes, where an example says what it shows, the first saying that it is
 *     invented; empty where there is none
 */
record Example(Path file, String title, String about) {
    private static final String BUNDLE = "pitchstack.help";
    private static final String FOLDER = "examples";

    /** All examples in the order of their titles; one that cannot be read is left out, and the log says why. */
    static List<Example> all() {
        Bundle bundle = Platform.getBundle(BUNDLE);
        List<Example> examples = new ArrayList<>();
        Enumeration<URL> found = bundle == null ? null : bundle.findEntries(FOLDER, "*." + StackFile.EXTENSION, false);
        while (found != null && found.hasMoreElements()) {
            add(found.nextElement(), examples);
        }
        examples.sort(Comparator.comparing(Example::title));
        return examples;
    }

    private static void add(URL entry, List<Example> examples) {
        try {
            Path file = new File(FileLocator.toFileURL(entry).getPath()).toPath();
            examples.add(of(file, StackFile.load(file).positioner()));
        } catch (IOException e) {
            ILog.of(Example.class).error("The example " + entry.getPath() + " cannot be read.", e);
        }
    }

    private static Example of(Path file, Positioner positioner) {
        String notes = positioner.getTitleBlock() == null ? null : positioner.getTitleBlock().getNotes();
        String title = positioner.getTitle() == null ? file.getFileName().toString() : positioner.getTitle();
        return new Example(file, title, secondSentence(notes == null ? "" : notes));
    }

    private static String secondSentence(String notes) {
        String[] sentences = notes.split("(?<=[.!?])\\s+");
        return sentences.length < 2 ? "" : sentences[1];
    }
}
