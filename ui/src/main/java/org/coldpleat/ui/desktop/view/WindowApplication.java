package org.coldpleat.ui.desktop.view;

import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.scene.image.Image;
import javafx.stage.Stage;
import org.coldpleat.ui.desktop.view.chart.FirstDrawing;
import org.coldpleat.ui.service.CaseService;

/** The toolkit's way in. */
public final class WindowApplication extends Application {
    private final CaseService service = CaseService.standard();

    @Override
    public void init() {
        getParameters().getRaw().stream()
                .findFirst()
                .map(Path::of)
                .ifPresent(file -> FirstDrawing.begin(service, file));
    }

    @Override
    public void start(Stage stage) {
        CaseWindow window = new CaseWindow(stage, service);
        stage.getIcons().add(new Image(WindowApplication.class.getResourceAsStream("icon.png")));
        stage.setOnHiding(event -> window.leave());
        stage.setOnHidden(event -> window.close());
        List<String> files = getParameters().getRaw();
        window.restore();
        stage.show();
        window.settle();
        if (files.isEmpty()) {
            window.welcome();
        } else {
            window.open(Path.of(files.get(0)));
        }
    }
}
