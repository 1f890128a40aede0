package org.coldpleat.ui.desktop.viewmodel;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coldpleat.shared.casefile.writing.CaseWriter;

/**
 * Keeps what is being written in a file of its own until it is saved, so that it is still there after the program or the
 * machine has died. Every running program has one such file; one whose program runs no more is left behind.
 */
public final class Recovery {
    private static final String ENDING = ".recovery";

    private final Path folder;
    private final Path own;

    /**
     * What a program left behind.
     *
     * @param kept the recovery file
     * @param file the file it belongs to; empty if it was never saved
     * @param text the draft
     */
    public record LeftBehind(Path kept, Optional<Path> file, String text) {}

    /** @param folder where recovery files are kept; made when needed */
    public Recovery(Path folder) {
        this(folder, owner(ProcessHandle.current()));
    }

    Recovery(Path folder, String owner) {
        this.folder = folder;
        this.own = folder.resolve(owner + ENDING);
    }

    private static String owner(ProcessHandle process) {
        long since = process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
        return process.pid() + "-" + since;
    }

    /** Where a program keeps what is neither settings nor documents, by the habits of the system. */
    public static Path stateFolder() {
        String state = System.getenv("XDG_STATE_HOME");
        String local = System.getenv("LOCALAPPDATA");
        Path home = Path.of(System.getProperty("user.home", "."));
        Path base = state != null && !state.isBlank()
                ? Path.of(state)
                : local != null ? Path.of(local) : home.resolve(".local").resolve("state");
        return base.resolve("coldpleat");
    }

    /** Keeps a draft. */
    public void keep(Optional<Path> file, String text) throws IOException {
        Files.createDirectories(folder);
        String head = file.map(path -> path.toAbsolutePath().toString()).orElse("");
        CaseWriter.write(own, head + "\n" + text);
    }

    /** Forgets what was kept, because it was saved or given up. */
    public void forget() throws IOException {
        Files.deleteIfExists(own);
    }

    /** Drafts of programs that run no more. Files that cannot be read are passed over. */
    public List<LeftBehind> leftBehind() {
        List<LeftBehind> found = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return found;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(ENDING) && !file.equals(own) && !runs(name)) {
                    read(file).ifPresent(found::add);
                }
            }
        } catch (IOException e) {
            return found;
        }
        return found;
    }

    /** Takes a left draft away, once it was taken up or given up. */
    public void discard(LeftBehind left) throws IOException {
        Files.deleteIfExists(left.kept());
    }

    private static boolean runs(String name) {
        String owner = name.substring(0, name.length() - ENDING.length());
        String pid = owner.replaceFirst("-.*", "");
        return pid.matches("\\d{1,18}")
                && ProcessHandle.of(Long.parseLong(pid))
                        .map(process -> owner(process).equals(owner))
                        .orElse(false);
    }

    private static Optional<LeftBehind> read(Path file) {
        try {
            String all = Files.readString(file, StandardCharsets.UTF_8);
            int line = all.indexOf('\n');
            String head = line < 0 ? "" : all.substring(0, line);
            Optional<Path> belongs = head.isEmpty() ? Optional.empty() : Optional.of(Path.of(head));
            return Optional.of(new LeftBehind(file, belongs, all.substring(line + 1)));
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
