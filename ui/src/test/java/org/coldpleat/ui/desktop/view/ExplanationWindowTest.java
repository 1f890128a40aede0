package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import javafx.stage.Stage;
import org.coldpleat.ui.commandline.CommandLineFace;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.text.ExplainedLink;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.Start;

/** Pressing an answer shows what it was worked out from. */
class ExplanationWindowTest extends HutWindow {
    @Start
    void start(Stage given) throws IOException {
        begin(given);
    }

    @SuppressWarnings("unchecked")
    private TreeView<ExplainedLink> tree() {
        return probe.node("#explanation", TreeView.class);
    }

    private void press(String id) {
        robot.interact(() -> probe.node(id, Button.class).fire());
    }

    private static int count(TreeItem<ExplainedLink> item) {
        return 1
                + item.getChildren().stream()
                        .mapToInt(ExplanationWindowTest::count)
                        .sum();
    }

    @Test
    void theChainIsTheOneOfTheCommandLineAndUnfolds() throws Exception {
        press("#answer:Copper");
        WindowProbe.until(
                60,
                () -> probe.has("#explanation")
                        && tree().getRoot().getChildren().size() == 3);
        List<TreeItem<ExplainedLink>> chains = tree().getRoot().getChildren();
        StringWriter printed = new StringWriter();
        int code = CommandLineFace.run(
                List.of("explain", HUT.toString(), "--candidate", "Copper", "--state", "cranking"),
                CaseService.standard(),
                new PrintWriter(printed),
                new PrintWriter(new StringWriter()));
        assertEquals(0, code);
        assertEquals(printed.toString(), chains.get(0).getValue().text());
        assertTrue(chains.get(1).getValue().headline().contains("round the medium"), "share");
        assertTrue(chains.get(2).getValue().headline().startsWith("Chance"), "chance");
        int folded = tree().getExpandedItemCount();
        press("#explanation-unfold");
        assertEquals(count(tree().getRoot()) - 1, tree().getExpandedItemCount());
        probe.picture("explanation");
        press("#explanation-fold");
        assertEquals(folded, tree().getExpandedItemCount());
    }
}
