// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/** How a list of stops is planned. */
public enum StopOrder {
    /** Each stop by itself from the starting setting, as a table to choose from. */
    EACH_FROM_START,
    /** In the given order, each in the cheapest way from the one before, without looking further ahead. */
    ONE_BY_ONE,
    /** In the given order, with the settings chosen so that all moves together cost least. */
    GIVEN,
    /** In whatever order costs least. */
    FREE
}
