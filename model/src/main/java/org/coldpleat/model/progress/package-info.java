/** How far a long computation is, and whether it is still wanted. */
package org.coldpleat.model.progress;
