package org.coldpleat.shared.casefile.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Units;
import org.junit.jupiter.api.Test;

/** Every field of the catalog has words, a unit and a place in the order of the work. */
class FieldCatalogTest {
    private static void walk(String path, Field field, BiConsumer<String, Field> seen) {
        for (Field below : field.fields()) {
            String at = path.isEmpty() ? below.key() : path + "." + below.key();
            seen.accept(at, below);
            walk(at, below, seen);
        }
    }

    @Test
    void everyKeyOfTheSchemaHasALabelInFieldsProperties() {
        List<String> without = new ArrayList<>();
        int[] count = {0};
        walk("", FieldCatalog.root(), (path, field) -> {
            count[0]++;
            if (FieldCatalog.label(path).isEmpty()) {
                without.add(path);
            }
            assertFalse(field.hint().isBlank(), path);
            for (String choice : field.choices()) {
                assertTrue(FieldCatalog.wordKeys().contains("choice." + choice), path + " " + choice);
            }
        });
        assertEquals(List.of(), without);
        assertTrue(count[0] > 300, "fields: " + count[0]);
    }

    @Test
    void labelsOfASectionDiffer() {
        walk("", FieldCatalog.root(), (path, field) -> {
            Set<String> labels = new HashSet<>();
            field.fields().forEach(below -> assertTrue(labels.add(below.label()), path + ": " + below.label()));
        });
    }

    @Test
    void labelsCarryNoNumbersAndNoSignsThatSheetsUse() {
        walk(
                "",
                FieldCatalog.root(),
                (path, field) ->
                        assertTrue(field.label().matches("[A-Za-z][A-Za-z, -]*"), path + ": " + field.label()));
    }

    @Test
    void noWordIsDead() {
        Set<String> used = new HashSet<>();
        walk("", FieldCatalog.root(), (path, field) -> {
            String end = path;
            while (!FieldCatalog.wordKeys().contains(end) && end.contains(".")) {
                end = end.substring(end.indexOf('.') + 1);
            }
            used.add(end);
            field.choices().forEach(choice -> used.add("choice." + choice));
        });
        used.addAll(List.of("plusMinus", "provenance", "note"));
        FieldCatalog.provenances().forEach(word -> used.add("choice." + word));
        Set<String> dead = new HashSet<>(FieldCatalog.wordKeys());
        dead.removeAll(used);
        assertEquals(Set.of(), dead);
    }

    @Test
    void everyUnitIsUnderstood() {
        walk(
                "",
                FieldCatalog.root(),
                (path, field) -> field.kind().ifPresent(kind -> {
                    boolean bare = field.unit().isEmpty();
                    assertTrue(
                            bare
                                    ? Units.mayStandBare(kind)
                                    : Units.find(kind, field.unit()).isPresent(),
                            path);
                }));
        Field pleats = FieldCatalog.candidate().field("pleats");
        assertEquals("mm", pleats.field("height").unit());
        assertEquals("", pleats.field("count").unit());
        assertEquals(Kind.COUNT, pleats.field("count").kind().orElseThrow());
    }

    @Test
    void theSheetFollowsTheWork() {
        List<String> keys =
                FieldCatalog.candidate().fields().stream().map(Field::key).toList();
        assertEquals(
                List.of(
                        "name",
                        "outside",
                        "gasket",
                        "antiDrainFlap",
                        "bypass",
                        "basePlate",
                        "centerTube",
                        "element",
                        "pleats",
                        "medium",
                        "tests",
                        "partCurves",
                        "photographs",
                        "construction",
                        "notes"),
                keys);
        List<String> can = FieldCatalog.candidate().field("outside").fields().stream()
                .map(Field::key)
                .toList();
        assertEquals("notes", can.get(can.size() - 1));
        assertEquals(List.of("diameter", "length", "mass", "wallThickness"), can.subList(0, 4));
    }
}
