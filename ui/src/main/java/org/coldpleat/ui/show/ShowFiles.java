package org.coldpleat.ui.show;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.casefile.writing.CaseWriter;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.file.Canvas;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.chart.file.Presentation;
import org.coldpleat.ui.report.input.ReportRun;
import org.coldpleat.ui.service.OpenedCase;

/** Writes the pictures of a case into a folder. */
public final class ShowFiles {
    private static final int FRAMES = 120;
    private static final int FRAME_TIME = 9;
    private static final int REST = 250;
    private static final double GIF_SHARE = 2.0 / 3;
    private static final int LARGEST_GIF = 1280;

    private ShowFiles() {}

    /**
     * What is wanted.
     *
     * @param width of the pictures [px]
     * @param height of the pictures [px]
     * @param transparent true for pictures without ground
     * @param moving true for the start-up of each candidate as animated GIF
     * @param frames true for the same as numbered pictures of full size
     * @param units units of the pictures
     */
    public record Wish(int width, int height, boolean transparent, boolean moving, boolean frames, UnitSystem units) {}

    /**
     * Writes all pictures that are wanted.
     *
     * @param told of every file written
     * @throws IOException if a file cannot be written
     */
    public static void write(OpenedCase opened, Path folder, Wish wish, Consumer<Path> told) throws IOException {
        Files.createDirectories(folder);
        Canvas canvas = Presentation.canvas(wish.width(), wish.height(), wish.transparent());
        Optional<ColdStart> start = ReportRun.start(opened, Progress.NONE);
        List<NamedPicture> pictures = PictureSet.of(opened, start, canvas, wish.units());
        for (NamedPicture one : pictures) {
            Path svg = folder.resolve(one.name() + ".svg");
            ChartFiles.writeSvg(one.picture(), canvas, svg);
            told.accept(svg);
            Path png = folder.resolve(one.name() + ".png");
            ChartFiles.writePng(one.picture(), canvas, png);
            told.accept(png);
        }
        Path captions = folder.resolve("captions.txt");
        CaseWriter.write(captions, PictureSet.captions(opened.title(), opened.invented(), pictures));
        told.accept(captions);
        if ((wish.moving() || wish.frames()) && start.isPresent()) {
            moving(opened, start.get(), folder, wish, told);
        }
    }

    private static void moving(OpenedCase opened, ColdStart start, Path folder, Wish wish, Consumer<Path> told)
            throws IOException {
        for (var candidate : start.candidates()) {
            Optional<StartFrames> found = StartFrames.of(opened, start, candidate, wish.units(), FRAMES);
            if (found.isEmpty()) {
                continue;
            }
            StartFrames frames = found.get();
            if (wish.moving()) {
                Path gif = folder.resolve(frames.name() + ".gif");
                Canvas canvas = gifCanvas(wish);
                GifFile.write(
                        gif, i -> ChartFiles.image(frames.frame(i, true), canvas), frames.count(), FRAME_TIME, REST);
                told.accept(gif);
            }
            if (wish.frames()) {
                Path own = Files.createDirectories(folder.resolve(frames.name()));
                Canvas canvas = Presentation.canvas(wish.width(), wish.height(), wish.transparent());
                for (int i = 0; i < frames.count(); i++) {
                    Path png = own.resolve(String.format(Locale.ROOT, "%04d.png", i + 1));
                    ChartFiles.writePng(frames.frame(i, !wish.transparent()), canvas, png);
                }
                told.accept(own);
            }
        }
    }

    /** A GIF keeps the shape of the pictures, but not more pixels than it can carry. */
    private static Canvas gifCanvas(Wish wish) {
        double share = Math.min(GIF_SHARE, (double) LARGEST_GIF / Math.max(wish.width(), wish.height()));
        return Presentation.canvas(
                (int) Math.round(share * wish.width()), (int) Math.round(share * wish.height()), false);
    }
}
