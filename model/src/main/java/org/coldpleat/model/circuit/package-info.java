/** Pump, relief valves and gallery around one series element, solved for the steady operating point. */
package org.coldpleat.model.circuit;
