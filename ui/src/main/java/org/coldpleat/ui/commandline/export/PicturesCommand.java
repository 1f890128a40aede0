package org.coldpleat.ui.commandline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.show.ShowFiles;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pictures}: charts and filters cut open, to be shown. */
@Command(name = "pictures", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class PicturesCommand implements Callable<Integer> {
    private static final Pattern SIZE = Pattern.compile("([1-9][0-9]{2,3})x([1-9][0-9]{2,3})");
    private static final List<String> SIZES = List.of("1920x1080", "3840x2160", "1080x1920");
    private static final int LEAST = 480;

    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--out", paramLabel = "DIR", descriptionKey = "pictures.out", required = true)
    private Path out;

    @Option(names = "--size", paramLabel = "WxH", descriptionKey = "pictures.size", defaultValue = "1920x1080")
    private String size;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--transparent", descriptionKey = "pictures.transparent")
    private boolean transparent;

    @Option(names = "--moving", descriptionKey = "pictures.moving")
    private boolean moving;

    @Option(names = "--frames", descriptionKey = "pictures.frames")
    private boolean frames;

    public PicturesCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        Matcher matcher = SIZE.matcher(size);
        int width = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
        int height = matcher.matches() ? Integer.parseInt(matcher.group(2)) : 0;
        if (Math.min(width, height) < LEAST) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.pictureSize", size, String.join(", ", SIZES), LEAST));
        }
        OpenedCase opened = caseFile.open(service, console);
        if ((moving || frames) && opened.startOutline().isEmpty()) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.noStart"));
        }
        try {
            ShowFiles.write(
                    opened,
                    out,
                    new ShowFiles.Wish(width, height, transparent, moving, frames, units),
                    file -> console.message(Texts.get("plots.written", file)));
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("error.plots", e));
        }
        return ExitCode.DONE;
    }
}
