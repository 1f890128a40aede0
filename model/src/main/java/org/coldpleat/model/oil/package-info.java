/**
 * Engine oil: viscosity, density and heat as functions of temperature, grades, and what is not known about them.
 *
 * <p>All temperatures in kelvin, kinematic viscosity in m2/s, dynamic viscosity in Pa s, density in kg/m3.
 */
package org.coldpleat.model.oil;
