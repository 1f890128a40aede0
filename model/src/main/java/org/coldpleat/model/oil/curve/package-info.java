/**
 * Kinematic viscosity as a function of temperature: lines, bent lines, curves through a cold point, and blends.
 *
 * <p>All temperatures in kelvin, kinematic viscosity in m2/s.
 */
package org.coldpleat.model.oil.curve;
