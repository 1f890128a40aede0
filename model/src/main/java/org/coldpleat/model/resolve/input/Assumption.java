package org.coldpleat.model.resolve.input;

import org.coldpleat.shared.quantity.Measured;

/**
 * A value that a verdict rests on although nobody measured it for this case.
 *
 * @param path field path in the case, such as {@code candidates[1].medium.thickness}, or the name of a model constant
 * @param candidate position of the candidate it belongs to; -1 if all share it
 * @param value what was taken
 * @param code key of the sentence that says why
 */
public record Assumption(String path, int candidate, Measured value, String code) {}
