package org.coldpleat.ui.commandline.argument;

import java.util.LinkedHashMap;
import java.util.Map;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import picocli.CommandLine.Option;

/** What an owner knows of an engine, as it goes into a case. */
public final class EngineArguments {
    /** Field of a case that holds the size, without which no engine is known. */
    public static final String DISPLACEMENT = "engine.displacement";

    private static final String READING = "engine.gallery.hotReading.";

    private final Map<String, String> values = new LinkedHashMap<>();

    @Option(names = "--displacement", paramLabel = "VOLUME", descriptionKey = "engineOption.displacement")
    private void displacement(String typed) {
        values.put(DISPLACEMENT, typed);
    }

    @Option(names = "--fuel", paramLabel = "FUEL", descriptionKey = "engineOption.fuel")
    private void fuel(String typed) {
        values.put("engine.fuel", typed);
    }

    @Option(names = "--cylinders", paramLabel = "NUMBER", descriptionKey = "engineOption.cylinders")
    private void cylinders(String typed) {
        values.put("engine.cylinders", typed);
    }

    @Option(names = "--crankshaft", paramLabel = "BEARINGS", descriptionKey = "engineOption.crankshaft")
    private void crankshaft(String typed) {
        values.put("engine.crankshaft", typed);
    }

    @Option(names = "--oil-fill", paramLabel = "VOLUME", descriptionKey = "engineOption.oilFill")
    private void oilFill(String typed) {
        values.put("engine.oilFill", typed);
    }

    @Option(names = "--relief", paramLabel = "PRESSURE", descriptionKey = "engineOption.relief")
    private void relief(String typed) {
        values.put("engine.reliefValves[0].openingPressure", typed);
    }

    @Option(names = "--hot-idle", paramLabel = "PRESSURE", descriptionKey = "engineOption.hotIdle")
    private void hotIdle(String typed) {
        values.put(READING + "pressure", typed);
    }

    @Option(names = "--jet-bore", paramLabel = "BORE", descriptionKey = "engineOption.jetBore")
    private void jetBore(String typed) {
        values.put(READING + "jetBore", typed);
    }

    @Option(names = "--jet-length", paramLabel = "LENGTH", descriptionKey = "engineOption.jetLength")
    private void jetLength(String typed) {
        values.put(READING + "jetLength", typed);
    }

    @Option(names = "--pump", paramLabel = "VOLUME", descriptionKey = "engineOption.pump")
    private void pump(String typed) {
        values.put("engine.pump.displacement", typed);
    }

    @Option(names = "--slip", paramLabel = "VOLUME", descriptionKey = "engineOption.slip")
    private void slip(String typed) {
        values.put("engine.pump.slip", typed);
    }

    /** True if anything was told. */
    public boolean areGiven() {
        return !values.isEmpty();
    }

    /** True if a field was told. */
    public boolean tell(String path) {
        return values.containsKey(path);
    }

    /** A draft with all that was told. */
    public CaseDraft into(CaseDraft draft) {
        CaseDraft filled = draft;
        for (Map.Entry<String, String> value : values.entrySet()) {
            filled = filled.set(value.getKey(), value.getValue());
        }
        return filled;
    }
}
