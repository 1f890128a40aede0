package org.coldpleat.ui.desktop.view.bench;

import java.util.List;
import java.util.function.BiConsumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Line;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.PictureMarks;

/**
 * A picture on which points are set, with the mouse or with arrow keys and space. The bar is drawn dashed, widths
 * solid, each line in black within white so that it shows on any ground.
 */
final class MarkedPicture extends ScrollPane {
    private static final double LEAST_ZOOM = 0.05;
    private static final double GREATEST_ZOOM = 16;
    private static final double ZOOM_STEP = 1.25;
    private static final double ARM = 7;
    private static final int FAR = 10;

    private final ImageView view = new ImageView();
    private final Group overlay = new Group();
    private final Pane sheet = new Pane(view, overlay);
    private final BiConsumer<Double, Double> clicked;
    private final Runnable undone;
    private PictureMarks marks = PictureMarks.NONE;
    private String name = "";
    private double zoom = 1;
    private double cursorX;
    private double cursorY;

    /**
     * @param clicked told where a point is set [pixel of the picture]
     * @param undone told that the last point is to be taken back
     */
    MarkedPicture(BiConsumer<Double, Double> clicked, Runnable undone) {
        this.clicked = clicked;
        this.undone = undone;
        setId("marked");
        setPannable(false);
        setAccessibleText(WindowTexts.get("photograph.area"));
        sheet.setId("marked-sheet");
        sheet.setFocusTraversable(true);
        sheet.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        sheet.getStyleClass().add("marked");
        sheet.setOnMouseClicked(event -> {
            if (event.isStillSincePress()) {
                sheet.requestFocus();
                cursorX = event.getX() / zoom;
                cursorY = event.getY() / zoom;
                set();
            }
        });
        sheet.setOnKeyPressed(this::key);
        sheet.focusedProperty().addListener(observed -> draw());
        setContent(sheet);
    }

    /** Shows a picture as large as fits. */
    void show(Image image, String named) {
        name = named;
        view.setImage(image);
        cursorX = image.getWidth() / 2;
        cursorY = image.getHeight() / 2;
        fit();
    }

    /** Shows nothing. */
    void clear() {
        name = "";
        view.setImage(null);
        mark(PictureMarks.NONE);
    }

    /** Shows the whole picture. */
    void fit() {
        if (view.getImage() != null) {
            double width = getViewportBounds().getWidth() / view.getImage().getWidth();
            double height = getViewportBounds().getHeight() / view.getImage().getHeight();
            double both = Math.min(width, height);
            zoomTo(both > 0 ? both : 1);
        }
    }

    void closer() {
        zoomTo(zoom * ZOOM_STEP);
    }

    void farther() {
        zoomTo(zoom / ZOOM_STEP);
    }

    /** Shows other marks. */
    void mark(PictureMarks fresh) {
        marks = fresh;
        draw();
    }

    private void zoomTo(double wanted) {
        if (view.getImage() == null) {
            return;
        }
        zoom = Math.min(GREATEST_ZOOM, Math.max(LEAST_ZOOM, wanted));
        view.setFitWidth(zoom * view.getImage().getWidth());
        view.setFitHeight(zoom * view.getImage().getHeight());
        sheet.setPrefSize(view.getFitWidth(), view.getFitHeight());
        draw();
    }

    private void key(KeyEvent event) {
        double step = (event.isShiftDown() ? FAR : 1) / Math.min(1, zoom);
        switch (event.getCode()) {
            case LEFT -> move(-step, 0);
            case RIGHT -> move(step, 0);
            case UP -> move(0, -step);
            case DOWN -> move(0, step);
            case SPACE, ENTER -> set();
            case BACK_SPACE, DELETE -> undone.run();
            case PLUS, ADD, EQUALS -> closer();
            case MINUS, SUBTRACT -> farther();
            case DIGIT0, NUMPAD0, HOME -> fit();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void move(double x, double y) {
        if (view.getImage() != null) {
            cursorX = Math.min(view.getImage().getWidth(), Math.max(0, cursorX + x));
            cursorY = Math.min(view.getImage().getHeight(), Math.max(0, cursorY + y));
            reveal();
            draw();
        }
    }

    private void set() {
        if (view.getImage() != null) {
            clicked.accept(cursorX, cursorY);
        }
    }

    /** Scrolls to the cursor if it is out of sight. */
    private void reveal() {
        setHvalue(revealed(
                getHvalue(),
                zoom * cursorX,
                sheet.getWidth(),
                getViewportBounds().getWidth()));
        setVvalue(revealed(
                getVvalue(),
                zoom * cursorY,
                sheet.getHeight(),
                getViewportBounds().getHeight()));
    }

    private static double revealed(double value, double at, double whole, double seen) {
        double hidden = whole - seen;
        double from = value * hidden;
        return hidden <= 0 || (at > from && at < from + seen)
                ? value
                : Math.min(1, Math.max(0, (at - seen / 2) / hidden));
    }

    private void draw() {
        overlay.getChildren().clear();
        lines(marks.bar(), true);
        lines(marks.edges(), false);
        if (sheet.isFocused()) {
            cross(new PictureMarks.Point(cursorX, cursorY), 2 * ARM, false);
        }
        sheet.setAccessibleText(WindowTexts.get(
                "photograph.said",
                name,
                Math.round(cursorX) + "",
                Math.round(cursorY) + "",
                marks.bar().size() + "",
                marks.widths().length + ""));
    }

    private void lines(List<PictureMarks.Point> points, boolean dashed) {
        for (int i = 0; i < points.size(); i++) {
            cross(points.get(i), ARM, dashed);
            if (i % 2 == 1) {
                PictureMarks.Point one = points.get(i - 1);
                stroke(one.x(), one.y(), points.get(i).x(), points.get(i).y(), 0, 0, dashed);
            }
        }
    }

    private void cross(PictureMarks.Point at, double arm, boolean dashed) {
        stroke(at.x(), at.y(), at.x(), at.y(), arm, 0, dashed);
        stroke(at.x(), at.y(), at.x(), at.y(), 0, arm, dashed);
    }

    /** A black line within a white one, from one place of the picture to another, longer by arms on the screen. */
    private void stroke(double x1, double y1, double x2, double y2, double armX, double armY, boolean dashed) {
        for (boolean ground : new boolean[] {true, false}) {
            Line line = new Line(zoom * x1 - armX, zoom * y1 - armY, zoom * x2 + armX, zoom * y2 + armY);
            line.setStroke(ground ? Color.WHITE : Color.BLACK);
            line.setStrokeWidth(ground ? 3.5 : 1.5);
            line.setMouseTransparent(true);
            if (dashed && !ground) {
                line.getStrokeDashArray().setAll(5.0, 4.0);
            }
            overlay.getChildren().add(line);
        }
    }
}
