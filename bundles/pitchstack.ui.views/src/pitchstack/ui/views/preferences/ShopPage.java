// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import pitchstack.edit.Session;
import pitchstack.edit.start.ShopDefaults;
import pitchstack.edit.start.ShopDefaults.Key;
import pitchstack.edit.start.ShopDefaults.Theme;
import pitchstack.model.DisplayUnit;
import pitchstack.ui.views.Accessibles;

/** Window &gt; Preferences: the choices for all files. Each is checked as it is typed. */
public final class ShopPage extends PreferencePage implements IWorkbenchPreferencePage {
    /** Id of this page. */
    public static final String ID = "pitchstack.ui.views.preferences.shop";

    private static final int FIELD_WIDTH = 90;

    private final Map<Key, Control> fields = new EnumMap<>(Key.class);
    private IWorkbench workbench;
    private Label said;

    @Override
    public void init(IWorkbench running) {
        workbench = running;
    }

    @Override
    protected Control createContents(Composite parent) {
        initializeDialogUnits(parent);
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 10).applyTo(page);
        Composite shown = group(page, "Files");
        choice(shown, Key.UNIT, "&Unit of new files", "millimetres", "inches");
        choice(shown, Key.FRACTIONS, "Inches are &shown as", "decimals: 37.625 in", "fractions where they are such: 37 5/8 in");
        text(shown, Key.LINE_WIDTH, "Printed &line width", "of new files; a number alone is in mm");
        text(shown, Key.BED, "Printer's &bed, longest side", "to say when a row falls into pieces");
        Composite costs = group(page, "Effort of new stages, in seconds");
        text(costs, Key.RELEASE, "&Release", "to release a stage and clamp it again");
        text(costs, Key.PER_TOOTH, "Each &tooth", "for every tooth counted");
        text(costs, Key.REVERSAL, "Turning roun&d", "more, when a stage goes the other way than the last time");
        Composite window = group(page, "Window");
        choice(window, Key.THEME, "&Colours", "as the system", "light", "dark");
        if (!WindowColours.changeAtOnce()) {
            new Label(window, SWT.NONE);
            new Label(window, SWT.NONE).setText("Colours change when the program is started the next time.");
        }
        said = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false)
                .hint(convertWidthInCharsToPixels(KeysPage.WIDTH_CHARS), SWT.DEFAULT).applyTo(said);
        show(ShopSettings.get());
        return page;
    }

    private static Composite group(Composite page, String title) {
        Group group = new Group(page, SWT.NONE);
        group.setText(title);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        GridLayoutFactory.swtDefaults().numColumns(3).spacing(12, 6).applyTo(group);
        return group;
    }

    private void choice(Composite group, Key key, String label, String... choices) {
        label(group, label);
        Combo combo = new Combo(group, SWT.READ_ONLY);
        combo.setItems(choices);
        add(key, combo, label, label.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(combo);
    }

    private void text(Composite group, Key key, String label, String note) {
        label(group, label);
        Text text = new Text(group, SWT.BORDER);
        text.addModifyListener(event -> check());
        add(key, text, label, note);
        GridDataFactory.fillDefaults().hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(text);
        Label beside = new Label(group, SWT.NONE);
        beside.setText(note);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(beside);
    }

    private void add(Key key, Control control, String label, String tip) {
        String name = label.replace("&", "");
        Accessibles.name(control, name);
        control.setToolTipText(tip);
        fields.put(key, control);
    }

    private static void label(Composite group, String text) {
        new Label(group, SWT.NONE).setText(text);
    }

    private void show(ShopDefaults chosen) {
        // The choices first: every text is checked together with them as it changes.
        ((Combo) fields.get(Key.UNIT)).select(chosen.unit().ordinal());
        ((Combo) fields.get(Key.FRACTIONS)).select(chosen.fractions() ? 1 : 0);
        ((Combo) fields.get(Key.THEME)).select(chosen.theme().ordinal());
        chosen.texts().forEach((key, text) -> {
            if (fields.get(key) instanceof Text field) {
                field.setText(text);
            }
        });
    }

    private Map<Key, String> typed() {
        Map<Key, String> texts = new EnumMap<>(Key.class);
        fields.forEach((key, control) -> texts.put(key, control instanceof Text field ? field.getText() : ""));
        texts.put(Key.UNIT, DisplayUnit.values()[((Combo) fields.get(Key.UNIT)).getSelectionIndex()].name());
        texts.put(Key.FRACTIONS, String.valueOf(((Combo) fields.get(Key.FRACTIONS)).getSelectionIndex() == 1));
        texts.put(Key.THEME, Theme.values()[((Combo) fields.get(Key.THEME)).getSelectionIndex()].name());
        return texts;
    }

    private void check() {
        if (fields.size() < Key.values().length) {
            return;
        }
        Optional<String> complaint = typed().entrySet().stream()
                .flatMap(entry -> ShopDefaults.complaint(entry.getKey(), entry.getValue()).stream()).findFirst();
        // The dialog's own line cuts a sentence short, so the page says it.
        said.setText(complaint.map(sentence -> "⚠  " + sentence).orElse(""));
        said.getParent().layout();
        setValid(complaint.isEmpty());
    }

    @Override
    protected void performDefaults() {
        show(ShopDefaults.of(Locale.getDefault()));
        super.performDefaults();
    }

    @Override
    public boolean performOk() {
        ShopDefaults chosen = ShopDefaults.of(typed());
        Theme before = ShopSettings.get().theme();
        ShopSettings.put(chosen);
        if (chosen.theme() != before) {
            WindowColours.change(chosen.theme());
        }
        sessions().forEach(session -> session.showFractions(chosen.fractions()));
        return true;
    }

    private List<Session> sessions() {
        return Stream.of(workbench.getWorkbenchWindows()).flatMap(window -> Stream.of(window.getPages()))
                .flatMap(page -> Stream.of(page.getEditorReferences())).map(reference -> reference.getEditor(false))
                .filter(Objects::nonNull).map(editor -> editor.getAdapter(Session.class)).filter(Objects::nonNull).toList();
    }
}
