// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.PrintSetup;
import pitchstack.model.Span;

/**
 * Says which lengths were measured on a part of a print set-up, in place of those that are there.
 *
 * @param setup the set-up
 * @param spans the lengths; they stay as they are, and copies are kept
 */
public record SetPrintSpans(PrintSetup setup, List<Span> spans) implements Edit {
    /** Copies the list. */
    public SetPrintSpans {
        spans = List.copyOf(EcoreUtil.copyAll(spans));
    }

    @Override
    public String label() {
        return "Change lengths of print set-up “" + setup.getName() + "”";
    }

    @Override
    public void apply() {
        setup.getSpans().clear();
        setup.getSpans().addAll(EcoreUtil.copyAll(spans));
    }
}
