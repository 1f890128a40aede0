package org.coldpleat.ui.desktop.viewmodel;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.shared.casefile.writing.CaseDraft;

/** The photographs of one candidate of a case on the bench, and what is measured on them. */
public final class Photographs {
    private static final List<String> ENDINGS = List.of(".png", ".jpg", ".jpeg", ".gif", ".bmp");

    private final CaseBench bench;
    private final String candidate;

    /** @param number of the candidate, from 0 */
    public Photographs(CaseBench bench, int number) {
        this.bench = bench;
        this.candidate = "candidates[" + number + "].";
    }

    /** True if a file looks like a picture by its name. */
    public static boolean isPicture(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return ENDINGS.stream().anyMatch(name::endsWith);
    }

    /** The pictures by their paths as they stand in the case. */
    public List<String> files() {
        List<String> files = new ArrayList<>();
        for (int i = 0; i < bench.draft().count(candidate + "photographs"); i++) {
            files.add(value("photographs[" + i + "].file"));
        }
        return files;
    }

    /** Width of the field of a photograph as typed; blank if unknown. */
    public String fieldWidth(int photograph) {
        return value("photographs[" + photograph + "].fieldWidth");
    }

    private String value(String path) {
        return bench.draft().value(candidate + path).orElse("");
    }

    /** Where a picture lies: beside the case file, unless its path is a whole one. Empty if that is no path. */
    public Optional<Path> place(int photograph) {
        try {
            Path path = Path.of(files().get(photograph));
            return Optional.of(folder().map(home -> home.resolve(path)).orElse(path));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Optional<Path> folder() {
        return bench.file().map(file -> file.toAbsolutePath().getParent());
    }

    /**
     * Adds a picture by its path from the case file.
     *
     * @return false if the case has no file yet, so that there is nothing a path could start from
     */
    public boolean attach(Path picture) {
        Optional<Path> home = folder();
        if (home.isEmpty()) {
            return false;
        }
        Path whole = picture.toAbsolutePath().normalize();
        Path path = whole.getRoot().equals(home.get().getRoot())
                ? home.get().normalize().relativize(whole)
                : whole;
        String entry = candidate + "photographs[" + files().size() + "].file";
        bench.edit(entry, path.toString().replace('\\', '/'));
        return true;
    }

    /** Takes a picture out of the case; its file stays. */
    public void detach(int photograph) {
        bench.removeEntry(candidate + "photographs[" + photograph + "]");
    }

    /**
     * Writes the marked fibers and the scale into the fiber test of the candidate, in place of what stood there, as one
     * step.
     *
     * @param scale of the picture
     * @param widths of the fibers [pixel]
     * @return false if nothing changed
     */
    public boolean writeFibers(PictureMeasuring.Scale scale, double[] widths) {
        String test = candidate + "tests.fiberSizing.";
        return bench.change(draft -> {
            CaseDraft next = draft;
            for (String stale : List.of("fibers", "scaleBar", "scaleBarPixels", "fieldWidth", "fieldPixels")) {
                next = next.clear(test + stale);
            }
            next = next.set(test + (scale.ofField() ? "fieldWidth" : "scaleBar"), scale.typed())
                    .set(test + (scale.ofField() ? "fieldPixels" : "scaleBarPixels"), pixels(scale.pixels()));
            for (int i = 0; i < widths.length; i++) {
                next = next.set(test + "fibers[" + i + "].width", pixels(widths[i]));
            }
            return next;
        });
    }

    private static String pixels(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
