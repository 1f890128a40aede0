package org.coldpleat.ui.service;

import java.nio.file.Path;
import java.util.List;
import org.coldpleat.shared.casefile.CaseReader;

/** Opens cases with the case reader and runs them with the model. */
final class ModelCases {
    private ModelCases() {}

    static List<String> explainable() {
        return List.of();
    }

    static Opening open(Path file) {
        return Opening.failed(
                CaseReader.read(file).problems().stream().map(Problem::of).toList());
    }
}
