/** The answer and its reasons as data: comparison, ranking, notices. */
package org.coldpleat.model.verdict;
