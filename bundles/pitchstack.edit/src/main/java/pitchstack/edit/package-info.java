// SPDX-License-Identifier: EPL-2.0
/**
 * Every change to a document, each a named edit that can be undone, and the session that holds a document, its one
 * history of edits and what is known of it now.
 */
package pitchstack.edit;
