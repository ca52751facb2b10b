// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.model.Target;

/**
 * Where the plan of a list begins. It stays where it is while the stops are set from the list, one after another, and
 * taken back, so that the plan does not change under the hands of who follows it; anything else that moves a stage begins
 * it anew.
 */
final class Walk {
    private final List<Done> done = new ArrayList<>();
    private Setting start = Setting.of();
    private Directions last = Directions.unknown(0);
    /** How many of the stops done are not taken back. */
    private int standing;

    private record Done(Target target, Setting setting) { }

    /** Begins where the stages stand. */
    void begin(Setting from, Directions directions) {
        start = from;
        last = directions;
        done.clear();
        standing = 0;
    }

    /** Notes that a stop is about to be set. */
    void set(Target target, Setting setting) {
        done.subList(standing, done.size()).clear();
        done.add(new Done(target, setting));
        standing++;
    }

    /** Takes up where the stages stand now; begins anew unless a stop was set, or the setting of one taken back or redone. */
    void follow(Setting now, Directions directions) {
        for (int at = done.size(); at > 0; at--) {
            if (done.get(at - 1).setting().equals(now)) {
                standing = at;
                return;
            }
        }
        if (start.equals(now)) {
            standing = 0;
        } else {
            begin(now, directions);
        }
    }

    /** Where the plan begins. */
    Setting start() {
        return start;
    }

    /** Which way each stage had moved last there. */
    Directions last() {
        return last;
    }

    /** The targets that have been set. */
    Set<Target> done() {
        Set<Target> targets = new HashSet<>();
        done.subList(0, standing).forEach(one -> targets.add(one.target()));
        return targets;
    }
}
