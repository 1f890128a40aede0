/** From a document to a case in computing form: SI values with their bands, defaults named, and the way back to every input. */
package org.coldpleat.model.resolve;
