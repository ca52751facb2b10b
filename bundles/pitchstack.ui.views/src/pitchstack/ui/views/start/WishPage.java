// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.start;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import pitchstack.edit.start.ShopDefaults;
import pitchstack.edit.start.StackWish;
import pitchstack.edit.start.StackWish.Field;
import pitchstack.edit.start.WishReading;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.ui.views.Accessibles;

/** What a toolmaker knows. Every field is checked as it is typed; the first that cannot be is explained at the top. */
final class WishPage extends WizardPage {
    private static final String INVITATION = "Say how far and how finely it shall go, and what is there already.";
    private static final int FIELD_WIDTH = 220;

    private final ShopDefaults shop;
    private final Map<Field, ControlDecoration> signs = new EnumMap<>(Field.class);
    private Button rotary;
    private Combo unit;
    private Text travel;
    private Text step;
    private Combo system;
    private Text rack;
    private Text lineWidth;
    private boolean touched;

    WishPage(ShopDefaults shop) {
        super("wish", "What do you want to set?", null);
        this.shop = shop;
        setMessage(INVITATION);
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(16, 8).applyTo(page);
        label(page, "It moves");
        Composite kinds = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(kinds);
        Button linear = new Button(kinds, SWT.RADIO);
        linear.setText("along a &line");
        linear.setSelection(true);
        rotary = new Button(kinds, SWT.RADIO);
        rotary.setText("around a &centre");
        rotary.addListener(SWT.Selection, event -> kindChosen());
        label(page, "&Unit of the file");
        unit = new Combo(page, SWT.READ_ONLY);
        unit.setItems("millimetres", "inches");
        unit.select(shop.unit().ordinal());
        unit.addListener(SWT.Selection, event -> {
            giveExamples();
            check();
        });
        Accessibles.name(unit, "Unit of the file");
        travel = text(page, Field.TRAVEL, "&Travel", "From the lowest to the highest position");
        step = text(page, Field.STEP, "Finest &step", "No two neighbouring positions will lie farther apart");
        label(page, "&Rack at hand");
        system = new Combo(page, SWT.READ_ONLY);
        Accessibles.name(system, "How the pitch of the rack at hand is known");
        system.addListener(SWT.Selection, event -> systemChosen());
        rack = text(page, Field.RACK, "Its &pitch", "As it is sold: a number in the system chosen above");
        lineWidth = text(page, Field.LINE_WIDTH, "Printed line &width", "How wide a line the printer of the fine rows lays,"
                + " mostly that of its nozzle; teeth are made large enough for it");
        lineWidth.setText(shop.lineWidth());
        giveExamples();
        fillSystems();
        setControl(page);
        touched = false;
        check();
    }

    private static void label(Composite page, String text) {
        new Label(page, SWT.NONE).setText(text);
    }

    private Text text(Composite page, Field field, String label, String tip) {
        label(page, label);
        Text text = new Text(page, SWT.BORDER);
        text.setToolTipText(tip);
        GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_WIDTH, SWT.DEFAULT).indent(4, 0).applyTo(text);
        Accessibles.name(text, label.replace("&", ""));
        text.addListener(SWT.Modify, event -> {
            touched = true;
            check();
        });
        ControlDecoration sign = new ControlDecoration(text, SWT.LEFT | SWT.TOP);
        sign.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR).getImage());
        sign.hide();
        signs.put(field, sign);
        return text;
    }

    private void kindChosen() {
        unit.setEnabled(!rotary.getSelection());
        giveExamples();
        fillSystems();
        check();
    }

    private void giveExamples() {
        boolean inches = unit.getSelectionIndex() == DisplayUnit.INCH.ordinal();
        travel.setMessage(rotary.getSelection() ? "such as 90 or 360 degrees" : inches ? "such as 24 in" : "such as 600 mm");
        step.setMessage(rotary.getSelection() ? "such as 0°01'" : inches ? "such as 0.001 in" : "such as 0.01 mm");
    }

    private void fillSystems() {
        system.setItems(Stream.of(RackSystem.of(rotary.getSelection())).map(RackSystem::label).toArray(String[]::new));
        system.select(0);
        systemChosen();
    }

    private void systemChosen() {
        rack.setEnabled(chosen() != RackSystem.NONE);
        rack.setMessage(chosen().example());
        check();
    }

    private RackSystem chosen() {
        return RackSystem.of(rotary.getSelection())[system.getSelectionIndex()];
    }

    /** What is typed now. */
    StackWish wish() {
        return new StackWish(rotary.getSelection() ? AxisKind.ROTARY : AxisKind.LINEAR,
                DisplayUnit.values()[unit.getSelectionIndex()], travel.getText(), step.getText(),
                chosen().pitch(rack.getText()), lineWidth.getText());
    }

    private void check() {
        if (lineWidth == null || system.getSelectionIndex() < 0) {
            return;
        }
        Map<Field, String> complaints = new WishReading(wish()).complaints();
        if (chosen() != RackSystem.NONE && rack.getText().isBlank()) {
            complaints.put(Field.RACK, "The pitch of the rack is missing; type it, or choose that there is none.");
        }
        Field first = complaints.keySet().stream().findFirst().orElse(null);
        signs.forEach((field, sign) -> {
            String complaint = complaints.get(field);
            // The first is explained at the top; once is enough.
            sign.setDescriptionText(field == first ? null : complaint);
            if (complaint == null || !touched) {
                sign.hide();
            } else {
                sign.show();
            }
        });
        setErrorMessage(touched ? complaints.get(first) : null);
        setPageComplete(complaints.isEmpty());
    }
}
