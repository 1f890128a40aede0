package org.coldpleat.ui.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A browser without a window, where there is one on this machine. */
record Browser(Path program, Path folder) {
    private static final int LONGEST = 120;

    /** The browser of this machine; empty if there is none. */
    static Optional<Browser> find(Path folder) {
        return Stream.of(System.getenv("PATH").split(":", -1))
                .map(Path::of)
                .flatMap(path -> Stream.of(path.resolve("chromium"), path.resolve("chromium-browser")))
                .filter(Files::isExecutable)
                .findFirst()
                .map(program -> new Browser(program, folder));
    }

    /**
     * What came of opening a page.
     *
     * @param out what the browser wrote to standard output
     * @param messages what it wrote to standard error
     */
    record Visit(String out, String messages) {}

    /** Opens a page. */
    Visit open(Path page, String... options) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        List<String> words = new ArrayList<>(List.of(
                program.toString(),
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--no-first-run",
                "--no-default-browser-check",
                "--host-resolver-rules=MAP * ~NOTFOUND",
                "--enable-logging=stderr",
                "--window-size=1200,900",
                "--user-data-dir=" + folder.resolve("profile"),
                "--log-net-log=" + folder.resolve("net.json")));
        words.addAll(List.of(options));
        words.add(page.toUri().toString());
        Process process = new ProcessBuilder(words)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(LONGEST, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("the browser did not end within " + LONGEST + " s");
        }
        return new Visit(
                Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.ISO_8859_1));
    }

    /** Addresses that the last page asked the network for; what the browser asks on its own account does not count. */
    List<String> asked() throws IOException {
        String log = Files.readString(folder.resolve("net.json"), StandardCharsets.ISO_8859_1);
        return ASKED.matcher(log).results().map(match -> match.group(1)).toList();
    }

    private static final Pattern ASKED =
            Pattern.compile("\"initiator\":\"(?!not an origin)[^\"]*\"[^}]*[}]?[^}]*\"url\":\"(https?:[^\"]*)\"");
}
