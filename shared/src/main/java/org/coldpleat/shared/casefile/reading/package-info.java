/** From a file to a document or to all of its problems. */
package org.coldpleat.shared.casefile.reading;
