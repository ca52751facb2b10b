// SPDX-License-Identifier: EPL-2.0
package pitchstack.modelgen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/**
 * Writes the Java code of a generator model, so that the repository holds the model and not the code. Code of an earlier
 * model is removed first: a class that the model no longer has would not compile with the others.
 */
public final class GenerateModel {
    private GenerateModel() {
    }

    /**
     * Generates the model code.
     *
     * @param args the project's name, its folder, and the generator model's path in it
     * @throws IOException if the model cannot be read
     */
    public static void main(String[] args) throws IOException {
        String project = args[0];
        URI folder = URI.createFileURI(Path.of(args[1]).toAbsolutePath() + "/");
        GenModel model = load(project, folder, args[2]);
        remove(Path.of(args[1]).resolve(Path.of("/" + project).relativize(Path.of(model.getModelDirectory()))));
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
                GenModelGeneratorAdapterFactory.DESCRIPTOR);
        Generator generator = new Generator();
        generator.setInput(model);
        Diagnostic result = generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE,
                new BasicMonitor());
        if (result.getSeverity() >= Diagnostic.ERROR) {
            throw new IOException("The model code could not be generated: " + result);
        }
    }

    private static void remove(Path generated) throws IOException {
        if (!Files.exists(generated)) {
            return;
        }
        try (Stream<Path> all = Files.walk(generated)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private static GenModel load(String project, URI folder, String path) throws IOException {
        EcorePlugin.getPlatformResourceMap().put(project, folder);
        ResourceSet set = new ResourceSetImpl();
        set.getPackageRegistry().put(EcorePackage.eNS_URI, EcorePackage.eINSTANCE);
        set.getPackageRegistry().put(GenModelPackage.eNS_URI, GenModelPackage.eINSTANCE);
        set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("ecore", new EcoreResourceFactoryImpl());
        set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("genmodel", new XMIResourceFactoryImpl());
        set.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(true));
        URI uri = URI.createPlatformResourceURI(project + "/" + path, true);
        GenModel model = (GenModel) set.getResource(uri, true).getContents().get(0);
        model.reconcile();
        model.setCanGenerate(true);
        model.setValidateModel(true);
        return model;
    }
}
