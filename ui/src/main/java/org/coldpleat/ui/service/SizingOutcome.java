package org.coldpleat.ui.service;

import java.util.Optional;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.shared.notice.Notice;

/**
 * Outcome of a question about a size.
 *
 * @param result the result; empty if there is a problem or the run was cancelled
 * @param problem what is wrong with the question or missing in the case
 */
public record SizingOutcome(Optional<SizingResult> result, Optional<Notice> problem) {}
