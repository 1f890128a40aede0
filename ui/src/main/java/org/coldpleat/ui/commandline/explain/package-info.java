/** The commands that teach: where a value comes from, and the lesson. */
package org.coldpleat.ui.commandline.explain;
