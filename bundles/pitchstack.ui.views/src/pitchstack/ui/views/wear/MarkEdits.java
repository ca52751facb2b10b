// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.ToothSpan;
import pitchstack.edit.ChangeMark;
import pitchstack.edit.MarkRules;
import pitchstack.edit.MarkTeeth;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;

/**
 * What can be done with the marks of an axis.
 *
 * @param session the document
 */
record MarkEdits(Session session) {
    /** Why a line cannot say something else; empty where it can. */
    Optional<String> refusal(MarkItem item, ToothMark wanted) {
        List<ToothMark> others = new ArrayList<>();
        for (MarkItem other : MarkItem.of(session)) {
            // Files may hold ranges that overlap; only a further overlap is refused.
            boolean meets = other.mark().row() == item.mark().row() && other.mark().span().meets(item.mark().span());
            if (!other.isSame(item) && other.isSupposed() == item.isSupposed() && !meets) {
                others.add(other.mark());
            }
        }
        return item.isSupposed() ? MarkRules.refusalToSuppose(wanted, others) : MarkRules.refusal(wanted, others);
    }

    /** Lets a line say something else, which is not refused. */
    void change(MarkItem item, ToothMark wanted) {
        if (wanted.equals(item.mark())) {
            return;
        }
        if (item.isSupposed()) {
            List<ToothMark> supposed = new ArrayList<>(session.supposed());
            supposed.set(item.number(), wanted);
            session.suppose(supposed);
        } else {
            session.run(new ChangeMark(item.range().orElseThrow(), wanted));
        }
    }

    /** A new mark: the first tooth near those that are engaged now which is not marked yet. */
    Optional<ToothMark> proposal(Row row, WearKind kind) {
        List<ToothSpan> taken = new ArrayList<>();
        MarkItem.of(session).stream().filter(item -> item.mark().row() == row).forEach(item -> taken.add(item.mark().span()));
        int teeth = row.getTeeth();
        int start = Math.max(0, engaged(row).first());
        for (int i = 0; i < teeth; i++) {
            ToothSpan tooth = new ToothSpan((start + i) % teeth, (start + i) % teeth);
            if (taken.stream().noneMatch(tooth::meets)) {
                return Optional.of(new ToothMark(row, tooth.first(), tooth.last(), kind, ""));
            }
        }
        return Optional.empty();
    }

    private ToothSpan engaged(Row row) {
        Stage stage = (Stage) row.eContainer();
        int number = session.axis().getStages().indexOf(stage);
        RowPair rows = session.analysis().spec().stages().get(number).rows();
        int index = session.analysis().current().index(number);
        return ToothMark.isBase(row) ? rows.engagedBase(index) : rows.engagedRider(index);
    }

    void add(ToothMark mark) {
        session.run(new MarkTeeth(mark));
    }

    void suppose(ToothMark mark) {
        List<ToothMark> supposed = new ArrayList<>(session.supposed());
        supposed.add(mark);
        session.suppose(supposed);
    }

    void delete(MarkItem item) {
        if (item.isSupposed()) {
            List<ToothMark> supposed = new ArrayList<>(session.supposed());
            supposed.remove(item.number());
            session.suppose(supposed);
        } else {
            session.run(new RemoveElement(item.range().orElseThrow()));
        }
    }

    /** Writes all that is supposed into the document, as one edit. */
    void keep() {
        List<ToothMark> supposed = session.supposed();
        if (!supposed.isEmpty()) {
            session.suppose(List.of());
            session.run(new MarkTeeth(supposed));
        }
    }

    void forget() {
        session.suppose(List.of());
    }
}
