// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.core.stack.Setting;
import pitchstack.edit.Property.Entry;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** Random edits of every kind: the document must be equal at each state on the way back and on the way forward. */
class UndoTest {
    private static final int EDITS = 200;
    private static final int MOST_STAGES = 6;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void undoAndRedoPassThroughTheSameDocuments(long seed) {
        Random random = new Random(seed);
        Session session = Documents.session();
        List<EObject> states = new ArrayList<>(List.of(EcoreUtil.copy(session.positioner())));
        while (states.size() <= EDITS) {
            session.run(randomEdit(session, random));
            // More stages than this only make the documents large.
            while (session.axis().getStages().size() > MOST_STAGES) {
                states.add(EcoreUtil.copy(session.positioner()));
                session.run(new RemoveElement(session.axis().getStages().get(0)));
            }
            states.add(EcoreUtil.copy(session.positioner()));
        }
        int last = states.size() - 1;
        for (int i = last - 1; i >= 0; i--) {
            session.history().undo();
            assertSame(states.get(i), session, seed, "undo to " + i);
        }
        for (int i = 1; i <= last; i++) {
            session.history().redo();
            assertSame(states.get(i), session, seed, "redo to " + i);
        }
    }

    @Test
    void triesEveryKindOfEditThatThereIs() throws Exception {
        Set<Class<?>> tried = new HashSet<>();
        Random random = new Random(11);
        for (int round = 0; round < 40; round++) {
            Session session = Documents.session();
            for (int i = 0; i < 40; i++) {
                Edit edit = randomEdit(session, random);
                tried.add(edit.getClass());
                session.run(edit);
            }
        }
        assertEquals(kinds(), tried);
    }

