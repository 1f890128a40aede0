package org.coldpleat.ui.commandline.argument;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import picocli.CommandLine.Option;

/** What an owner knows of an engine, as it goes into a case. */
public final class EngineArguments {
    private static final String READING = "engine.gallery.hotReading.";

    @Option(names = "--displacement", paramLabel = "VOLUME", descriptionKey = "engineOption.displacement")
    private String displacement;

    @Option(names = "--fuel", paramLabel = "FUEL", descriptionKey = "engineOption.fuel")
    private String fuel;

    @Option(names = "--cylinders", paramLabel = "NUMBER", descriptionKey = "engineOption.cylinders")
    private String cylinders;

    @Option(names = "--crankshaft", paramLabel = "BEARINGS", descriptionKey = "engineOption.crankshaft")
    private String crankshaft;

    @Option(names = "--oil-fill", paramLabel = "VOLUME", descriptionKey = "engineOption.oilFill")
    private String oilFill;

    @Option(names = "--relief", paramLabel = "PRESSURE", descriptionKey = "engineOption.relief")
    private String relief;

    @Option(names = "--hot-idle", paramLabel = "PRESSURE", descriptionKey = "engineOption.hotIdle")
    private String hotIdle;

    @Option(names = "--jet-bore", paramLabel = "BORE", descriptionKey = "engineOption.jetBore")
    private String jetBore;

    @Option(names = "--jet-length", paramLabel = "LENGTH", descriptionKey = "engineOption.jetLength")
    private String jetLength;

    @Option(names = "--pump", paramLabel = "VOLUME", descriptionKey = "engineOption.pump")
    private String pump;

    @Option(names = "--slip", paramLabel = "VOLUME", descriptionKey = "engineOption.slip")
    private String slip;

    /** True if anything was told. */
    public boolean areGiven() {
        return !told().isEmpty();
    }

    /** True if the displacement was told. */
    public boolean tellSize() {
        return displacement != null;
    }

    /** A draft with all that was told. */
    public CaseDraft into(CaseDraft draft) {
        CaseDraft filled = draft;
        for (Map.Entry<String, String> value : told().entrySet()) {
            filled = filled.set(value.getKey(), value.getValue());
        }
        return filled;
    }

    private Map<String, String> told() {
        Map<String, String> told = new LinkedHashMap<>();
        told.put("engine.displacement", displacement);
        told.put("engine.fuel", fuel);
        told.put("engine.cylinders", cylinders);
        told.put("engine.crankshaft", crankshaft);
        told.put("engine.oilFill", oilFill);
        told.put("engine.reliefValves[0].openingPressure", relief);
        told.put(READING + "pressure", hotIdle);
        told.put(READING + "jetBore", jetBore);
        told.put(READING + "jetLength", jetLength);
        told.put("engine.pump.displacement", pump);
        told.put("engine.pump.slip", slip);
        told.values().removeIf(Objects::isNull);
        return told;
    }
}
