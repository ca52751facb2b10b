// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import java.util.List;
import pitchstack.export.plot.Picture;

/** What comes of the choices, worked out away from the interface thread. */
public sealed interface ExportWork {
    /** Twice as many pixels as a dialog is wide, for screens with small ones. */
    int PREVIEW_PX = 1400;

    /**
     * A file, ready to be written.
     *
     * @param bytes of the file
     * @param picture how it looks
     * @param shown what the picture shows, for those who cannot see it
     * @param words what is in the file, without its size
     * @param remarks what is worth knowing before it is used, a sentence each
     */
    record Ready(byte[] bytes, Picture picture, String shown, String words, List<String> remarks) implements ExportWork {
        /** Copies the list. */
        public Ready {
            remarks = List.copyOf(remarks);
        }
    }

    /** There is none, and why. */
    record None(String sentence) implements ExportWork { }
}
