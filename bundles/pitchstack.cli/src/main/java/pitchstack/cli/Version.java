// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of the program and of the Java it runs on. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(in);
        }
        return new String[] {"Pitchstack " + properties.getProperty("version")
                + " (Java " + System.getProperty("java.version") + ")"};
    }
}
