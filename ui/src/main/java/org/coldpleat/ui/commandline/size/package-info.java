/** The command that sizes a part for a target. */
package org.coldpleat.ui.commandline.size;
