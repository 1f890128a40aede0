/** The command that maps the bypass share. */
package org.coldpleat.ui.commandline.map;
