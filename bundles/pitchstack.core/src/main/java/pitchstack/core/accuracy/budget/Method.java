// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

/** How a standard uncertainty was found (JCGM 100:2008, 4.2 and 4.3). */
public enum Method {
    /** By statistics of repeated observations. */
    TYPE_A,
    /** By any other knowledge: a certificate, a tolerance, experience, a model. */
    TYPE_B
}
