/** The physics. Pure functions over immutable values in coherent SI; no input or output, no clock, no mutable state. */
package org.coldpleat.model;
