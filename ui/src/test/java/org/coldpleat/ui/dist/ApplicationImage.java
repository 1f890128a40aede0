package org.coldpleat.ui.dist;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/** Makes the application image of the system it runs on: program, runtime, documents, archive, checksum. */
final class ApplicationImage {
    /** Parts of the Java platform that the program needs: jdeps over all jars of the program, and names for Batik. */
    private static final String MODULES =
            "java.base,java.desktop,java.naming,java.net.http,java.scripting,java.sql,jdk.jfr,jdk.unsupported";

    /** As the launcher of a checkout starts it. */
    private static final List<String> JAVA =
            List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmn24m", "-Xshare:auto", "-XX:-UsePerfData");

    private static final String SCRIPT = """
            #!/bin/sh
            # Starts the program. Java reads the command line and names of files in the encoding of the locale; "14 °F" must
            # arrive whole in a plain C locale too.
            script=$0
            while [ -L "$script" ]; do
                target=$(readlink "$script")
                case $target in
                    /*) script=$target ;;
                    *) script=${script%/*}/$target ;;
                esac
            done
            case ${LC_ALL:-${LC_CTYPE:-${LANG:-}}} in
                *.[Uu][Tt][Ff]8 | *.[Uu][Tt][Ff]-8) ;;
                *) LC_ALL=C.UTF-8; export LC_ALL ;;
            esac
            exec "${script%/*}/../libexec/${script##*/}" "$@"
            """;

    private static final String WHERE = """
            The texts that a library brings stand in the folder of its name. A library without a folder is under a text that
            stands here already: Apache License 2.0 in ../LICENSE, GNU Lesser General Public License 2.1 in
            openhtmltopdf-core-*/LICENSE-LGPL-2.1.txt, GNU General Public License 2 with Classpath Exception (GPLv2+CE) in
            java-runtime/java.base. The Java runtime in this folder is an OpenJDK under GPLv2+CE; its texts are in java-runtime.
            Sources of all libraries can be had from the Maven Central Repository under the names above.
            """;

    private static final String ICON = "/org/coldpleat/ui/desktop/view/icon.png";

    private final Path root;
    private final Path build;
    private final String version;
    private final Platform platform = Platform.here();

    private ApplicationImage(Path root, Path build, String version) {
        this.root = root;
        this.build = build;
        this.version = version;
    }

    /**
     * Makes image, archive and checksum in {@code dist} below the build folder.
     *
     * @param words folder of the project, build folder of the module with the program in {@code app} and the parts
     *     already made in {@code dist-parts}, version, and the time that stands for the time of the build
     */
    public static void main(String[] words) throws Exception {
        ApplicationImage image = new ApplicationImage(Path.of(words[0]), Path.of(words[1]), words[2]);
        Path folder = image.make();
        Path archive = ImageArchive.pack(folder, image.platform, words[3]);
        ImageArchive.checksum(archive);
    }

    private Path make() throws IOException, InterruptedException {
        Path dist = build.resolve("dist");
        deleteTree(dist);
        Path work = Files.createDirectories(dist.resolve("work"));
        Path runtime = runtime(work.resolve("runtime"));
        Path bare = launchers(work, runtime);
        Path folder = dist.resolve(platform.imageName(version));
        if (platform.isMac()) {
            Files.move(bare, Files.createDirectories(folder).resolve(bare.getFileName()));
        } else {
            Files.move(bare, folder);
        }
        if (platform.system().equals("linux")) {
            localeScripts(folder);
        }
        documents(folder);
        licences(folder.resolve("licenses"), runtime);
        deleteTree(work);
        return folder;
    }

    /** A runtime with only what is needed, and an archive of the platform's classes, which makes starts quicker. */
    private Path runtime(Path runtime) throws IOException, InterruptedException {
        run(
                "jlink",
                "--add-modules",
                MODULES,
                "--strip-java-debug-attributes",
                "--no-man-pages",
                "--no-header-files",
                "--compress=1",
                "--output",
                runtime.toString());
        Process dump = new ProcessBuilder(
                        runtime.resolve("bin").resolve("java").toString(), "-Xshare:dump", "-XX:+UseSerialGC")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (dump.waitFor() != 0) {
            throw new IOException("the runtime cannot archive its classes");
        }
        return runtime;
    }

    /** Scripts in place of the launchers of Linux, which move beside them. */
    private static void localeScripts(Path folder) throws IOException {
        Path bin = folder.resolve("bin");
        Path moved = folder.resolve("libexec");
        Files.move(bin, moved);
        Files.createDirectories(bin);
        try (Stream<Path> launchers = Files.list(moved)) {
            for (Path launcher : launchers.toList()) {
                Path script = bin.resolve(launcher.getFileName());
                Files.writeString(script, SCRIPT);
                Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
            }
        }
    }

