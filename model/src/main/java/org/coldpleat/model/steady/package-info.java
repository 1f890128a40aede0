/** A candidate in a state at one oil temperature, and over all of them. */
package org.coldpleat.model.steady;
