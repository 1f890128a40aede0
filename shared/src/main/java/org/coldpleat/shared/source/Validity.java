package org.coldpleat.shared.source;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** States the range over which a law holds, and what it does outside. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
public @interface Validity {
    /** The range in words, with the symbol, limits and unit, and the behavior outside it. */
    String value();
}
