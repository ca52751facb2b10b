// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import java.util.Map;
import java.util.Optional;

/** The packages of the core, from low to high. One uses only what is lower, so they cannot go round in a circle. */
final class CoreOrder {
    private static final String CORE = "pitchstack.core.";
    private static final Map<String, Integer> LEVELS = Map.of("units", 0, "stack", 1, "geometry", 2, "accuracy", 2,
            "plan", 2, "coverage", 3, "check", 4, "design", 5);

    private CoreOrder() {
    }

    /** What is wrong with a class of one core package using one of another; empty where nothing is. */
    static Optional<String> complaint(String from, String to) {
        String user = first(from);
        String used = first(to);
        if (user.equals(used)) {
            return Optional.empty();
        }
        if (!LEVELS.containsKey(user) || !LEVELS.containsKey(used)) {
            return Optional.of("is between packages of which one has no place in the order: add it to CoreOrder");
        }
        return LEVELS.get(used) < LEVELS.get(user) ? Optional.empty()
                : Optional.of("points up or across: " + user + " may use only what is below it");
    }

    private static String first(String packageName) {
        return packageName.startsWith(CORE) ? packageName.substring(CORE.length()).split("\\.")[0] : packageName;
    }
}
