/** What the circuit does over temperature and time when an engine is started cold. */
package org.coldpleat.model.coldstart;
