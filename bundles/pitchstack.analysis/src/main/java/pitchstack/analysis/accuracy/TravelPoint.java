// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

/**
 * One point of the error along the travel. The band of ± {@link SettingFigures#expandedM} is around what is believed: the
 * error of the drawn pitches where they are used, and 0 where the corrections are.
 *
 * @param figures of the setting
 * @param drawnErrorM where the carriage stands by the file less where the pitches as drawn would put it, warmth included
 */
public record TravelPoint(SettingFigures figures, double drawnErrorM) { }
