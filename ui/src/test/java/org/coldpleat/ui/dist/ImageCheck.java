package org.coldpleat.ui.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tries the application image as one who has just unpacked it: elsewhere, with no Java on the path, no home of its own and a
 * plain locale. Run by the profile {@code dist} only, after the image is made.
 */
class ImageCheck {
    private static final Platform PLATFORM = Platform.here();
    private static final String CASE = "demo-cases/ridge-hut-generator/case.yaml";
    private static final int LONGEST = 120;

    @TempDir
    private static Path elsewhere;

    private static Path archive;
    private static Path image;

    private record Ended(int code, String out, String messages) {}

    @BeforeAll
    static void unpack() throws IOException, InterruptedException {
        Path made = Path.of(System.getProperty("image.folder"));
        String name = PLATFORM.imageName(System.getProperty("image.version"));
        archive = made.resolve(name + (PLATFORM.isWindows() ? ".zip" : ".tar.gz"));
        Path folder = Files.createDirectories(elsewhere.resolve("un packed ü"));
        assertEquals(
                0,
                new ProcessBuilder("tar", "-xf", archive.toString(), "-C", folder.toString())
                        .inheritIO()
                        .start()
                        .waitFor());
        image = folder.resolve(name);
    }

    private static Ended run(Map<String, String> environment, String launcher, String... words)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(image.resolve(PLATFORM.launcher(launcher)).toString()));
        command.addAll(List.of(words));
        return run(environment, command);
    }

    private static Ended run(Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        Path out = elsewhere.resolve("out.txt");
        Path err = elsewhere.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(image.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        if (!PLATFORM.isWindows()) {
            builder.environment().clear();
        }
        builder.environment().put("PATH", bareFolder());
        builder.environment().putAll(environment);
        Process process = builder.start();
        if (!process.waitFor(LONGEST, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException(command + " did not end within " + LONGEST + " s");
        }
        return new Ended(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    /** An empty folder: nothing on the path at all. */
    private static String bareFolder() throws IOException {
        return Files.createDirectories(elsewhere.resolve("nothing")).toString();
    }

    @Test
    void checksumIsThatOfTheArchive() throws IOException {
        String line = Files.readString(archive.resolveSibling(archive.getFileName() + ".sha256"));
        assertEquals(ImageArchive.sha256(archive) + "  " + archive.getFileName() + "\n", line);
    }

    @Test
    void comparesADemoCaseAsTheBuildDoes() throws Exception {
        Ended ended = run(Map.of(), "coldpleat", "compare", CASE, "--format", "csv");
        assertEquals(0, ended.code(), ended.messages());
        String expected = Files.readString(image.resolve("demo-cases/ridge-hut-generator/expected.csv"));
        String[] firstRow = expected.lines().skip(1).findFirst().orElseThrow().split(",", -1);
        assertTrue(ended.out().contains(firstRow[0]), ended.out());
        assertEquals("", ended.messages());
        assertTrue(run(Map.of(), "coldpleat", "--version").out().contains(System.getProperty("image.version")));
    }

    @Test
    void wordsBeyondAsciiArriveWhole() throws Exception {
        assumeFalse(PLATFORM.isWindows(), "a console of Windows has a code page of its own");
        Path copy = image.resolve("fälle.yaml");
        Files.copy(image.resolve(CASE), copy);
        Ended ended = run(
                Map.of(),
                "coldpleat",
                "point",
                "fälle.yaml",
                "--candidate",
                "Slate",
                "--flow",
                "9.5 L/min",
                "--temperature",
                "14 °F");
        assertEquals(0, ended.code(), ended.messages());
        assertTrue(ended.out().contains("-10"), ended.out());
    }

    @Test
    void startsThroughALinkFromElsewhere() throws Exception {
        assumeTrue(PLATFORM.system().equals("linux"), "launchers of other systems are programs, not scripts");
        Path link = Files.createSymbolicLink(elsewhere.resolve("coldpleat"), image.resolve("bin/coldpleat"));
        Ended ended = run(Map.of("PATH", "/usr/bin"), List.of(link.toString(), "--version"));
        assertEquals(0, ended.code(), ended.messages());
    }

    @Test
    void writesReportsAndPictures() throws Exception {
        Path folder = elsewhere.resolve("written");
        Files.createDirectories(folder);
        for (String name : List.of("report.html", "report.pdf")) {
            Path file = folder.resolve(name);
            Ended ended = run(Map.of(), "coldpleat", "report", CASE, "--draws", "0", "--out", file.toString());
            assertEquals(0, ended.code(), ended.messages());
            assertTrue(Files.size(file) > 20_000, name);
        }
        Ended ended = run(Map.of(), "coldpleat", "compare", CASE, "--plots", folder.toString());
        assertEquals(0, ended.code(), ended.messages());
        try (Stream<Path> files = Files.list(folder)) {
            assertTrue(files.anyMatch(file -> file.toString().endsWith(".png")));
        }
    }

    @Test
    void windowSaysWhatToDoWithoutADisplay() throws Exception {
        assumeTrue(PLATFORM.system().equals("linux"), "other systems always have a display");
        for (Ended ended : List.of(
                run(Map.of(), "coldpleat", "window", CASE),
                run(Map.of(), "coldpleat-window"),
                run(Map.of(), "coldpleat-window", CASE))) {
            assertEquals(1, ended.code());
            assertTrue(ended.messages().contains("no display"), ended.messages());
            assertTrue(ended.messages().contains("coldpleat compare"), ended.messages());
        }
    }

    @Test
    void windowOpensOnADisplay() throws Exception {
        Path xvfb = Path.of("/usr/bin/xvfb-run");
        assumeTrue(Files.isExecutable(xvfb), "there is no xvfb-run on this machine; .ci/run installs it");
        String window = image.resolve(PLATFORM.launcher("coldpleat-window")).toString();
        // an end by timeout after 15 s, code 124, means that the window stood until then
        Ended ended = run(
                Map.of("PATH", "/usr/bin:/bin"),
                List.of(
                        xvfb.toString(),
                        "-a",
                        "timeout",
                        "15",
                        window,
                        image.resolve(CASE).toString()));
        assertEquals(124, ended.code(), ended.messages());
        assertFalse(ended.messages().contains("Exception"), ended.messages());
    }

    @Test
    void documentsAreThereAndTheirLinksLead() throws IOException {
        for (String name : List.of(
                "LICENSE",
                "README.md",
                "CHANGELOG.md",
                "licenses/THIRD-PARTY.txt",
                "licenses/java-runtime/java.base/LICENSE",
                "docs/guide.md",
                CASE)) {
            assertTrue(Files.size(image.resolve(name)) > 100, name);
        }
        Pattern link = Pattern.compile("\\]\\(([^)#:]+)(?:#[^)]*)?\\)");
        try (Stream<Path> walk = Files.walk(image)) {
            for (Path page :
                    walk.filter(file -> file.toString().endsWith(".md")).toList()) {
                Matcher found = link.matcher(Files.readString(page));
                while (found.find()) {
                    assertTrue(
                            Files.exists(page.resolveSibling(found.group(1))),
                            image.relativize(page) + " -> " + found.group(1));
                }
            }
        }
    }

    @Test
    void everyCommandHasAManualPageAndCompletion() throws Exception {
        String completion = Files.readString(image.resolve("share/bash-completion/completions/coldpleat"));
        String help = run(Map.of(), "coldpleat", "--help").out();
        List<String> commands = help.lines()
                .dropWhile(line -> !line.startsWith("Commands:"))
                .skip(1)
                .map(line -> line.replaceFirst("^  ([a-z]+) .*", "$1"))
                .filter(word -> word.matches("[a-z]+"))
                .toList();
        assertTrue(commands.contains("compare") && commands.size() > 15, help);
        for (String command : commands) {
            String page = Files.readString(image.resolve("share/man/man1/coldpleat-" + command + ".1"));
            assertTrue(page.contains("NAME") && page.contains("SYNOPSIS"), command);
            assertTrue(completion.contains("_picocli_coldpleat_" + command), command);
        }
    }
}
