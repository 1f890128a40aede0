package org.coldpleat.ui.commandline;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.coldpleat.ui.commandline.casefile.CheckCommand;
import org.coldpleat.ui.commandline.casefile.NewCommand;
import org.coldpleat.ui.commandline.casefile.SheetsCommand;
import org.coldpleat.ui.commandline.coldstart.ColdStartCommand;
import org.coldpleat.ui.commandline.compare.CompareCommand;
import org.coldpleat.ui.commandline.confidence.ConfidenceCommand;
import org.coldpleat.ui.commandline.engine.EngineCommand;
import org.coldpleat.ui.commandline.evidence.EvidenceCommand;
import org.coldpleat.ui.commandline.evidence.PlanCommand;
import org.coldpleat.ui.commandline.explain.ExplainCommand;
import org.coldpleat.ui.commandline.explain.LessonCommand;
import org.coldpleat.ui.commandline.export.ExportCommand;
import org.coldpleat.ui.commandline.export.PicturesCommand;
import org.coldpleat.ui.commandline.export.ReportCommand;
import org.coldpleat.ui.commandline.map.MapCommand;
import org.coldpleat.ui.commandline.multipass.MultiPassCommand;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.point.PointCommand;
import org.coldpleat.ui.commandline.point.TableCommand;
import org.coldpleat.ui.commandline.service.ServiceCommand;
import org.coldpleat.ui.commandline.settings.SettingsCommand;
import org.coldpleat.ui.commandline.size.SizeCommand;
import org.coldpleat.ui.service.CaseService;

/** The commands of the program, each made when it is asked for. */
record Commands(CaseService service, Console console, Predicate<Optional<Path>> window) {
    /** Their names in the order of the help text. */
    static final List<String> NAMES = List.of(
            "new",
            "engine",
            "compare",
            "table",
            "point",
            "map",
            "plan",
            "evidence",
            "confidence",
            "explain",
            "service",
            "coldstart",
            "multipass",
            "settings",
            "size",
            "report",
            "lesson",
            "export",
            "sheets",
            "pictures",
            "window",
            "check");

    /** The command with one of the names. */
    Object command(String name) {
        return switch (name) {
            case "new" -> NewCommand.of(service, console);
            case "engine" -> new EngineCommand(service, console);
            case "compare" -> new CompareCommand(service, console);
            case "table" -> new TableCommand(service, console);
            case "point" -> new PointCommand(service, console);
            case "map" -> new MapCommand(service, console);
            case "plan" -> new PlanCommand(service, console);
            case "evidence" -> new EvidenceCommand(service, console);
            case "confidence" -> new ConfidenceCommand(service, console);
            case "explain" -> new ExplainCommand(service, console);
            case "service" -> new ServiceCommand(service, console);
            case "coldstart" -> new ColdStartCommand(service, console);
            case "multipass" -> new MultiPassCommand(service, console);
            case "settings" -> new SettingsCommand(service, console);
            case "size" -> new SizeCommand(service, console);
            case "report" -> new ReportCommand(service, console);
            case "lesson" -> new LessonCommand(service, console);
            case "export" -> new ExportCommand(service, console);
            case "sheets" -> SheetsCommand.of(console);
            case "pictures" -> new PicturesCommand(service, console);
            case "window" -> new WindowCommand(window);
            case "check" -> new CheckCommand(service, console);
            default -> throw new IllegalArgumentException("no command " + name);
        };
    }
}
