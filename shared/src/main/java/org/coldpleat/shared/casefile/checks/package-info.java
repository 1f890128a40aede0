/** What the sections of a case must agree on among each other. */
package org.coldpleat.shared.casefile.checks;
