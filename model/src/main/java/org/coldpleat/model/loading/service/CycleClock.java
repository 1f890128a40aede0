package org.coldpleat.model.loading.service;

import java.util.Arrays;

/** Running time at which each cycle of a service begins; the cycles of a year come round again. */
final class CycleClock {
    /** Rounding of a sum of cycles, over the time [1]. */
    private static final double ROUNDING = 1e-14;

    /** Beginnings of the cycles of the first year and of the second [s]. */
    private final double[] begins;

    CycleClock(double startDuration, double[] hotDurations) {
        begins = new double[hotDurations.length + 1];
        for (int i = 0; i < hotDurations.length; i++) {
            begins[i + 1] = begins[i] + startDuration + hotDurations[i];
        }
    }

    /** Beginning of a cycle counted from 0 [s]. */
    double begin(long cycle) {
        int perYear = begins.length - 1;
        long years = cycle / perYear;
        return years * begins[perYear] + begins[(int) (cycle % perYear)];
    }

    /** Cycle that runs at a time [s]; one that begins within rounding has begun. */
    long at(double time) {
        int perYear = begins.length - 1;
        double year = begins[perYear];
        double moment = time * (1 + ROUNDING);
        long years = (long) Math.floor(moment / year);
        int found = Arrays.binarySearch(begins, moment - years * year);
        int cycle = found >= 0 ? found : -found - 2;
        return years * perYear + Math.min(Math.max(cycle, 0), perYear - 1);
    }
}
