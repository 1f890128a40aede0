package org.coldpleat.ui.commandline.argument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The case file, and which of its candidates are looked at: all, or some by name. */
public final class CandidatesArgument {
    private static final String LIST = "candidates";

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidates", paramLabel = "NAMES", descriptionKey = "candidates", split = ",")
    private List<String> names = List.of();

    /** Opens the case with the chosen candidates alone, in the order of the case. */
    public OpenedCase open(CaseService service, Console console) {
        OpenedCase all = caseFile.open(service, console);
        List<String> chosen = names.stream().map(String::strip).toList();
        chosen.forEach(name -> CaseArgument.requireCandidate(all, name));
        if (chosen.isEmpty() || chosen.containsAll(all.candidates())) {
            return all;
        }
        CaseDraft draft = caseFile.draft();
        List<String> left = new ArrayList<>(draft.names(LIST));
        for (int i = left.size() - 1; i >= 0; i--) {
            if (!chosen.contains(left.get(i))) {
                draft = draft.remove(LIST, i);
            }
        }
        return caseFile.opened(service.openDraft(caseFile.file().toString(), draft, Optional.of(all)), console);
    }
}
