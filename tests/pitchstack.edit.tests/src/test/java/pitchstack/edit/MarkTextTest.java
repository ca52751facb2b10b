// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import pitchstack.edit.MarkText.Fits;
import pitchstack.edit.MarkText.Pasted;
import pitchstack.edit.MarkText.Refused;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Row;
import pitchstack.model.Target;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** Targets and marked teeth as text, pasted in the same file and in files of other units. An inch is 25.4 mm. */
class MarkTextTest {
    private final Session millimetres = Documents.session(NewStack.positioner(DisplayUnit.MM));
    private final Session inches = Documents.session(NewStack.positioner(DisplayUnit.INCH));

    private static Target target(String position, String tolerance) {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName("slot");
        target.setPosition(position);
        target.setTolerance(tolerance);
        target.setNote("left\tedge");
        return target;
    }

    private static Target pasted(String text, Session into) {
        into.run(assertInstanceOf(Fits.class, paste(text, into, Optional.empty()).orElseThrow()).edit());
        List<Target> targets = into.axis().getTargets();
        return targets.get(targets.size() - 1);
    }

    private static Optional<Pasted> paste(String text, Session into, Optional<Row> row) {
        return MarkText.paste(text, into.axis(), into.analysis().spec().scale(), row);
    }

    private static String copied(Target target, Session from) {
        return MarkText.of(target, from.analysis().spec().scale());
    }

    @Test
    void carriesATargetToAFileOfAnotherUnitByValue() {
        Target whole = pasted(copied(target("50.8", "0.1"), millimetres), inches);
        assertEquals(2 * 25_400_000_000_000L, inches.analysis().spec().scale().parse(whole.getPosition()));
        assertTrue(whole.getPosition().endsWith("in"), whole.getPosition());
        assertEquals(List.of("slot", "0.1 mm", "left edge"), List.of(whole.getName(), whole.getTolerance(), whole.getNote()));
        Target between = pasted(copied(target("203", null), millimetres), inches);
        assertEquals(203_000_000_000_000L, inches.analysis().spec().scale().parse(between.getPosition()),
                "no number of decimals in inches says 203 mm");
        Target back = pasted(copied(target("1.5", null), inches), millimetres);
        assertEquals("38.100 mm", back.getPosition());
        assertEquals("Paste target “slot”", millimetres.history().getUndoCommand().getLabel());
        millimetres.history().undo();
        assertEquals(List.of(), millimetres.axis().getTargets());
    }

    /** What counts as reached must not grow on the way. */
    @Test
    void givesATargetTheToleranceOfTheAxisItComesFromWhereThatIsAnother() {
        millimetres.axis().setTolerance("0.025 mm");
        inches.axis().setTolerance("0.002 in");
        Target own = target("50.8", null);
        millimetres.axis().getTargets().add(own);
        assertEquals("0.025 mm", pasted(copied(own, millimetres), inches).getTolerance());
        assertNull(pasted(copied(own, millimetres), millimetres).getTolerance(), "the axis says the same");
        inches.axis().setTolerance("25 um");
        assertNull(pasted(copied(own, millimetres), inches).getTolerance(), "the same length");
    }

    @Test
    void refusesATargetThatIsNoPositionOnTheAxis() {
        String text = copied(target("203 mm", null), millimetres);
        Axis axis = inches.axis();
        axis.setKind(AxisKind.ROTARY);
        Session round = Documents.session(EcoreUtil.copy(inches.positioner()));
        Refused refused = assertInstanceOf(Refused.class, paste(text, round, Optional.empty()).orElseThrow());
        assertTrue(refused.why().startsWith("The copied target does not fit on “" + axis.getName() + "”: "), refused.why());
    }

    @Test
    void carriesMarkedTeethToAnotherRowWhereTheyCountInsteadOfOlderMarks() {
        Row from = millimetres.axis().getStages().get(0).getBaseRow();
        Row to = inches.axis().getStages().get(0).getRiderRow();
        millimetres.run(new MarkTeeth(new ToothMark(from, 4, 6, WearKind.BARRED, "chipped")));
        WornRange range = from.getWorn().get(0);
        inches.run(new MarkTeeth(new ToothMark(to, 6, 9, WearKind.WORN, "")));
        Fits fits = assertInstanceOf(Fits.class, paste(MarkText.of(range), inches, Optional.of(to)).orElseThrow());
        inches.run(fits.edit());
        assertEquals(List.of(new ToothMark(to, 7, 9, WearKind.WORN, ""), new ToothMark(to, 4, 6, WearKind.BARRED, "chipped")),
                ToothMark.all(to));
        assertEquals(to.getWorn().get(1), fits.into().get(fits.into().size() - 1), "the last is the new one");
    }

    @Test
    void saysWhyMarkedTeethHaveNoPlace() {
        Row row = inches.axis().getStages().get(0).getRiderRow();
        WornRange range = NewStack.wornRange(row.getTeeth());
        assertEquals("Tooth " + row.getTeeth() + " is out of the row: the rider row of “Rack” has teeth 0 to "
                + (row.getTeeth() - 1) + ".",
                ((Refused) paste(MarkText.of(range), inches, Optional.of(row)).orElseThrow()).why());
        assertEquals("Teeth of a row were copied last. Select the row that is to be marked, and paste again.",
                ((Refused) paste(MarkText.of(range), inches, Optional.empty()).orElseThrow()).why());
    }

    @Test
    void leavesOtherTextsAlone() {
        for (String text : List.of("", "37.625 in", "target", "worn", "worn\tall\tof it", "worn\t-1\t3", "worn\t99999999999\t3")) {
            assertEquals(Optional.empty(), paste(text, millimetres, Optional.empty()), text);
        }
    }
}
