// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.model.WornRange;

/**
 * Lets a worn range mark something else: other teeth, another row, another wear or note.
 *
 * @param range the range
 * @param mark what it shall say
 */
public record ChangeMark(WornRange range, ToothMark mark) implements Edit {
    @Override
    public String label() {
        return "Change worn range to " + mark.teeth() + ", " + mark.kind().getLiteral();
    }

    @Override
    public void apply() {
        mark.write(range);
        if (range.eContainer() != mark.row()) {
            mark.row().getWorn().add(range);
        }
    }
}
