// SPDX-License-Identifier: EPL-2.0
/**
 * The command line: what a person types becomes a request to the core, and its answer becomes text or JSON.
 *
 * <p>One class reads each command, one writes each form of its answer. Nothing here ends the Java process but
 * {@link pitchstack.cli.Main#main}.
 */
package pitchstack.cli;
