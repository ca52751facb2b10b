// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import pitchstack.core.accuracy.rack.RackEdition;

/**
 * What is taken where a file does not say. Unless another reason stands beside it, each is common practice without a source,
 * chosen on the cautious side; whoever reads a budget sees the sentence that goes with it.
 */
final class Believed {
    /** Relative standard uncertainty of the scale of a print: a tenth of a per cent. */
    static final double PRINTED_SCALE = 1e-3;
    /** The same of a bought row to which no grade can be applied. */
    static final double BOUGHT_SCALE = 1e-4;
    /** A bought rack without a grade counts as cut, not ground. */
    static final Grade BOUGHT_GRADE = new Grade(RackEdition.ISO_2013, 10);
    /** Standard deviation of a printed flank. */
    static final double PRINTED_SCATTER_M = 30e-6;
    /** Standard deviation of a bought flank. */
    static final double BOUGHT_SCATTER_M = 10e-6;
    private static final double ARC_SECOND = Math.PI / 648_000;
    /** Of a printed flank on a rotary axis: 30 µm at a radius of 100 mm. */
    static final double PRINTED_SCATTER_RAD = 60 * ARC_SECOND;
    /** Of a bought one: a single tooth of 10″ agrees with the 0.5″ stated for index tables of 360 teeth. */
    static final double BOUGHT_SCATTER_RAD = 10 * ARC_SECOND;
    /** Standard deviation of where a flank seats from time to time: dirt, burrs, film. */
    static final double SEAT_M = 5e-6;
    /** The same on a rotary axis. */
    static final double SEAT_RAD = 5 * ARC_SECOND;
    /** Dry printed plastic was measured at 0.6 to 0.8 (PLA, doi 10.2478/msp-2025-0039). */
    static final double PLASTIC_FRICTION = 0.7;
    /** Metal on metal, slightly oiled. */
    static final double METAL_FRICTION = 0.15;
    /** Face width of usual bought racks, in modules (handbook of tandwiel.info). */
    static final double FACE_WIDTH_MODULES = 10;
    /** A run that does not say how good its readings are. */
    static final double READING_M = 1e-6;
    /** The same on a rotary axis. */
    static final double READING_RAD = ARC_SECOND;

    private Believed() {
    }
}
