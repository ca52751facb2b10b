// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import pitchstack.core.coverage.Reached;

/** How a stretch is reached, in the words that every file and command uses. */
public final class ReachedWords {
    private ReachedWords() {
    }

    /** {@code clean}, {@code worn only} or {@code not reached}. */
    public static String of(Reached reached) {
        return switch (reached) {
            case CLEAN -> "clean";
            case WORN -> "worn only";
            case NOT -> "not reached";
        };
    }
}
