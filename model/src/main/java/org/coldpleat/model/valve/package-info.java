/** Spring-loaded valves and the anti-drain flap. */
package org.coldpleat.model.valve;
