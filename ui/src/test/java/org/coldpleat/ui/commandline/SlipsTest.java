package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A slip of the one who types, of the kind that passes every check of a single value, may give a strange answer with
 * notices, or none, but never an inner error. Found by scaling and clearing every value of a case in turn.
 */
class SlipsTest {
    private static final Path GUIDE = Path.of("../docs/guide/three-filters.yaml");

    /** A value of the case, and what is typed there. */
    private record Slip(String path, String typed) {}

    private static final List<Slip> SLIPS = List.of(
            new Slip("candidates[0].pleats.count", "208"),
            new Slip("candidates[2].element.insideDiameter", "8.5 mm"),
            new Slip("temperatures.from", "-8.75 °C"),
            new Slip("temperatures.to", "-20 °C"),
            new Slip("oil.coldPoint.dynamic", "46000 mPa·s"),
            new Slip("engine.reliefValves[0].openingPressure", "105 kPa"),
            new Slip("start.from", "70 °C"),
            new Slip("duty.dirt.ingestion", "480 mg/h"));

    static List<Slip> slips() {
        return SLIPS;
    }

    @ParameterizedTest
    @MethodSource("slips")
    void noSlipIsAnInnerErrorOfTheComparison(Slip slip, @TempDir Path folder) throws IOException {
        answered(List.of("compare", slipped(slip, folder).toString()));
    }

    @ParameterizedTest
    @MethodSource("slips")
    @Tag("nightly")
    void noSlipIsAnInnerErrorOfAnyCommand(Slip slip, @TempDir Path folder) throws IOException {
        for (List<String> words : commands(slipped(slip, folder), folder)) {
            answered(words);
        }
    }

    private static Path slipped(Slip slip, Path folder) throws IOException {
        CaseDraft draft =
                CaseDraft.open(GUIDE.toString(), Files.readString(GUIDE)).draft();
        Path file = folder.resolve("case.yaml");
        return Files.writeString(file, draft.set(slip.path(), slip.typed()).text());
    }

    private static void answered(List<String> words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = CommandLineFace.run(words, CaseService.standard(), new PrintWriter(out), new PrintWriter(err));
        assertNotEquals(ExitCode.FAILURE, exit, () -> words + "\n" + err);
        assertFalse(out.toString().contains("NaN"), () -> words + "\n" + out);
    }

    private static List<List<String>> commands(Path file, Path folder) {
        String name = file.toString();
        String plots = folder.resolve("plots").toString();
        List<List<String>> commands = new ArrayList<>();
        commands.add(List.of("compare", name, "--plots", plots));
        commands.add(List.of("service", name, "--plots", plots));
        commands.add(List.of("coldstart", name, "--plots", plots));
        commands.add(List.of("confidence", name, "--draws=16", "--plots", plots));
        commands.add(List.of("settings", name, "--plots", plots));
        commands.add(List.of("lesson", name));
        return commands;
    }
}
