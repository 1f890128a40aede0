package org.coldpleat.ui.dist;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The texts of licenses and notices that libraries bring along, one folder a library. */
final class LicenceTexts {
    private static final Pattern NAME = Pattern.compile("(?:[a-z0-9]+-)*(?:license|licence|notice|copying)[^/]*");

    private static final Pattern LISTED = Pattern.compile(":([^: ]+):([^: ]+) - ");

    private LicenceTexts() {}

    /**
     * Copies the texts out of all jars of a folder.
     *
     * @param listed what is known of the licenses, with {@code artifact:version} of every library
     * @throws IOException also if a jar is not on the list
     */
    static void copy(Path jars, String listed, Path target) throws IOException {
        for (Path jar : jars(jars)) {
            String library = jar.getFileName().toString().replaceFirst("\\.jar$", "");
            if (LISTED.matcher(listed).results().noneMatch(one -> isOf(library, one.group(1) + "-" + one.group(2)))) {
                throw new IOException(library + " is a leftover of an earlier build; build with clean");
            }
            try (JarFile file = new JarFile(jar.toFile())) {
                for (JarEntry entry : file.stream().filter(LicenceTexts::isText).toList()) {
                    String name = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
                    Path text = Files.createDirectories(target.resolve(library)).resolve(name);
                    try (InputStream in = file.getInputStream(entry)) {
                        Files.write(text, in.readAllBytes());
                    }
                }
            }
        }
    }

    /** The libraries of a folder, without our own parts. */
    static List<Path> jars(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".jar"))
                    .filter(file -> !file.getFileName().toString().startsWith("coldpleat-"))
                    .sorted()
                    .toList();
        }
    }

    /** A library that is built anew for each system has the name of the system behind its version. */
    private static boolean isOf(String library, String artifact) {
        return library.equals(artifact) || library.startsWith(artifact + "-");
    }

    private static boolean isText(JarEntry entry) {
        String name = entry.getName().toLowerCase(Locale.ROOT);
        boolean code = name.endsWith(".class") || name.endsWith(".properties");
        return !entry.isDirectory()
                && !code
                && NAME.matcher(name.substring(name.lastIndexOf('/') + 1)).matches();
    }
}
