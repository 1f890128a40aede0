package org.coldpleat.ui.service;

import java.util.Optional;
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.sizing.SizingRequest;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.sizing.TargetText;
import org.coldpleat.shared.notice.Notice;

/**
 * Outcome of a question about a size.
 *
 * @param result the result; empty if there is a problem
 * @param problem what is wrong with the question or missing in the case
 */
public record SizingOutcome(Optional<SizingResult> result, Optional<Notice> problem) {
    static Run<SizingOutcome> of(ResolvedCase resolved, SizingQuestion question) {
        TargetText.Reading target =
                TargetText.read(question.target(), resolved.stateNames(), resolved.from(), resolved.to());
        if (target.problem().isPresent()) {
            return problem(target.problem());
        }
        SizingRequest request = question.about(target.target().orElseThrow());
        Optional<Notice> obstacle = Simulation.sizingObstacle(resolved, request);
        return obstacle.isPresent()
                ? problem(obstacle)
                : progress -> Simulation.size(resolved, request)
                        .with(progress)
                        .map(result -> new SizingOutcome(Optional.of(result), Optional.empty()));
    }

    private static Run<SizingOutcome> problem(Optional<Notice> problem) {
        return progress -> Optional.of(new SizingOutcome(Optional.empty(), problem));
    }
}
