// SPDX-License-Identifier: EPL-2.0
/**
 * Charts as pictures: numbers in, pixels out, the same on every run with the same fonts. Lines and points are drawn by
 * XChart, bars by hand, since hatching is more than it offers; both paint into memory and need no screen. Pictures are
 * made of pixels only: the encoder of vector pictures that XChart knows is not under a licence that fits this
 * program's.
 *
 * <p>Colour is never the only signal: what repeats is filled and what varies is hatched, lines differ by dashes and
 * marks, and each plot says in words what it shows.
 */
package pitchstack.export.plot;
