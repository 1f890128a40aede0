package org.coldpleat.ui.service;

import java.util.Optional;
import org.coldpleat.model.steady.Trial;

/**
 * What comes of trying values out on a candidate.
 *
 * @param before the candidate as it stands in the case, clean
 * @param after with what was moved; empty if that is no filter, or the element is full by then
 * @param isFilter false if no filter can be like that
 */
public record TriedOut(Trial before, Optional<Trial> after, boolean isFilter) {}
