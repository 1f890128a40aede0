/**
 * The filter medium as a sheet: solidity, permeability laws, air permeability, layers, compression, and typical values
 * of fiber families. The quantity that counts is the resistance R = thickness / permeability [1/m].
 */
package org.coldpleat.model.medium;
