/** Makes oil and engine from their sections. */
package org.coldpleat.model.resolve.engine;
