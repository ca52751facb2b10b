// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.model.Reading;

/**
 * Says that a stage stood at another index when a reading was taken.
 *
 * @param reading a reading with an index for every stage
 * @param stage which stage, from 0
 * @param index where it stood
 * @param label what the person did
 */
public record ChangeReading(Reading reading, int stage, int index, String label) implements Edit {
    @Override
    public void apply() {
        reading.getSetting().set(stage, index);
    }
}
