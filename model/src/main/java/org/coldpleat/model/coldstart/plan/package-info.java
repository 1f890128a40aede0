/** From the start of a case to what a cold start is computed from. */
package org.coldpleat.model.coldstart.plan;
