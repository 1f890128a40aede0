/** The balance of dirt in the oil. */
package org.coldpleat.model.loading.sump;
