/** Viscosity grades and what is typical of their oils. */
package org.coldpleat.model.oil.grade;
