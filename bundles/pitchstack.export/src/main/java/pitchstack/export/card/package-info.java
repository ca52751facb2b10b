// SPDX-License-Identifier: EPL-2.0
/**
 * The setting card, which lies at the machine: a list of targets as stage counts to set, with a table of what counts are
 * worth. {@link pitchstack.export.card.SettingCard} says what stands on it; each format is one class.
 */
package pitchstack.export.card;
