/**
 * Oil creeping through a pleated pack: channel flow between the legs, flow through and along the medium, folds, mouths,
 * crowding, and the medium area by two routes. Geometry and medium resistance only; viscosity enters as a factor.
 */
package org.coldpleat.model.pleat;
