// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

/** What comes of a request for a card. */
public sealed interface CardAnswer {
    /** The card. */
    record Made(SettingCard card) implements CardAnswer { }

    /**
     * The list cannot be planned.
     *
     * @param sentence says why, and what to change
     */
    record Refused(String sentence) implements CardAnswer { }

    /** The work was stopped. */
    record Stopped() implements CardAnswer { }
}
