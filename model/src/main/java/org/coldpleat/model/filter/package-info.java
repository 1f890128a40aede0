/** The whole filter: its parts in series and the bypass valves parallel to stretches of them. */
package org.coldpleat.model.filter;
