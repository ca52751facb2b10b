// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import pitchstack.model.WornRange;

/** Marked teeth in words. */
public final class MarkWords {
    private MarkWords() {
    }

    /** {@code worn, teeth 480 to 492}. */
    public static String of(WornRange range) {
        return range.getKind().getLiteral() + (range.getFirst() == range.getLast() ? ", tooth " + range.getFirst()
                : ", teeth " + range.getFirst() + " to " + range.getLast());
    }
}
