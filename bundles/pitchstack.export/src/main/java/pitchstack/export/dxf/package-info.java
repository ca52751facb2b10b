// SPDX-License-Identifier: EPL-2.0
/**
 * Drawings as DXF of Release 12, the oldest that every mill and drawing program reads. Lengths are millimetres, y goes up.
 */
package pitchstack.export.dxf;
