/** Draws of everything that is not known, and what they tell. */
package org.coldpleat.model.certainty.draw;
