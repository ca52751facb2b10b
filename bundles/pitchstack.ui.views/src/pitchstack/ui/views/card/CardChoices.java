// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.card;

import java.util.Map;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.export.card.CardFormat;
import pitchstack.ui.views.export.KeptChoices;

/**
 * How a person wants setting cards, kept with the settings of the window.
 *
 * @param format of the file
 * @param order in which the targets are set
 * @param worn when a setting over worn teeth may be used
 */
record CardChoices(CardFormat format, StopOrder order, WornPolicy worn) {
    private static final KeptChoices KEPT = new KeptChoices("pitchstack.ui.views.card");
    private static final String FORMAT = "format";
    private static final String ORDER = "order";
    private static final String WORN = "worn";

    /** As they were last; a choice that is not known any more counts as not made. */
    static CardChoices last() {
        return new CardChoices(KEPT.one(CardFormat.values(), FORMAT).orElse(CardFormat.PDF),
                KEPT.one(StopOrder.values(), ORDER).orElse(StopOrder.GIVEN),
                KEPT.one(WornPolicy.values(), WORN).orElse(WornPolicy.AVOID));
    }

    /** Keeps them for the next time. */
    void keep() {
        KEPT.keep(Map.of(FORMAT, format.name(), ORDER, order.name(), WORN, worn.name()));
    }
}
