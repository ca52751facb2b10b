// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

/**
 * One change a person makes to a document. It is complete when built, and changes the model only in {@link #apply};
 * what it changes is recorded, so that it needs no inverse of its own.
 */
public interface Edit {
    /** What the person did, as the undo menu shows it: {@code Move “Rack” to 12}. */
    String label();

    /** Changes the model. Called once, by the session. */
    void apply();
}
