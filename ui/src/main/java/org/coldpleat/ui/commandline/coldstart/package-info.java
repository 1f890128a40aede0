/** The command that follows a cold start, or sweeps over its temperature. */
package org.coldpleat.ui.commandline.coldstart;
