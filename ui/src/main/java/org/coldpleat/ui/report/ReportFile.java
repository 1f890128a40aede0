package org.coldpleat.ui.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.shared.casefile.writing.WholeFile;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.report.input.ReportRun;
import org.coldpleat.ui.service.OpenedCase;

/** Writes the report of a case, as the command and the window do. */
public final class ReportFile {
    private static final String HTML = ".html";
    private static final String PDF = ".pdf";

    private ReportFile() {}

    /** True if the name of a file says which kind of report it is to hold. */
    public static boolean isNamed(Path file) {
        return hasEnding(file, HTML) || hasEnding(file, PDF);
    }

    /**
     * Writes the report.
     *
     * @param file with a name that {@link #isNamed} takes
     * @param draws draws behind chances; 0 leaves the confidence part out
     * @return false if the work was ended before it was done; nothing is written then
     * @throws IOException if the file cannot be written
     */
    public static boolean write(OpenedCase opened, Path file, UnitSystem units, int draws, long seed, Progress progress)
            throws IOException {
        Optional<ReportInput> input = ReportRun.of(opened, units, draws, seed, progress);
        if (input.isEmpty()) {
            return false;
        }
        byte[] document = hasEnding(file, PDF)
                ? ReportPdf.of(input.get())
                : Report.html(input.get()).getBytes(StandardCharsets.UTF_8);
        WholeFile.write(file, part -> Files.write(part, document));
        return true;
    }

    private static boolean hasEnding(Path file, String ending) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ending);
    }
}
