package org.coldpleat.ui.text;

import java.io.IOException;
import java.nio.file.Path;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.export.WholeCaseArguments;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.report.ReportFile;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;

/** Texts that the window shows with the very words and digits of the command line. */
public final class Pages {
    /** Letters of the longest line of a text. */
    public static final int WIDTH = CompareText.WIDTH;

    private Pages() {}

    /** Version the program was built as. */
    public static String version() {
        return ProgramVersion.text();
    }

    /** The whole comparison as {@code compare} prints it. */
    public static String comparison(Comparison comparison, UnitSystem units) {
        return CompareText.of(comparison, units);
    }

    /** At which oil temperatures a valve is open. */
    public static String answer(StateResult result, Comparison comparison, UnitSystem units) {
        return OpeningAnswer.of(
                result, comparison.from(), comparison.to(), ShownUnits.of(units), ShownUnits.beside(units));
    }

    /** True if the name of a file says which kind of report it is to hold: a page or a PDF. */
    public static boolean isReportName(Path file) {
        return ReportFile.isNamed(file);
    }

    /**
     * Writes the report of a case as {@code report} does.
     *
     * @param file with a name that {@link #isReportName} takes
     * @param progress told how far it is; may end the work
     * @return false if the work was ended before it was done
     * @throws IOException if the file cannot be written
     */
    public static boolean report(CaseService service, OpenedCase opened, Path file, UnitSystem units, Progress progress)
            throws IOException {
        return ReportFile.write(
                service, opened, file, units, WholeCaseArguments.DRAWS, WholeCaseArguments.SEED, progress);
    }

    /**
     * Writes what no picture can tell beside one.
     *
     * @throws IOException if that fails
     */
    public static void limitsBeside(Path picture) throws IOException {
        Pictures.limits(picture.toAbsolutePath().getParent());
    }

    /** A notice with its place. */
    public static String notice(Notice notice, UnitSystem units) {
        return NoticeLines.of(notice, units);
    }

    /** An oil temperature with its unit. */
    public static String temperature(double kelvin, UnitSystem units) {
        ShownUnit unit = ShownUnits.of(units).temperature();
        return Figures.fixed(unit.of(kelvin), 1) + " " + unit.symbol();
    }
}
