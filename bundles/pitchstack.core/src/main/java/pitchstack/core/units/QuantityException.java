// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

/** A quantity that cannot be read. The message is one sentence for the person who typed it. */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** @param sentence what was typed and what is allowed */
    public QuantityException(String sentence) {
        super(sentence);
    }
}
