// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/** Ends the planning of a list without a plan; caught where it was entered. */
final class EndedEarly extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What the planning comes to. */
    final transient SequenceAnswer answer;

    /** Nobody reads the stack. */
    EndedEarly(SequenceAnswer answer) {
        super(null, null, false, false);
        this.answer = answer;
    }
}
