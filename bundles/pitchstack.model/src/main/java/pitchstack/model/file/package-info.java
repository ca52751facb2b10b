// SPDX-License-Identifier: EPL-2.0
/**
 * Stack files: reading what a person or the program wrote, strictly and whole or not at all, and writing so that no
 * instant exists at which the file on disk is neither the old one nor the new one.
 *
 * <p>A stack file is XMI in UTF-8 whose one root is a Positioner in the namespace {@code pitchstack:model/1}. The
 * number at its end is the version of the model; a file of a higher version is refused by name.
 */
package pitchstack.model.file;
