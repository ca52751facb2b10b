// SPDX-License-Identifier: EPL-2.0
/**
 * How well a position is held and known: physics and statistics in SI units as {@code double}, the unit in the name. On a
 * rotary axis read radians where a name says metres. Nothing here decides what is reached; that is whole-number work.
 *
 * <p>Sub-packages, low to high: {@code budget} (uncertainty after the GUM), {@code material}, {@code teeth} (elastic
 * averaging, stiffness, strength, friction), {@code thermal}, {@code rack} (grades of bought racks), {@code evaluation}
 * (ISO 230-2), {@code fit} (pitch corrections from readings), {@code total} (all of it for a stack and a setting).
 */
package pitchstack.core.accuracy;
