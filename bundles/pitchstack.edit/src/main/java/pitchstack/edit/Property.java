// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One fact of an element as people see it: text to read, and, where it can be changed, text to type.
 *
 * @param id a short stable word, unique in its element
 * @param label what it is called on screen
 * @param tooltip one sentence saying what it means and what is allowed
 * @param group the heading it stands under
 * @param text what it is now, with its unit
 * @param choices the only texts allowed; empty where any may be typed
 * @param entry how typed text becomes an edit; empty where the fact follows from others
 */
public record Property(String id, String label, String tooltip, String group, String text, List<String> choices,
        Optional<Function<String, Entry>> entry) {
    /** What typed text comes to. */
    public sealed interface Entry {
        /**
         * It can be taken.
         *
         * @param edit the change to make
         */
        record Accepted(Edit edit) implements Entry { }

        /**
         * It cannot.
         *
         * @param sentence why, and what is allowed
         */
        record Refused(String sentence) implements Entry { }
    }

    /** Copies the list. */
    public Property {
        choices = List.copyOf(choices);
    }

    /** Whether it follows from others and cannot be typed. */
    public boolean isDerived() {
        return entry.isEmpty();
    }

    /** What typing a text would come to; the property must not be derived. */
    public Entry enter(String typed) {
        return entry.orElseThrow().apply(typed);
    }
}
