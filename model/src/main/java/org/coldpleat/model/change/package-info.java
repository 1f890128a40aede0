/** A filter changed in thought: another area, setting, medium or oil, clean or with dirt. */
package org.coldpleat.model.change;
