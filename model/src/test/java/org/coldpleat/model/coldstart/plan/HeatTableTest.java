package org.coldpleat.model.coldstart.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class HeatTableTest {
    private static final HeatTable TABLE =
            new HeatTable(List.of(new HeatTable.Point(20, 2000, 100), new HeatTable.Point(50, 5000, 700)));

    @Test
    void statedSpeedsGiveTheStatedHeat() {
        assertEquals(2000, TABLE.at(20).toMetal(), 1e-9);
        assertEquals(700, TABLE.at(50).toOil(), 1e-9);
    }

    @Test
    void standstillGivesNoneAndBetweenItIsInProportion() {
        assertEquals(0, TABLE.at(0).toMetal(), 0);
        assertEquals(1000, TABLE.at(10).toMetal(), 1e-9);
        assertEquals(3500, TABLE.at(35).toMetal(), 1e-9);
        assertEquals(400, TABLE.at(35).toOil(), 1e-9);
    }

    @Test
    void beyondTheFastestSpeedItGrowsOnAsItDidLast() {
        assertEquals(50, TABLE.fastest(), 0);
        assertEquals(6000, TABLE.at(60).toMetal(), 1e-9);
        assertEquals(900, TABLE.at(60).toOil(), 1e-9);
        HeatTable one = new HeatTable(List.of(new HeatTable.Point(20, 2000, 100)));
        assertEquals(4000, one.at(40).toMetal(), 1e-9);
    }

    @Test
    void heatThatFallsWithSpeedNeverFallsBelowNone() {
        HeatTable falling =
                new HeatTable(List.of(new HeatTable.Point(20, 2000, 100), new HeatTable.Point(30, 500, 100)));
        assertEquals(0, falling.at(60).toMetal(), 0);
    }

    @Test
    void emptyTableGivesNone() {
        assertEquals(0, HeatTable.NONE.at(30).toMetal(), 0);
        assertEquals(0, HeatTable.NONE.fastest(), 0);
    }
}
