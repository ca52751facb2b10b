// SPDX-License-Identifier: EPL-2.0
/**
 * What an axis can and cannot reach: for a tolerance, which positions of the travel are reached over clean teeth, only
 * over worn teeth, or not at all, exactly and not by samples; the same for every multiple of a step; and what wear
 * takes away. Everything is whole-number arithmetic in counts of the axis's scale.
 *
 * <p>How: the stage of most indices is taken as coarse, with pitch P; the offsets of all others together are listed
 * once, each different one once, and grouped by the lap ⌊offset / P⌋. Between the ends of the coarse stage and away
 * from its marked teeth every lap of P looks the same, so it is worked out once. Near an end or a mark some groups are
 * missing, and the lap is the union of the others. Where indices of the coarse stage have errors no lap is like another,
 * and the places are walked tooth by tooth. Positions are never listed one by one.
 */
package pitchstack.core.coverage;
