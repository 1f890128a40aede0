package org.coldpleat.ui.show;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coldpleat.ui.commandline.CommandLineFace;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PicturesTest {
    private static void write(Path folder) {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("demo-cases"))) {
            at = at.getParent();
        }
        StringWriter err = new StringWriter();
        int code = CommandLineFace.run(
                List.of(
                        "pictures",
                        at.resolve("demo-cases/half-the-area/case.yaml").toString(),
                        "--out",
                        folder.toString(),
                        "--size",
                        "540x960"),
                CaseService.standard(),
                new PrintWriter(new StringWriter()),
                new PrintWriter(err));
        assertEquals(0, code, err.toString());
    }

    private static List<Path> svgs(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".svg"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void twoRunsWriteTheSameBytesAndEveryPictureHasACaption(@TempDir Path first, @TempDir Path second)
            throws IOException {
        write(first);
        write(second);
        String captions = Files.readString(first.resolve("captions.txt"), StandardCharsets.UTF_8);
        assertTrue(svgs(first).size() > 5, captions);
        for (Path svg : svgs(first)) {
            String name = svg.getFileName().toString();
            assertArrayEquals(Files.readAllBytes(svg), Files.readAllBytes(second.resolve(name)), name);
            assertTrue(Files.exists(first.resolve(name.replace(".svg", ".png"))), name);
            assertTrue(captions.contains(name.replace(".svg", "")), name);
        }
    }
}
