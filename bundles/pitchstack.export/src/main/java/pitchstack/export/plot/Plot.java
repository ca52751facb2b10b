// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

/** A chart, complete with its numbers. */
public interface Plot {
    /** Draws it; takes some ten milliseconds, the first time of all some hundred. May be called on any thread. */
    Picture draw(PlotLook look);

    /** What it shows, in a few sentences with the numbers that matter, for those who cannot see it. */
    String description();
}
