package org.coldpleat.model.resolve.engine;

import java.util.Optional;

/**
 * What all candidates of a case share.
 *
 * @param oil oil
 * @param engine engine, if the case has one
 */
public record SharedModel(OilLubricant oil, Optional<EngineModel> engine) {}
