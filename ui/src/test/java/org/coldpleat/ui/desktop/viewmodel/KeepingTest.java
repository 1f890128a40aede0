package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coldpleat.shared.casefile.writing.CaseWriter;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing that was typed is lost: saving, recovery, recent cases. */
class KeepingTest {
    @TempDir
    private Path folder;

    private long files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.count();
        }
    }

    @Test
    void savingReplacesTheWholeFileAndLeavesNothingBeside() throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, "a long text that was there before\n");
        CaseWriter.write(file, "ü\n");
        assertEquals("ü\n", Files.readString(file));
        assertEquals(1, files());
    }

    @Test
    void savingThatFailsKeepsTheOldFile() throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, "old\n");
        Path blocked = folder.resolve("case.yaml").resolve("not-a-folder.yaml");
        assertThrows(IOException.class, () -> CaseWriter.write(blocked, "new\n"));
        assertEquals("old\n", Files.readString(file));
        Path taken = Files.createDirectories(folder.resolve("taken").resolve("inside"))
                .getParent();
        assertThrows(IOException.class, () -> CaseWriter.write(taken, "new\n"));
        assertTrue(Files.isDirectory(taken.resolve("inside")));
        assertEquals(2, files());
    }

    @Test
    void savingThroughALinkWritesTheFileItNames() throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, "old\n");
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
        CaseWriter.write(link, "new\n");
        assertEquals("new\n", Files.readString(file));
        assertTrue(Files.isSymbolicLink(link));
    }

    @Test
    void aDraftOutlivesItsProgram() throws IOException {
        Recovery killed = new Recovery(folder, "999999999999-1");
        killed.keep(Optional.of(folder.resolve("case.yaml")), "title: half\nrest");
        killed.keep(Optional.empty(), "title: whole\n\nrest");
        Recovery next = new Recovery(folder);
        List<Recovery.LeftBehind> left = next.leftBehind();
        assertEquals(1, left.size());
        assertEquals("title: whole\n\nrest", left.get(0).text());
        assertEquals(Optional.empty(), left.get(0).file());
        next.discard(left.get(0));
        assertEquals(List.of(), next.leftBehind());
    }

    @Test
    void aDraftOfARunningProgramIsLeftAlone() throws IOException {
        Recovery running = new Recovery(folder);
        running.keep(Optional.empty(), "title: mine\n");
        assertEquals(List.of(), new Recovery(folder, "999999999999-1").leftBehind());
        running.forget();
        assertEquals(0, files());
    }

    @Test
    void aRecoveredDraftIsMarkedUnsaved() throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, "formatVersion: 1\n");
        CaseBench bench =
                CaseBench.recovered(CaseService.standard(), Optional.of(file), "formatVersion: 1\ntitle: Later\n");
        assertTrue(bench.isChanged());
        assertEquals(Optional.of("Later"), bench.draft().value("title"));
        bench.save(file);
        assertFalse(bench.isChanged());
    }

    @Test
    void recentCasesComeNewestFirstAndOnlyIfTheyAreStillThere() throws IOException {
        RecentCases recent = new RecentCases(folder.resolve("state"));
        assertEquals(List.of(), recent.files());
        Path one = Files.writeString(folder.resolve("one.yaml"), "");
        Path two = Files.writeString(folder.resolve("two.yaml"), "");
        recent.opened(one);
        recent.opened(two);
        recent.opened(one);
        assertEquals(List.of(one, two), new RecentCases(folder.resolve("state")).files());
        Files.delete(one);
        assertEquals(List.of(two), recent.files());
        for (int i = 0; i < 20; i++) {
            recent.opened(Files.writeString(folder.resolve(i + ".yaml"), ""));
        }
        assertEquals(RecentCases.MOST, recent.files().size());
    }
}
