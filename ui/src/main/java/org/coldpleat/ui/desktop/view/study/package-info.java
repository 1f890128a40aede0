/** Questions that take long to answer, a tab each. */
package org.coldpleat.ui.desktop.view.study;
