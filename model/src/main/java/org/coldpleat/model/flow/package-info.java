/** Flow laws of single parts: holes, slots, tubes, annuli, films, and the interfaces the networks are built from. */
package org.coldpleat.model.flow;
