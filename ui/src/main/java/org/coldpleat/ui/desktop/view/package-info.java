/** The window: only here is the toolkit known. */
package org.coldpleat.ui.desktop.view;
