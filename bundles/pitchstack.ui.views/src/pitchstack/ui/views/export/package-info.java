// SPDX-License-Identifier: EPL-2.0
/**
 * What all that leaves the program through the File menu has in common: choices on the left, the thing as it will look on
 * the right, where the file goes, and Finish to write it.
 */
package pitchstack.ui.views.export;
