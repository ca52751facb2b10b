// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.services.IServiceLocator;

/** The keys as they are registered. Nothing is written down twice: what is listed here is what works. */
final class KeyList {
    /** Commands of the platform that this program has no use for, by the beginnings of their ids. */
    private static final List<String> UNUSED = List.of("org.eclipse.ui.window.", "org.eclipse.ui.navigate.",
            "org.eclipse.ui.project.", "org.eclipse.ui.edit.text.", "org.eclipse.ui.editors.", "org.eclipse.ui.views.",
            "org.eclipse.ui.help.dynamicHelp", "org.eclipse.ui.file.properties", "org.eclipse.ui.file.refresh",
            "org.eclipse.ui.newWizard", "org.eclipse.ui.file.import", "org.eclipse.ui.edit.find", "org.eclipse.ui.browser.",
            "org.eclipse.ui.edit.rename", "org.eclipse.ui.edit.move", "org.eclipse.ui.edit.addBookmark",
            "org.eclipse.ui.edit.addTask", "org.eclipse.ui.file.closePart", "org.eclipse.ui.cocoa.",
            "org.eclipse.ui.part.");
    /** Of those, what serves here too, in words of this program. */
    private static final Map<String, String> USED = Map.of("org.eclipse.ui.window.nextView", "To the next view",
            "org.eclipse.ui.window.previousView", "To the view before", "org.eclipse.ui.window.nextEditor", "To the next file",
            "org.eclipse.ui.window.previousEditor", "To the file before",
            "org.eclipse.ui.window.activateEditor", "To the drawing", "org.eclipse.ui.window.maximizePart",
            "Enlarge the drawing or a view, or put it back");

    private final IBindingService bindings;
    private final IContextService contexts;

    KeyList(IServiceLocator services) {
        bindings = services.getService(IBindingService.class);
        contexts = services.getService(IContextService.class);
    }

    /**
     * One command.
     *
     * @param command what it does
     * @param keys all keys for it
     * @param where where they hold
     */
    record Line(String command, String keys, String where) { }

    /** All lines, by name. */
    List<Line> lines() {
        Map<List<String>, List<String>> keys = new LinkedHashMap<>();
        for (Binding binding : active()) {
            try {
                keys.computeIfAbsent(List.of(name(binding.getParameterizedCommand()), where(binding)),
                        line -> new ArrayList<>()).add(binding.getTriggerSequence().format());
            } catch (NotDefinedException removed) {
                // A binding of a command that no installed bundle defines does nothing, so it is not listed.
                continue;
            }
        }
        return keys.entrySet().stream()
                .map(entry -> new Line(entry.getKey().get(0), entry.getValue().stream().distinct().sorted()
                        .collect(Collectors.joining(", ")), entry.getKey().get(1)))
                .sorted(Comparator.comparing(Line::command)).toList();
    }

    private List<Binding> active() {
        String scheme = bindings.getActiveScheme().getId();
        Map<String, Binding> found = new LinkedHashMap<>();
        Stream.of(bindings.getBindings()).filter(binding -> scheme.equals(binding.getSchemeId()))
                .filter(binding -> binding.getPlatform() == null || binding.getPlatform().equals(bindings.getPlatform()))
                .forEach(binding -> take(found, binding));
        return found.values().stream().filter(binding -> serves(binding.getParameterizedCommand())).toList();
    }

    /** A binding for this system alone overrules one for all, also where it takes a key away. */
    private static void take(Map<String, Binding> found, Binding binding) {
        String place = binding.getContextId() + " " + binding.getTriggerSequence();
        Binding before = found.get(place);
        boolean stronger = before == null || before.getPlatform() == null || before.getParameterizedCommand() == null;
        if (stronger) {
            found.put(place, binding);
        }
    }

    private static boolean serves(ParameterizedCommand command) {
        return command != null && command.getCommand().isDefined()
                && (USED.containsKey(command.getId()) || UNUSED.stream().noneMatch(command.getId()::startsWith));
    }

    private static String name(ParameterizedCommand command) throws NotDefinedException {
        return USED.getOrDefault(command.getId(), command.getName());
    }

    private String where(Binding binding) throws NotDefinedException {
        return binding.getContextId().startsWith("org.eclipse.ui.contexts.") ? "everywhere"
                : contexts.getContext(binding.getContextId()).getName();
    }
}
