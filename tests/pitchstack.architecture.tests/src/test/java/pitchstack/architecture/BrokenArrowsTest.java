// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bundles made for the purpose, each with one wrong arrow: every one is found. */
class BrokenArrowsTest {
    @TempDir
    private Path bundles;
    @TempDir
    private Path others;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "pitchstack.core        | pitchstack.core.plan   | org.eclipse.emf.ecore.EObject",
        "pitchstack.core        | pitchstack.core.units  | org.osgi.framework.Bundle",
        "pitchstack.core        | pitchstack.core.check  | org.eclipse.swt.SWT",
        "pitchstack.core        | pitchstack.core.stack  | javax.swing.JFrame",
        "pitchstack.model       | pitchstack.model.file  | org.eclipse.emf.edit.domain.EditingDomain",
        "pitchstack.edit        | pitchstack.edit        | org.eclipse.jface.Viewer",
        "pitchstack.ui.views    | pitchstack.ui.views    | org.eclipse.gef.EditPart",
        "pitchstack.ui.views    | pitchstack.ui.views    | org.eclipse.draw2d.Figure",
        "pitchstack.app         | pitchstack.app         | org.eclipse.gef.EditPart",
        "pitchstack.cli         | pitchstack.cli         | org.eclipse.swt.SWT",
    })
    void findsWhatABundleMayNotUseOfOthers(String bundle, String from, String used) throws Exception {
        Sources.write(bundles, bundle, others).use(from, used).compile();
        assertComplaint(bundle + ": " + from + ".Uses uses " + used + ", which is not among what " + bundle
                + " may use.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "pitchstack.core      | pitchstack.model    | pitchstack.model.Axis",
        "pitchstack.model     | pitchstack.core     | pitchstack.core.stack.AxisSpec",
        "pitchstack.analysis  | pitchstack.edit     | pitchstack.edit.Session",
        "pitchstack.export    | pitchstack.edit     | pitchstack.edit.Session",
        "pitchstack.cli       | pitchstack.edit     | pitchstack.edit.Session",
        "pitchstack.ui.editor | pitchstack.ui.views | pitchstack.ui.views.TargetView",
        "pitchstack.ui.editor | pitchstack.export   | pitchstack.export.Card",
        "pitchstack.ui.views  | pitchstack.ui.editor| pitchstack.ui.editor.StackEditor",
        "pitchstack.ui.views  | pitchstack.app      | pitchstack.app.Start",
    })
    void findsAnArrowThatIsNotInTheTable(String bundle, String owner, String used) throws Exception {
        String from = bundle.equals("pitchstack.core") ? bundle + ".stack" : bundle;
        Sources.write(bundles, bundle, others).use(from, used).compile();
        assertComplaint(bundle + ": " + from + ".Uses uses " + used + ", which belongs to " + owner
                + ": the arrow from " + bundle + " is not in the table.");
    }

    @ParameterizedTest
    @CsvSource({"units,stack", "units,plan", "stack,check", "stack,geometry", "plan,check", "plan,accuracy",
        "geometry,plan", "accuracy,check", "plan,coverage", "coverage,check"})
    void findsAnArrowUpOrAcrossInTheCore(String low, String high) throws Exception {
        Sources.write(bundles, "pitchstack.core", others).use("pitchstack.core." + low, "pitchstack.core." + high + ".Thing")
                .compile();
        assertComplaint("pitchstack.core: pitchstack.core." + low + ".Uses uses pitchstack.core." + high
                + ".Thing, which points up or across: " + low + " may use only what is below it.");
    }

    @Test
    void findsAPackageOfTheCoreThatHasNoPlaceInTheOrder() throws Exception {
        Sources.write(bundles, "pitchstack.core", others).use("pitchstack.core.magic", "pitchstack.core.units.Thing").compile();
        assertComplaint("pitchstack.core: pitchstack.core.magic.Uses uses pitchstack.core.units.Thing, which is between"
                + " packages of which one has no place in the order: add it to CoreOrder.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "pitchstack.core | pitchstack.core.check | pitchstack.core.plan.Thing",
        "pitchstack.core | pitchstack.core.coverage | pitchstack.core.plan.Thing",
        "pitchstack.core | pitchstack.core.plan  | pitchstack.core.units.Thing",
        "pitchstack.core | pitchstack.core.plan  | pitchstack.core.plan.search.Thing",
        "pitchstack.edit | pitchstack.edit       | pitchstack.core.stack.Setting",
        "pitchstack.ui.editor | pitchstack.ui.editor | org.eclipse.gef.EditPart",
        "pitchstack.app  | pitchstack.app        | pitchstack.ui.views.TargetView",
    })
    void hasNothingAgainstArrowsOfTheTable(String bundle, String from, String used) throws Exception {
        Sources.write(bundles, bundle, others).use(from, used).compile();
        assertEquals(List.of(), complaints());
    }

    @Test
    void findsClassesInAPackageOfAnotherBundle() throws Exception {
        Sources.write(bundles, "pitchstack.edit", others).use("pitchstack.model", "java.util.List").compile();
        assertComplaint("pitchstack.model.Uses stands in pitchstack.edit, whose classes belong in pitchstack.edit.");
    }

    @Test
    void asksForALineInTheTableForABundleThatHasNone() throws Exception {
        Files.createDirectory(bundles.resolve("pitchstack.surprise"));
        assertComplaint("There is no line for the bundle pitchstack.surprise: add it to BundleTable, with what it may"
                + " use.");
    }

    @Test
    void doesNotPassABundleThatIsNotBuilt() throws Exception {
        Path source = bundles.resolve("pitchstack.core/src/main/java/pitchstack/core/Thing.java");
        Files.createDirectories(source.getParent());
        Files.writeString(source, "package pitchstack.core; class Thing { }");
        assertComplaint("pitchstack.core is not built: run the whole reactor to its end, this test is the last.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', value = {
        "pitchstack.ui.views  | Require-Bundle | org.eclipse.ui;bundle-version=\"[3.1,4)\",org.eclipse.gef"
            + " | org.eclipse.gef",
        "pitchstack.ui.views  | Require-Bundle | pitchstack.ui.editor;visibility:=reexport | pitchstack.ui.editor",
        "pitchstack.ui.editor | Require-Bundle | pitchstack.edit, pitchstack.ui.views | pitchstack.ui.views",
        "pitchstack.app       | Import-Package | org.eclipse.draw2d.geometry;version=\"3.2\" | org.eclipse.draw2d.geometry",
        "pitchstack.help      | Require-Bundle | org.eclipse.ui | org.eclipse.ui",
        "pitchstack.app       | Fragment-Host  | org.eclipse.gef | org.eclipse.gef",
    })
    void findsWhatAManifestMayNotAskFor(String bundle, String header, String value, String name) throws Exception {
        manifest(bundle, bundle + ";singleton:=true", header + ": " + value);
        assertComplaint(bundle + ": " + header + " names " + name + ", which is not among what " + bundle
                + " may use.");
    }

    @Test
    void findsAManifestThatNamesAnotherBundle() throws Exception {
        manifest("pitchstack.help", "pitchstack.hlep", "Bundle-Version: 1.0");
        assertComplaint("pitchstack.help: the manifest names the bundle pitchstack.hlep, not as its folder.");
    }

    @Test
    void readsTheNamesOfAHeaderWhateverStandsBetweenThem() {
        assertEquals(List.of("a.b", "c", "d"),
                ManifestRules.names("a.b;version=\"[1,2)\";x:=\"p,q;r\", c;resolution:=optional ,d"));
        assertEquals(List.of(), ManifestRules.names(null));
        assertThrows(IllegalArgumentException.class, () -> ManifestRules.names("a;version=\"[1,2), b"));
    }

    private void manifest(String bundle, String name, String line) throws Exception {
        Path folder = Files.createDirectories(bundles.resolve(bundle).resolve("META-INF"));
        Files.writeString(folder.resolve("MANIFEST.MF"), "Manifest-Version: 1.0\nBundle-SymbolicName: " + name + "\n"
                + line + "\n");
    }

    private void assertComplaint(String sentence) throws Exception {
        assertEquals(List.of(sentence), complaints());
    }

    private List<String> complaints() throws Exception {
        return List.copyOf(new Folders(bundles, BundleTable.PITCHSTACK).complaints());
    }
}
