package org.coldpleat.model.coldstart;

/**
 * State at one moment of a start.
 *
 * @param time [s]
 * @param oilTemperature [K]
 * @param metalTemperature [K]
 * @param elementTemperature [K]
 * @param pumpPressure [Pa]
 * @param galleryPressure [Pa]; 0 while the gallery fills
 * @param filterDrop over the whole filter [Pa]
 * @param valveDifference across the leading bypass valve [Pa]
 * @param openingPressure of that valve as set [Pa]; infinite without a valve
 * @param lift of that valve over its maximum lift [1]
 * @param pumpFlow [m3/s]
 * @param reliefFlow [m3/s]
 * @param mediumFlow through the medium [m3/s]
 * @param bypassFlow round the medium, leaks included [m3/s]
 */
public record StartPoint(
        double time,
        double oilTemperature,
        double metalTemperature,
        double elementTemperature,
        double pumpPressure,
        double galleryPressure,
        double filterDrop,
        double valveDifference,
        double openingPressure,
        double lift,
        double pumpFlow,
        double reliefFlow,
        double mediumFlow,
        double bypassFlow) {
    /** Share of the oil that reaches the engine unfiltered [1]; 0 at no flow. */
    public double bypassShare() {
        double total = mediumFlow + bypassFlow;
        return total == 0 ? 0 : bypassFlow / total;
    }
}
