package org.coldpleat.ui.commandline.engine;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.coldpleat.model.certainty.EngineProfile;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.EngineArguments;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Opening;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code engine}: what a case takes an engine for of which kind and size are known, and what to ask its owner. */
@Command(name = "engine", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class EngineCommand implements Callable<Integer> {
    /** How the engine can be written. */
    enum Format {
        /** A page for a terminal. */
        TEXT,
        /** JSON in coherent SI. */
        JSON
    }

    private static final String FILTER = "candidates[0].";

    private final CaseService service;
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "KIND", descriptionKey = "engineOption.kind")
    private String kind;

    @Mixin
    private EngineArguments engine;

    @Option(names = "--oil", paramLabel = "GRADE", descriptionKey = "engineOption.oil", defaultValue = "5W-30")
    private String oil;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "evidence.format", defaultValue = "text")
    private Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    public EngineCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!engine.tellSize()) {
            throw new ParameterException(spec.commandLine(), Texts.get("error.noDisplacement"));
        }
        Opening opening = service.openDraft(Texts.get("engine.file"), written(), Optional.empty());
        opening.problems().forEach(one -> console.message(Texts.get("engine.problem", one.field(), one.text())));
        OpenedCase opened = opening.opened()
                .orElseThrow(() -> new Stop(
                        ExitCode.BAD_INPUT,
                        Texts.get("error.engine", opening.problems().size())));
        EngineProfile profile = opened.engineProfile().orElseThrow().now();
        console.result(
                switch (format) {
                    case TEXT -> EngineText.of(opened, profile, units);
                    case JSON -> EngineJson.of(opened, profile);
                });
        if (Double.isNaN(profile.ratio())) {
            throw new Stop(ExitCode.NO_ANSWER, Texts.get("error.noColdAnswer"));
        }
        return ExitCode.DONE;
    }

    /** The case that is asked: the engine as told, with a usual spin-on filter. */
    private CaseDraft written() {
        return engine.into(CaseDraft.blank().set("oil.grade", oil).set("engine.kind", kind))
                .set(FILTER + "name", Texts.get("engine.filter"))
                .set(FILTER + "bypass.position", "dome")
                .set(FILTER + "bypass.openingPressure", "12 psi")
                .set(FILTER + "medium.family", "cellulose")
                .set(FILTER + "medium.statedArea", "540 cm2");
    }
}
