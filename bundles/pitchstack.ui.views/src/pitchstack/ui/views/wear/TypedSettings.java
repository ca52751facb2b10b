// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;

/**
 * Settings typed one a line, an index a stage, lowest stage first, with spaces, commas or semicolons between.
 *
 * @param settings those that could be read
 * @param bad one sentence for each line that could not
 */
record TypedSettings(List<Setting> settings, List<String> bad) {
    static TypedSettings read(String text, AxisSpec axis) {
        List<Setting> settings = new ArrayList<>();
        List<String> bad = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty()) {
                String problem = read(line, axis, settings);
                if (!problem.isEmpty()) {
                    bad.add("Line " + (i + 1) + ": " + problem);
                }
            }
        }
        return new TypedSettings(settings, bad);
    }

    private static String read(String line, AxisSpec axis, List<Setting> settings) {
        String[] parts = line.replace("[", "").replace("]", "").strip().split("[\\s,;]+");
        if (parts.length != axis.stages().size()) {
            return "“" + line + "” has " + parts.length + (parts.length == 1 ? " index" : " indices") + ", but there "
                    + (axis.stages().size() == 1 ? "is 1 stage." : "are " + axis.stages().size() + " stages.");
        }
        int[] indices = new int[parts.length];
        for (int j = 0; j < parts.length; j++) {
            IndexRange range = axis.stages().get(j).rows().indices();
            try {
                // A minus is often a typographer's, as this program writes it.
                indices[j] = Integer.parseInt(parts[j].replace('−', '-'));
            } catch (NumberFormatException e) {
                return "“" + parts[j] + "” is no index; give a whole number.";
            }
            if (!range.contains(indices[j])) {
                return "Index " + indices[j] + " of stage " + axis.stages().get(j).title(j) + " is out of its range, "
                        + range.first() + " to " + range.last() + ".";
            }
        }
        settings.add(Setting.of(indices));
        return "";
    }
}
