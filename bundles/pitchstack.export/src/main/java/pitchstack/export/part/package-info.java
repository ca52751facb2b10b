// SPDX-License-Identifier: EPL-2.0
/**
 * Parts as files for printers and mills: 3MF, STL and DXF. Lengths are millimetres; the same parts give the same bytes on
 * every run.
 */
package pitchstack.export.part;
