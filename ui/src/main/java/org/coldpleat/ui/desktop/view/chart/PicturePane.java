package org.coldpleat.ui.desktop.view.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import org.coldpleat.ui.desktop.view.part.DarkPicture;
import org.coldpleat.ui.desktop.view.part.PictureLook;

/** Shows a picture that is painted by Java2D, at the size of the pane. */
public final class PicturePane extends Region {
    /** A sheet on which everything has its place. */
    private static final double SHEET_WIDTH = 1200;

    private static final double SHEET_HEIGHT = 820;

    /** Size at which the smallest type of a sheet can still be read [1]. */
    private static final double LEGIBLE = 0.78;

    /** The smallest sheet that has room for axes, legend, and a curve. */
    private static final double SMALLEST_WIDTH = 640;

    private static final double SMALLEST_HEIGHT = 430;

    private final PictureLook look;
    private final ImageView view = new ImageView();
    private final Line line = new Line();
    private Optional<BiConsumer<Graphics2D, Rectangle2D>> picture = Optional.empty();

    private Runnable painted = () -> {};

    public PicturePane(String id, PictureLook look) {
        this.look = look;
        look.onChange(this::requestLayout);
        setId(id);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(200, 150);
        line.setVisible(false);
        line.setManaged(false);
        line.setMouseTransparent(true);
        line.getStyleClass().add("reading");
        getChildren().addAll(view, line);
    }

    /**
     * Shows a picture.
     *
     * @param paints how to paint it on an area
     * @param description what it shows, for readers who cannot see it
     */
    public void show(BiConsumer<Graphics2D, Rectangle2D> paints, String description) {
        picture = Optional.of(paints);
        setAccessibleText(description);
        paint();
    }

    /** Who is told whenever the picture was painted, which may have moved what is on it. */
    void onPainted(Runnable told) {
        painted = told;
    }

    /** Paints the same picture anew. */
    void repaint() {
        paint();
    }

    /** From a place in the pane to a place on the sheet the picture is painted on. */
    double sheetX(double x) {
        return x / scale();
    }

    /** Draws an upright line over the picture, at a place on its sheet. */
    void line(double sheetX, double top, double bottom) {
        line.setStartX(Math.rint(scale() * sheetX) + 0.5);
        line.setEndX(line.getStartX());
        line.setStartY(scale() * top);
        line.setEndY(scale() * bottom);
        line.setVisible(true);
    }

    /** Takes the line away. */
    void clearLine() {
        line.setVisible(false);
    }

    /** Pixels of the pane for each point of the sheet: as small as can be read, as large as leaves room. */
    private double scale() {
        double fits = Math.min(getWidth() / SHEET_WIDTH, getHeight() / SHEET_HEIGHT);
        double most = Math.min(getWidth() / SMALLEST_WIDTH, getHeight() / SMALLEST_HEIGHT);
        return Math.min(most, look.type().get() * Math.max(LEGIBLE, fits));
    }

    @Override
    protected void layoutChildren() {
        paint();
    }

    private void paint() {
        int width = (int) getWidth();
        int height = (int) getHeight();
        if (width < 2 || height < 2 || picture.isEmpty()) {
            return;
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g2 = image.createGraphics();
        try {
            // Type is drawn for a sheet of fixed size; the sheet follows the shape of the pane.
            double scale = scale();
            g2.scale(scale, scale);
            picture.get().accept(g2, new Rectangle2D.Double(0, 0, width / scale, height / scale));
        } finally {
            g2.dispose();
        }
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        if (look.dark().get()) {
            DarkPicture.turn(pixels);
        }
        WritableImage shown = new WritableImage(width, height);
        shown.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbPreInstance(), pixels, 0, width);
        view.setImage(shown);
        painted.run();
    }
}