    /** Every class of the bundle's package that is an edit. */
    private static Set<Class<?>> kinds() throws Exception {
        Path classes = Path.of(Edit.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        Set<Class<?>> kinds = new HashSet<>();
        try (FileSystem jar = Files.isDirectory(classes) ? null : FileSystems.newFileSystem(classes);
                Stream<Path> files = Files.list((jar == null ? classes : jar.getPath("/")).resolve("pitchstack/edit"))) {
            for (String file : files.map(path -> path.getFileName().toString()).filter(n -> n.endsWith(".class")).toList()) {
                Class<?> found = Class.forName("pitchstack.edit." + file.replace(".class", ""));
                if (Edit.class.isAssignableFrom(found) && found != Edit.class) {
                    kinds.add(found);
                }
            }
        }
        return kinds;
    }

    private static void assertSame(EObject expected, Session session, long seed, String when) {
        assertTrue(EcoreUtil.equals(expected, session.positioner()), "seed " + seed + ", " + when);
    }

    /** Another document: this one as it is now, with another title and a further axis. */
    private static Positioner other(Session session, Random random) {
        Positioner copy = EcoreUtil.copy(session.positioner());
        copy.setTitle("title " + random.nextInt(10));
        copy.getAxes().add(EcoreUtil.copy(copy.getAxes().get(0)));
        return copy;
    }

    private static Edit randomEdit(Session session, Random random) {
        Axis axis = session.axis();
        List<EObject> removable = new ArrayList<>();
        session.positioner().eAllContents().forEachRemaining(e -> {
            if (RemoveElement.canRemove(e)) {
                removable.add(e);
            }
        });
        int stages = axis.getStages().size();
        return switch (stages == 0 ? 3 : random.nextInt(27)) {
            case 0 -> new MoveStage(axis.getStages().get(random.nextInt(stages)), random.nextInt(41) - 20);
            case 1 -> new ApplySetting(axis, Setting.of(random.ints(stages, -20, 21).toArray()));
            case 2 -> new RemoveElement(removable.get(random.nextInt(removable.size())));
            case 3 -> AddElement.stage(axis, random.nextInt(stages + 1), NewStack.stage(axis));
            case 4 -> AddElement.wornRange(randomRow(axis, random), NewStack.wornRange(random.nextInt(20)));
            case 5 -> AddElement.target(axis, target(random));
            case 6 -> AddElement.shiftLimit(axis, NewStack.shiftLimit(axis));
            case 7 -> new AddTargets(axis, random.nextInt(axis.getTargets().size() + 1),
                    List.of(target(random), target(random)), "Add 2 targets");
            case 8 -> shuffled(axis, random);
            case 9 -> axis.getTargets().isEmpty() ? AddElement.target(axis, target(random))
                    : new RemoveTargets(axis.getTargets().subList(0, 1 + random.nextInt(axis.getTargets().size())));
            case 10 -> new ReorderStage(axis.getStages().get(random.nextInt(stages)), random.nextInt(stages));
            case 11 -> PasteStages.duplicate(axis.getStages().get(random.nextInt(stages)));
            case 12 -> PasteStages.of(axis, random.nextInt(stages + 1), axis.getStages().subList(0, random.nextInt(1, stages + 1)));
            case 13 -> resized(randomRow(axis, random), random);
            case 14 -> new PlaceStop(axis, session.analysis().spec().scale(), random.nextBoolean(), random.nextInt());
            case 15 -> new MoveDatum(axis, session.analysis().spec(), random.nextInt());
            case 16 -> new MarkTeeth(List.of(mark(randomRow(axis, random), random), mark(randomRow(axis, random), random)));
            case 17 -> change(axis, random);
            case 18 -> new TakeOver(session.positioner(), other(session, random), "Take over");
            case 19, 20, 21 -> MeasurementEdits.random(session, random);
            case 22 -> MeasurementEdits.printed(session.positioner(), random);
            case 23 -> axis.getTargets().isEmpty() ? AddElement.target(axis, target(random))
                    : new MoveTarget(axis.getTargets().get(0), session.analysis().spec().scale(), random.nextInt());
            case 24 -> new RemoveStop(axis, random.nextBoolean());
            default -> typed(session, random);
        };
    }

    private static Edit resized(Row row, Random random) {
        int atStart = ResizeRow.allowed(row, random.nextInt(41) - 20);
        return random.nextBoolean() ? new ResizeRow(row, atStart, 0) : new ResizeRow(row, 0, atStart);
    }

    private static Edit shuffled(Axis axis, Random random) {
        List<Target> order = new ArrayList<>(axis.getTargets());
        Collections.shuffle(order, random);
        return new ArrangeTargets(axis, order, "Shuffle");
    }

    private static Row randomRow(Axis axis, Random random) {
        Stage stage = axis.getStages().get(random.nextInt(axis.getStages().size()));
        return random.nextBoolean() ? stage.getBaseRow() : stage.getRiderRow();
    }

    private static ToothMark mark(Row row, Random random) {
        int first = random.nextInt(row.getTeeth());
        int last = Math.min(row.getTeeth() - 1, first + random.nextInt(6));
        return new ToothMark(row, first, last, random.nextBoolean() ? WearKind.WORN : WearKind.BARRED,
                random.nextBoolean() ? "" : "note");
    }

    /** Changes a worn range, also to another row, where there is one; else marks teeth. */
    private static Edit change(Axis axis, Random random) {
        List<WornRange> ranges = ToothMark.ranges(axis);
        ToothMark mark = mark(randomRow(axis, random), random);
        return ranges.isEmpty() ? new MarkTeeth(mark) : new ChangeMark(ranges.get(random.nextInt(ranges.size())), mark);
    }

    private static Target target(Random random) {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName("T" + random.nextInt(100));
        target.setPosition(random.nextInt(500) + " mm");
        return target;
    }

    /** Types another value into a random property of the first stage, whichever of two texts it takes. */
    private static Edit typed(Session session, Random random) {
        List<Property> open = Properties.of(session, session.axis().getStages().get(0)).stream()
                .filter(p -> !p.isDerived()).toList();
        while (true) {
            Property property = open.get(random.nextInt(open.size()));
            String text = property.choices().isEmpty() ? random.nextInt(1, 9) + (random.nextBoolean() ? " mm" : "")
                    : property.choices().get(random.nextInt(property.choices().size()));
            if (property.enter(text) instanceof Entry.Accepted accepted) {
                return accepted.edit();
            }
        }
    }
}
