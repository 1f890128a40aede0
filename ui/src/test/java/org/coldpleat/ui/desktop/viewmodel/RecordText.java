package org.coldpleat.ui.desktop.viewmodel;

import java.lang.reflect.Array;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes a result out with every number to its last digit, arrays included, which records do not compare by content. */
final class RecordText {
    private RecordText() {}

    static String of(Object value) throws ReflectiveOperationException {
        List<String> parts = new ArrayList<>();
        if (value instanceof Record) {
            for (RecordComponent component : value.getClass().getRecordComponents()) {
                component.getAccessor().setAccessible(true);
                parts.add(component.getName() + "=" + of(component.getAccessor().invoke(value)));
            }
        } else if (value instanceof Iterable<?> all) {
            for (Object one : all) {
                parts.add(of(one));
            }
        } else if (value instanceof Optional<?> one) {
            return one.isPresent() ? of(one.get()) : "none";
        } else if (value.getClass().isArray()) {
            for (int i = 0; i < Array.getLength(value); i++) {
                parts.add(of(Array.get(value, i)));
            }
        } else {
            return value.toString();
        }
        return parts.toString();
    }
}
