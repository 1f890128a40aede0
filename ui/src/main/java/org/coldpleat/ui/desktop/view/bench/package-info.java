/** The bench side of the window: sheets with their fields, and photographs to measure from. */
package org.coldpleat.ui.desktop.view.bench;
