// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.util.Arrays;
import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.jface.preference.PreferenceManager;

/** Leaves out the preference pages that the platform brings for programmers. */
final class OwnPages {
    private static final String OWN = "pitchstack.";

    private OwnPages() {
    }

    /** Removes all pages but this program's. */
    static void keep(PreferenceManager pages) {
        Arrays.stream(pages.getRootSubNodes()).map(IPreferenceNode::getId).filter(id -> !id.startsWith(OWN))
                .forEach(pages::remove);
    }
}
