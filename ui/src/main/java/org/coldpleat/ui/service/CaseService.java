package org.coldpleat.ui.service;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.reading.CaseReading;
import org.coldpleat.shared.casefile.writing.CaseDraft;

/** The one door from both faces to the model: opens cases, which then answer what they are asked. From any thread. */
public final class CaseService {
    private final Function<Path, Opening> opener;

    /** The service over the case reader and the model. */
    public static CaseService standard() {
        return new CaseService(file -> opened(CaseReader.read(file), Optional.empty()));
    }

    CaseService(Function<Path, Opening> opener) {
        this.opener = Objects.requireNonNull(opener, "opener");
    }

    /**
     * Reads and resolves a case file.
     *
     * @param file case file, YAML
     * @return the case, or its problems; a file that cannot be read is a problem too
     */
    public Opening open(Path file) {
        return opener.apply(file);
    }

    /**
     * Resolves a case that is being written.
     *
     * @param name of the file, for messages; files named in the case are looked for beside it
     * @param draft the case
     * @param before the case as it was understood before the last change; what did not change since is taken from there,
     *     and gives the same numbers
     */
    public Opening openDraft(String name, CaseDraft draft, Optional<OpenedCase> before) {
        return opened(CaseReader.read(name, draft, before.map(OpenedCase::document)), before);
    }

    private static Opening opened(CaseReading reading, Optional<OpenedCase> before) {
        if (reading.document().isEmpty()) {
            return failed(reading.problems());
        }
        Resolution resolution = before.map(OpenedCase::resolved)
                .map(known -> Simulation.resolveAfter(known, reading.document().get()))
                .orElseGet(() -> Simulation.resolve(reading.document().get()));
        Kept kept = before.map(OpenedCase::kept).orElseGet(Kept::new);
        Optional<ResolvedCase> resolved = resolution.resolved();
        return resolved.isPresent() ? Opening.of(OpenedCase.of(resolved.get(), kept)) : failed(resolution.problems());
    }

    private static Opening failed(List<CaseProblem> problems) {
        return Opening.failed(problems.stream().map(Problem::of).toList());
    }

    /** Tests that can be planned. */
    public List<String> plannableTests() {
        return Simulation.plannableTests();
    }

    /** Names of the numbers that can be explained. */
    public List<String> explainable() {
        return Simulation.explainableQuantities();
    }

    /** Those of them that belong to one oil temperature. */
    public List<String> explainableAtTemperature() {
        return Simulation.explainableAtTemperature();
    }
}
