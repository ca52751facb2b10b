// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import pitchstack.core.geometry.Clamping;
import pitchstack.core.geometry.RowShape;

/**
 * A row as a part to make.
 *
 * @param name what people call it
 * @param shape its side view
 * @param faceMm how wide its teeth are, across the row
 * @param clamping how it is clamped
 * @param numberEvery which teeth get a number: those whose number it divides; 0 for none
 * @param firstNumber the number of the first tooth
 * @param lineMm the width of a printed line, above 0
 */
public record RowPart(String name, RowShape shape, double faceMm, Clamping clamping, int numberEvery, int firstNumber,
        double lineMm) { }
