/** The commands that write files about a whole case: report, pictures to show, everything. */
package org.coldpleat.ui.commandline.export;
