// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarContributionItem;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ActionFactory.IWorkbenchAction;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;

/**
 * The menus and the tool bar, of standard actions under their standard ids. Other plug-ins add theirs at the named
 * places: {@code menu:file?after=new.ext}, {@code menu:file?after=open.ext}, {@code menu:file?after=save.ext},
 * {@code menu:edit?after=edit.ext}, {@code menu:window?after=additions}, {@code menu:help?after=additions}, whole menus
 * at {@code menu:org.eclipse.ui.main.menu?after=additions}, and {@code toolbar:edit?after=additions}.
 */
final class PitchstackActionBars extends ActionBarAdvisor {

    private IWorkbenchWindow window;

    PitchstackActionBars(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow target) {
        window = target;
    }

    @Override
    protected void fillMenuBar(IMenuManager bar) {
        bar.add(fileMenu());
        bar.add(editMenu());
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        bar.add(windowMenu());
        bar.add(helpMenu());
    }

    @Override
    protected void fillCoolBar(ICoolBarManager bar) {
        ToolBarManager file = new ToolBarManager(SWT.FLAT);
        file.add(new GroupMarker(IWorkbenchActionConstants.NEW_EXT));
        file.add(action(ActionFactory.SAVE));
        bar.add(new ToolBarContributionItem(file, IWorkbenchActionConstants.TOOLBAR_FILE));
        ToolBarManager edit = new ToolBarManager(SWT.FLAT);
        edit.add(action(ActionFactory.UNDO));
        edit.add(action(ActionFactory.REDO));
        edit.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        bar.add(new ToolBarContributionItem(edit, IWorkbenchActionConstants.M_EDIT));
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    }

    private MenuManager fileMenu() {
        MenuManager menu = new MenuManager("&File", IWorkbenchActionConstants.M_FILE);
        menu.add(new GroupMarker(IWorkbenchActionConstants.FILE_START));
        menu.add(new GroupMarker(IWorkbenchActionConstants.NEW_EXT));
        menu.add(command("pitchstack.app.open"));
        menu.add(new GroupMarker(IWorkbenchActionConstants.OPEN_EXT));
        menu.add(new Separator());
        menu.add(action(ActionFactory.CLOSE, "&Close"));
        menu.add(action(ActionFactory.CLOSE_ALL, "C&lose All"));
        menu.add(new GroupMarker(IWorkbenchActionConstants.CLOSE_EXT));
        menu.add(new Separator());
        menu.add(action(ActionFactory.SAVE));
        menu.add(action(ActionFactory.SAVE_AS));
        menu.add(action(ActionFactory.SAVE_ALL));
        menu.add(new GroupMarker(IWorkbenchActionConstants.SAVE_EXT));
        menu.add(new Separator());
        menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new GroupMarker(IWorkbenchActionConstants.FILE_END));
        menu.add(new Separator());
        menu.add(action(ActionFactory.QUIT));
        return menu;
    }

    private MenuManager editMenu() {
        MenuManager menu = new MenuManager("&Edit", IWorkbenchActionConstants.M_EDIT);
        menu.add(new GroupMarker(IWorkbenchActionConstants.EDIT_START));
        menu.add(action(ActionFactory.UNDO));
        menu.add(action(ActionFactory.REDO));
        menu.add(new GroupMarker(IWorkbenchActionConstants.UNDO_EXT));
        menu.add(new Separator());
        menu.add(action(ActionFactory.CUT));
        menu.add(action(ActionFactory.COPY));
        menu.add(action(ActionFactory.PASTE));
        menu.add(new Separator());
        menu.add(action(ActionFactory.DELETE));
        menu.add(action(ActionFactory.SELECT_ALL));
        menu.add(new GroupMarker("edit.ext"));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new GroupMarker(IWorkbenchActionConstants.EDIT_END));
        return menu;
    }

    private MenuManager windowMenu() {
        MenuManager views = new MenuManager("Show &View", "showView");
        views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
        MenuManager menu = new MenuManager("&Window", IWorkbenchActionConstants.M_WINDOW);
        menu.add(views);
        menu.add(action(ActionFactory.RESET_PERSPECTIVE, "&Reset Layout…"));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new Separator());
        if (window.getWorkbench().getPreferenceManager().getRootSubNodes().length > 0) {
            menu.add(action(ActionFactory.PREFERENCES));
        }
        return menu;
    }

    private MenuManager helpMenu() {
        MenuManager menu = new MenuManager("&Help", IWorkbenchActionConstants.M_HELP);
        menu.add(action(ActionFactory.INTRO));
        menu.add(new GroupMarker(IWorkbenchActionConstants.HELP_START));
        menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new Separator());
        menu.add(action(ActionFactory.ABOUT));
        return menu;
    }

    /** One action serves all its places; registering it makes its key binding work and disposes of it at the end. */
    private IWorkbenchAction action(ActionFactory factory) {
        if (getAction(factory.getId()) instanceof IWorkbenchAction known) {
            return known;
        }
        IWorkbenchAction made = factory.create(window);
        register(made);
        return made;
    }

    /** The same under a name of ours: the platform's own speaks of editors and perspectives. */
    private IWorkbenchAction action(ActionFactory factory, String text) {
        IWorkbenchAction action = action(factory);
        action.setText(text);
        return action;
    }

    private IContributionItem command(String id) {
        return new CommandContributionItem(
                new CommandContributionItemParameter(window, id, id, CommandContributionItem.STYLE_PUSH));
    }
}
