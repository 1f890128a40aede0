/** What stands in where a sheet says nothing: usual spreads and constants of the model. */
package org.coldpleat.model.typical;
