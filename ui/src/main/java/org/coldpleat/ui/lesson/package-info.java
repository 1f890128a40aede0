/** The lesson: questions about a case, each with a prediction to make, the computed answer and the reason. */
package org.coldpleat.ui.lesson;
