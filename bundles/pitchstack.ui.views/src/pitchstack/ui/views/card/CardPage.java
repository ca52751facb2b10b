// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.card;

import java.util.List;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.edit.Session;
import pitchstack.export.card.CardFormat;
import pitchstack.ui.views.export.ExportPage;
import pitchstack.ui.views.export.ExportTask;

/** Which card to make. */
final class CardPage extends ExportPage {
    private static final List<String> FORMATS = List.of("PDF, for paper", "HTML, for a screen at the machine",
            "XLSX, a workbook", "CSV, the targets alone");
    private static final List<StopOrder> ORDERS = List.of(StopOrder.GIVEN, StopOrder.ONE_BY_ONE, StopOrder.FREE);
    private static final List<String> ORDER_WORDS = List.of("Cheapest in this order", "One after another",
            "Cheapest in any order");
    private static final List<WornPolicy> POLICIES = List.of(WornPolicy.AVOID, WornPolicy.ALLOW, WornPolicy.NEVER);
    private static final List<String> POLICY_WORDS = List.of("Avoid worn teeth", "Allow worn teeth",
            "Never use worn teeth");

    private final CardChoices before = CardChoices.last();
    private Combo axis;
    private Combo format;
    private Combo order;
    private Combo worn;

    CardPage(Session session) {
        super("Setting card", session, "-card");
    }

    @Override
    protected void fill(Composite fields) {
        axis = combo(fields, "&Axis", positioner().getAxes().stream().map(one -> one.getName() == null ? "" : one.getName())
                .toList(), session().positioner().getAxes().indexOf(session().axis()));
        format = combo(fields, "F&ormat", FORMATS, before.format().ordinal());
        order = combo(fields, "Or&der", ORDER_WORDS, Math.max(0, ORDERS.indexOf(before.order())));
        worn = combo(fields, "&Worn teeth", POLICY_WORDS, POLICIES.indexOf(before.worn()));
    }

    private CardChoices choices() {
        return new CardChoices(CardFormat.values()[format.getSelectionIndex()], ORDERS.get(order.getSelectionIndex()),
                POLICIES.get(worn.getSelectionIndex()));
    }

    @Override
    protected ExportTask task() {
        CardChoices choices = choices();
        int number = axis.getSelectionIndex();
        return new ExportTask(choices.format().ending(),
                progress -> CardWork.of(positioner(), number, choices, progress));
    }

    @Override
    protected String hint() {
        return "Finish writes the card; its first sheet is shown as it is on paper.";
    }

    @Override
    protected void keep() {
        choices().keep();
    }
}
