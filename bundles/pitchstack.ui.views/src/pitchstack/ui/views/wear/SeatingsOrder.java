// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.Optional;
import java.util.stream.Stream;
import pitchstack.core.plan.StopOrder;

/** What is counted: the targets of the file in an order, or settings that are typed. */
enum SeatingsOrder {
    /** In the given order, each cheapest from the one before. */
    ONE_BY_ONE("Targets one by one", StopOrder.ONE_BY_ONE),
    /** In the given order, cheapest altogether. */
    GIVEN("Targets as listed, least effort", StopOrder.GIVEN),
    /** In the cheapest order. */
    FREE("Targets in any order, least effort", StopOrder.FREE),
    /** Each from where the stages stand. */
    EACH("Targets, each from here", StopOrder.EACH_FROM_START),
    /** Settings. */
    TYPED("Settings typed here", null);

    private final String title;
    private final StopOrder order;

    SeatingsOrder(String title, StopOrder order) {
        this.title = title;
        this.order = order;
    }

    static String[] titles() {
        return Stream.of(values()).map(one -> one.title).toArray(String[]::new);
    }

    /** How the targets are planned; empty where settings are typed. */
    Optional<StopOrder> order() {
        return Optional.ofNullable(order);
    }
}
