/** Pictures to be shown: a fixed set for presentations and phones, and a start-up as a moving picture. */
package org.coldpleat.ui.show;
