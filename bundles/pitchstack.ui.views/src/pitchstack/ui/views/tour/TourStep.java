// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.tour;

import java.util.function.Predicate;

/**
 * One thing to do.
 *
 * @param title in a few words
 * @param how what to press or to type, and what will be seen
 * @param help what the button does for those who would rather watch; empty where there is none
 * @param done whether it is done
 */
record TourStep(String title, String how, String help, Predicate<TourSight> done) { }
