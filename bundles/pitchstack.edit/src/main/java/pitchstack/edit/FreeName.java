// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pitchstack.model.Axis;
import pitchstack.model.Stage;

/** Names that no stage has yet. */
final class FreeName {
    private static final Pattern NUMBERED = Pattern.compile("(.*?) (\\d{1,6})");

    private FreeName() {
    }

    /**
     * The name itself if it is free, or else the name with the first free number behind it, in place of one it may have.
     *
     * @param more stages that are about to join the axis
     */
    static String of(Axis axis, List<Stage> more, String wanted) {
        Set<String> taken = Stream.concat(axis.getStages().stream(), more.stream()).map(Stage::getName)
                .filter(name -> name != null).collect(Collectors.toSet());
        Matcher numbered = NUMBERED.matcher(wanted);
        String stem = numbered.matches() ? numbered.group(1) : wanted;
        String name = wanted;
        for (int number = 2; taken.contains(name); number++) {
            name = stem + " " + number;
        }
        return name;
    }
}
