// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.WornRange;

/**
 * One line of the table.
 *
 * @param mark what it says
 * @param range the worn range of the file that says it; empty where it is only supposed
 * @param number its place among the supposed marks, from 0; −1 where it is in the file
 */
record MarkItem(ToothMark mark, Optional<WornRange> range, int number) {
    /** All of the axis that is looked at, those of the file first. */
    static List<MarkItem> of(Session session) {
        List<MarkItem> items = new ArrayList<>();
        for (WornRange range : ToothMark.ranges(session.axis())) {
            items.add(new MarkItem(ToothMark.of(range), Optional.of(range), -1));
        }
        List<ToothMark> supposed = session.supposed();
        for (int i = 0; i < supposed.size(); i++) {
            items.add(new MarkItem(supposed.get(i), Optional.empty(), i));
        }
        return items;
    }

    boolean isSupposed() {
        return range.isEmpty();
    }

    /** Whether it is the same line, whatever it says now. */
    boolean isSame(MarkItem other) {
        return isSupposed() ? other.isSupposed() && number == other.number : range.equals(other.range);
    }
}
