/** What the model and both faces share: quantities, sources, notices and the case file. */
package org.coldpleat.shared;
