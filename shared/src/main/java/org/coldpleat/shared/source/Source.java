package org.coldpleat.shared.source;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Names where an equation or constant comes from.
 *
 * <p>The value is either a published source with its place (author, year, title or standard, table or equation), or one
 * of the plain statements {@code common practice, no source}, {@code from memory}, {@code derived here}.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD, ElementType.FIELD})
public @interface Source {
    /** The source in one line. */
    String value();
}
