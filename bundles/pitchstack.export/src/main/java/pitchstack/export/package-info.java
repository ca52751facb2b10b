// SPDX-License-Identifier: EPL-2.0
/**
 * Files for other programs and for people, one class a format: values in, text out. Nothing here opens a file or a
 * window, and the same values give the same text on every run.
 */
package pitchstack.export;
