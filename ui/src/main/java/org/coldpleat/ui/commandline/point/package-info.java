/** The commands that work out operating points: one, or a table. */
package org.coldpleat.ui.commandline.point;
