package org.coldpleat.ui.desktop.view.part;

import javafx.beans.InvalidationListener;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.paint.Color;

/** How all pictures of the window are shown: light or dark, and with how large a type. */
public final class PictureLook {
    private final BooleanProperty dark = new SimpleBooleanProperty();
    private final DoubleProperty type = new SimpleDoubleProperty(1);

    /** True for light lines on dark ground. */
    public BooleanProperty dark() {
        return dark;
    }

    /** Size of the type over its usual size [1]. */
    public DoubleProperty type() {
        return type;
    }

    /** Tells of every change. */
    public void onChange(Runnable told) {
        InvalidationListener listener = observed -> told.run();
        dark.addListener(listener);
        type.addListener(listener);
    }

    /** A color of the charts as it is in the pictures now. */
    public ObjectBinding<Color> shown(java.awt.Color color) {
        return Bindings.createObjectBinding(
                () -> {
                    int rgb = dark.get() ? DarkPicture.turned(color.getRGB()) : color.getRGB();
                    return Color.rgb(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
                },
                dark);
    }
}
