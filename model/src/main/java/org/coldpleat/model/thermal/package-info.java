/** Heat between oil, metal and air. */
package org.coldpleat.model.thermal;
