package org.coldpleat.ui.desktop.view.bench;

import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;

/**
 * What is being typed into an input but does not stand in the case yet. An input is written into the case when it loses
 * the keyboard; whatever needs the case before that asks for it here.
 */
public final class TypedInput {
    private static final String TYPED = "typed";

    private TypedInput() {}

    private record Pending(BooleanSupplier settled, Runnable commit) {}

    /**
     * Tells about an input.
     *
     * @param settled true if what stands in the input stands in the case
     * @param commit writes it into the case
     */
    static void of(Node input, BooleanSupplier settled, Runnable commit) {
        input.getProperties().put(TYPED, new Pending(settled, commit));
    }

    /** True if the owner of the keyboard has nothing of its own to take back. */
    public static boolean isSettled(Node owner) {
        if (owner == null) {
            return true;
        }
        return owner.getProperties().get(TYPED) instanceof Pending pending
                ? pending.settled().getAsBoolean()
                : !(owner instanceof TextInputControl text && text.isEditable());
    }

    /** Writes what is being typed into the case. */
    public static void commit(Scene scene) {
        Node owner = scene.getFocusOwner();
        if (owner != null && owner.getProperties().get(TYPED) instanceof Pending pending) {
            pending.commit().run();
        }
    }
}
