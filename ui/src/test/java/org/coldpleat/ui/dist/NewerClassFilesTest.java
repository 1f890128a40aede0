package org.coldpleat.ui.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.DataInputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class NewerClassFilesTest {
    private static final int JAVA_8 = 52;

    @Test
    void everyClassIsTakenByTheVerifierAndNoneIsLeftOld(@TempDir Path folder) throws Exception {
        Path jar = Path.of(CommandLine.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        Path copy = folder.resolve("copy.jar");
        assertTrue(NewerClassFiles.rewrite(jar, copy));
        assertFalse(NewerClassFiles.rewrite(copy, folder.resolve("again.jar")));
        int old = 0;
        try (JarFile before = new JarFile(jar.toFile());
                JarFile after = new JarFile(copy.toFile());
                URLClassLoader loader =
                        new URLClassLoader(new URL[] {copy.toUri().toURL()}, null)) {
            assertEquals(names(before), names(after));
            for (String name : names(after)) {
                if (name.startsWith("picocli/") && name.endsWith(".class")) {
                    old += format(before, name) < JAVA_8 ? 1 : 0;
                    assertEquals(JAVA_8, format(after, name), name);
                    if (!name.contains("groovy")) {
                        Class.forName(name.replace('/', '.').replaceFirst("\\.class$", ""), true, loader);
                    }
                }
            }
        }
        assertTrue(old > 100, "the library brings " + old + " old class files: is the change still of use?");
    }

    private static List<String> names(JarFile jar) {
        return jar.stream().map(JarEntry::getName).sorted().toList();
    }

    private static int format(JarFile jar, String name) throws Exception {
        try (DataInputStream in = new DataInputStream(jar.getInputStream(jar.getEntry(name)))) {
            in.readInt();
            in.readUnsignedShort();
            return in.readUnsignedShort();
        }
    }
}
