// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import pitchstack.edit.Properties;
import pitchstack.edit.Property;
import pitchstack.edit.Property.Entry;
import pitchstack.edit.Session;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Pairs;

/**
 * Facts of one element as fields. Enter and leaving a field take what is typed; Escape drops it. What cannot be taken stays
 * while the field has the focus, with the reason said.
 */
final class FactsForm {
    private static final int GAP = 6;

    private final Composite form;
    private final Consumer<String> problem;
    private Session session;
    private EObject element;
    private List<String> shown = List.of();

    /** @param problem told why something typed cannot be taken, or nothing */
    FactsForm(Composite parent, Consumer<String> problem) {
        this.problem = problem;
        form = new Composite(parent, SWT.NONE);
        form.setLayout(new Pairs(GAP, 2));
    }

    Control control() {
        return form;
    }

    /** Shows the facts of an element of a document; of none for {@code null}. */
    void show(Session of, EObject one) {
        session = of;
        boolean same = one == element;
        element = one;
        List<Property> facts = facts();
        List<String> ids = facts.stream().map(Property::id).toList();
        if (!same || !ids.equals(shown)) {
            shown = ids;
            for (Control old : form.getChildren()) {
                old.dispose();
            }
            facts.forEach(this::field);
            form.getParent().layout(true, true);
        } else {
            refresh(facts);
        }
    }

    private List<Property> facts() {
        return element == null ? List.of() : Properties.of(session, element);
    }

    private void field(Property fact) {
        Label label = new Label(form, SWT.WRAP);
        label.setText(capital(fact.label()));
        label.setToolTipText(fact.tooltip());
        Text text = new Text(form, SWT.BORDER | SWT.SINGLE);
        text.setText(fact.text());
        text.setToolTipText(fact.tooltip());
        text.setData(fact.id());
        Accessibles.name(text, fact.label());
        text.addListener(SWT.DefaultSelection, e -> take(text));
        text.addListener(SWT.FocusOut, e -> {
            if (!take(text)) {
                text.setText(now(text).text());
            }
        });
        text.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                e.doit = false;
                text.setText(now(text).text());
                problem.accept("");
            }
        });
    }

    private static String capital(String label) {
        return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
    }

    private Property now(Text text) {
        return facts().stream().filter(fact -> fact.id().equals(text.getData())).findFirst().orElseThrow();
    }

    /** Takes what is typed, and tells whether it could be. */
    private boolean take(Text text) {
        if (element == null || element.eContainer() == null || text.getText().equals(now(text).text())) {
            return true;
        }
        Entry entry = now(text).enter(text.getText());
        if (entry instanceof Entry.Refused refused) {
            problem.accept(refused.sentence());
            return false;
        }
        problem.accept("");
        session.run(((Entry.Accepted) entry).edit());
        return true;
    }

    private void refresh(List<Property> facts) {
        for (Control control : form.getChildren()) {
            if (control instanceof Text text && !text.isFocusControl()) {
                facts.stream().filter(fact -> fact.id().equals(text.getData()) && !fact.text().equals(text.getText()))
                        .forEach(fact -> text.setText(fact.text()));
            }
        }
    }
}
