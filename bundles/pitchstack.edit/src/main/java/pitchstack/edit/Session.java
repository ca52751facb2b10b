// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.accuracy.AccuracyFindings;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.edit.SessionListener.Change;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;

/**
 * One open document: its model, its one history of edits, which axis is looked at, and what is known of each axis now.
 * Used from one thread.
 */
public final class Session {
    private final Resource document;
    private final Positioner positioner;
    private final Consumer<? super RuntimeException> faults;
    private final BasicCommandStack history = new BasicCommandStack();
    private final CopyOnWriteArrayList<SessionListener> listeners = new CopyOnWriteArrayList<>();
    private final Map<Axis, AxisAnalysis> analyses = new HashMap<>();
    private final Map<Axis, AxisAnalysis> outdated = new HashMap<>();
    private final Suppositions suppositions = new Suppositions();
    private Axis axis;
    private Setting preview;
    private boolean played;
    private PlannedSetting proposal;
    private Long pointed;
    private boolean fractions;

    /**
     * Opens a session on a document.
     *
     * @param document a resource that holds one positioner with at least one axis
     * @param faults told of what a listener throws. The history would forget everything if a listener's fault came
     *     through to it, so that one faulty view would cost the person every undo.
     */
    public Session(Resource document, Consumer<? super RuntimeException> faults) {
        this.document = document;
        this.faults = faults;
        this.positioner = (Positioner) document.getContents().get(0);
        this.axis = positioner.getAxes().get(0);
        history.addCommandStackListener(event -> documentChanged());
        document.eAdapters().add(new Holder(this));
    }

    /**
     * The session that an element's document is open in.
     *
     * @param element an element of any document
     * @return empty for an element that is in no document, or in one that no session holds
     */
    public static Optional<Session> of(EObject element) {
        Resource document = element.eResource();
        return document == null ? Optional.empty()
                : Optional.ofNullable((Holder) EcoreUtil.getExistingAdapter(document, Holder.class)).map(Holder::session);
    }

    /** The document's resource. */
    public Resource document() {
        return document;
    }

    /** The device. */
    public Positioner positioner() {
        return positioner;
    }

    /** The history of edits. Change the document only through {@link #run}. */
    public CommandStack history() {
        return history;
    }

    /** Makes a change that can be undone. */
    public void run(Edit edit) {
        history.execute(new RecordedCommand(document, edit));
    }

    /** Whether the document differs from what was last saved. */
    public boolean isDirty() {
        return history.isSaveNeeded();
    }

    /** Notes that the document as it stands has been written. */
    public void saved() {
        history.saveIsDone();
        tell(Change.FILE);
    }

    /**
     * Shows inches as fractions where they are such, or as decimals. This belongs to the person and not to the document.
     */
    public void showFractions(boolean wanted) {
        if (fractions != wanted) {
            fractions = wanted;
            documentChanged();
        }
    }

    /** The axis that is looked at. */
    public Axis axis() {
        return axis;
    }

    /** Looks at another axis of the document. */
    public void look(Axis other) {
        axis = other;
        preview = null;
        proposal = null;
        pointed = null;
        tell(Change.AXIS);
    }

    /** What is known of an axis now. */
    public AxisAnalysis analysis(Axis of) {
        return analyses.computeIfAbsent(of, a -> AccuracyFindings.with(positioner,
                AxisAnalysis.of(positioner, a, outdated.remove(a), fractions)));
    }

    /** What is known now of the axis that is looked at. */
    public AxisAnalysis analysis() {
        return analysis(axis);
    }

    /** The setting to show: the one being dragged to, or else where the stages stand. */
    public Setting shown() {
        return preview().orElseGet(() -> analysis().current());
    }

    /** The setting being dragged to, if any. */
    public Optional<Setting> preview() {
        return Optional.ofNullable(preview);
    }

    /**
     * Shows a setting without changing the document.
     *
     * @param setting the setting, or {@code null} to show again where the stages stand
     */
    public void preview(Setting setting) {
        preview = setting;
        played = false;
        tell(Change.PREVIEW);
    }

    /** Shows a setting on the way of a proposed move that is played; the move itself stays what it is. */
    public void play(Setting setting) {
        preview = setting;
        played = true;
        tell(Change.PREVIEW);
    }

    /** Whether the setting shown is one on the way of a move that is played. */
    public boolean isPlaying() {
        return played && preview != null;
    }

    /** The move that is proposed on the axis that is looked at, from where the stages stand; empty where none is. */
    public Optional<PlannedSetting> proposal() {
        return Optional.ofNullable(proposal);
    }

    /**
     * Proposes a move without making it.
     *
     * @param move the move, or {@code null} for none
     */
    public void propose(PlannedSetting move) {
        if (!Objects.equals(move, proposal)) {
            proposal = move;
            tell(Change.PROPOSED);
        }
    }

    /** Teeth of the axis that is looked at which are supposed to be worn or barred, beside the document. */
    public List<ToothMark> supposed() {
        return suppositions.of(axis);
    }

    /**
     * Supposes marks of the axis that is looked at, instead of those supposed before; the document stays as it is.
     *
     * @param marks none to forget all
     */
    public void suppose(List<ToothMark> marks) {
        suppositions.set(axis, marks);
        tell(Change.SUPPOSED);
    }

    /** The axis that is looked at, in numbers, with what is supposed. */
    public AxisSpec supposedSpec() {
        return suppositions.on(analysis().spec(), axis);
    }

    /** The position that is pointed at somewhere in the window, in counts of the scale; empty where none is. */
    public OptionalLong pointed() {
        return pointed == null ? OptionalLong.empty() : OptionalLong.of(pointed);
    }

    /** Points at a position of the axis that is looked at, or at none. */
    public void point(OptionalLong position) {
        if (!position.equals(pointed())) {
            pointed = position.isPresent() ? Long.valueOf(position.getAsLong()) : null;
            tell(Change.POINTED);
        }
    }

    /** Adds a listener. */
    public void addListener(SessionListener listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(SessionListener listener) {
        listeners.remove(listener);
    }

    /** Lets {@link #of} find the session again from the document. */
    private static final class Holder extends AdapterImpl {
        private final Session session;

        Holder(Session session) {
            this.session = session;
        }

        Session session() {
            return session;
        }

        @Override
        public boolean isAdapterForType(Object type) {
            return type == Holder.class;
        }
    }

    private void documentChanged() {
        outdated.putAll(analyses);
        analyses.clear();
        outdated.keySet().retainAll(positioner.getAxes());
        preview = null;
        proposal = null;
        pointed = null;
        if (!positioner.getAxes().contains(axis)) {
            axis = positioner.getAxes().get(0);
        }
        tell(Change.DOCUMENT);
    }

    private void tell(Change change) {
        for (SessionListener listener : listeners) {
            try {
                listener.changed(change);
            } catch (RuntimeException fault) {
                faults.accept(fault);
            }
        }
    }
}
