// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.stack.Wear;

/**
 * Lists the settings that each stop of a list can be reached with.
 *
 * @param planner the planner of the axis
 * @param request the list
 * @param memory what the settings are counted in
 * @param mayStrand whether a move to a setting might not be possible; worn teeth are then kept in reserve for a clean
 *     setting that cannot be moved to
 */
record StopSettings(Planner planner, SequenceRequest request, Memory memory, boolean mayStrand) {
    /** A candidate, its indices, and its places in lists, about; and each index. */
    private static final long BYTES = 96;
    private static final long BYTES_OF_AN_INDEX = 4;

    /** The settings by stop, those of the smallest error first. */
    List<List<Candidate>> list(Progress progress) {
        List<List<Candidate>> all = new ArrayList<>();
        for (int stop = 0; stop < request.stops().size(); stop++) {
            if (progress.isCancelled()) {
                throw new EndedEarly(new SequenceAnswer.Cancelled());
            }
            all.add(settings(stop));
        }
        return all;
    }

    private List<Candidate> settings(int stop) {
        return switch (request.worn()) {
            case NEVER -> settings(stop, Wear.CLEAN);
            case ALLOW -> settings(stop, Wear.WORN);
            case AVOID -> {
                List<Candidate> clean = mayStrand ? List.of() : settings(stop, Wear.CLEAN);
                yield clean.isEmpty() ? settings(stop, Wear.WORN) : clean;
            }
        };
    }

    private List<Candidate> settings(int stop, Wear worst) {
        Stop wanted = request.stops().get(stop);
        Preparation prepared = planner.prepared();
        long target = planner.axis().scale().wrap(wanted.target());
        int stages = prepared.tables.length;
        long each = BYTES + stages * BYTES_OF_AN_INDEX;
        int room = memory.roomFor(each);
        Optional<List<Candidate>> found = SettingLister.list(prepared.space(worst),
                prepared.travel.within(target, wanted.tolerance()), stages, room);
        if (found.isEmpty()) {
            memory.refuse(wanted.title(stop) + " with its tolerance of "
                    + planner.axis().scale().formatSize(wanted.tolerance()) + " can be set in more than " + room
                    + " ways, too many to compare in ", "give it a smaller tolerance");
        }
        memory.take(each * found.get().size());
        return found.get();
    }
}
