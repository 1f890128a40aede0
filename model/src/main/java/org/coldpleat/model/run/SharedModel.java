package org.coldpleat.model.run;

import java.util.Optional;

/**
 * What all candidates of a case share.
 *
 * @param oil oil
 * @param engine engine, if the case has one
 */
record SharedModel(OilLubricant oil, Optional<EngineModel> engine) {}