    private Path launchers(Path work, Path runtime) throws IOException {
        Path windowed = Files.writeString(
                work.resolve("window.properties"),
                "main-class=org.coldpleat.ui.WindowMain\nwin-console=false\nwin-menu=true\n");
        List<String> words = new ArrayList<>(List.of(
                "--type",
                "app-image",
                "--name",
                "coldpleat",
                "--app-version",
                packageVersion(),
                "--vendor",
                "Coldpleat",
                "--description",
                "Cold-start bypass behavior of cut-open engine oil filters",
                "--input",
                jars(work.resolve("app")).toString(),
                "--main-jar",
                "coldpleat-ui-" + version + ".jar",
                "--main-class",
                "org.coldpleat.ui.Main",
                "--runtime-image",
                runtime.toString(),
                "--icon",
                icon(work).toString(),
                "--add-launcher",
                "coldpleat-window=" + windowed,
                "--dest",
                work.toString()));
        for (String option : JAVA) {
            words.add("--java-options");
            words.add(option);
        }
        if (platform.isWindows()) {
            words.add("--win-console");
        }
        run("jpackage", words.toArray(String[]::new));
        return work.resolve(platform.isMac() ? "coldpleat.app" : "coldpleat");
    }

    /** A version of numbers alone; that of a package for macOS cannot begin with 0. */
    private String packageVersion() {
        String numbers = version.replaceFirst("-.*", "");
        return platform.isMac() && numbers.startsWith("0.") ? "1" + numbers.substring(1) : numbers;
    }

    /** The program without what its launcher in a checkout keeps beside it. */
    private Path jars(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (Stream<Path> files = Files.list(build.resolve("app"))) {
            for (Path jar :
                    files.filter(file -> file.toString().endsWith(".jar")).toList()) {
                Files.copy(jar, folder.resolve(jar.getFileName()));
            }
        }
        return folder;
    }

    private Path icon(Path work) throws IOException {
        byte[] png;
        try (InputStream in = ApplicationImage.class.getResourceAsStream(ICON)) {
            png = in.readAllBytes();
        }
        if (platform.isWindows()) {
            return Files.write(work.resolve("coldpleat.ico"), IconFile.ico(png));
        }
        return platform.isMac()
                ? Files.write(work.resolve("coldpleat.icns"), IconFile.icns(png))
                : Files.write(work.resolve("coldpleat.png"), png);
    }

    private void documents(Path folder) throws IOException {
        for (String name : List.of("LICENSE", "README.md", "CHANGELOG.md", "DEVELOPERS.md")) {
            Files.copy(root.resolve(name), folder.resolve(name));
        }
        copyTree(root.resolve("docs"), folder.resolve("docs"));
        copyTree(root.resolve("demo-cases"), folder.resolve("demo-cases"));
        Path parts = build.resolve("dist-parts");
        copyTree(parts.resolve("completion"), folder.resolve("share/bash-completion/completions"));
        copyTree(parts.resolve("man"), folder.resolve("share/man/man1"));
    }

    /** List of libraries with their licenses, the texts they bring, and those of the runtime. */
    private void licences(Path target, Path runtime) throws IOException {
        Files.createDirectories(target);
        String listed = Files.readString(build.resolve("classes/org/coldpleat/ui/desktop/view/libraries.txt"));
        Files.writeString(target.resolve("THIRD-PARTY.txt"), listed.strip() + "\n\n" + WHERE);
        LicenceTexts.copy(build.resolve("app"), listed, target);
        copyTree(runtime.resolve("legal"), target.resolve("java-runtime"));
    }

    private static void run(String tool, String... words) throws IOException {
        ToolProvider provider =
                ToolProvider.findFirst(tool).orElseThrow(() -> new IOException("this Java has no " + tool));
        int code = provider.run(System.out, System.err, words);
        if (code != 0) {
            throw new IOException(tool + " ended with " + code);
        }
    }

    private static void copyTree(Path from, Path to) throws IOException {
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) throws IOException {
                if (folder.getFileName().toString().equals("target")) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                Files.createDirectories(to.resolve(from.relativize(folder).toString()));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                if (!file.getFileName().toString().equals("pom.xml")) {
                    Path copy = to.resolve(from.relativize(file).toString());
                    Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
                }
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private static void deleteTree(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path done, IOException problem) throws IOException {
                Files.delete(done);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
