package org.coldpleat.ui.chart.map;

import java.util.Objects;

/**
 * Bypass share on a grid, for the map.
 *
 * @param title title of the case
 * @param invented true if the data are invented
 * @param candidate name of the candidate
 * @param engine true if {@code drive} is engine speed, false if it is flow
 * @param temperature oil temperatures [K], double[nT], rising, at least 2
 * @param drive engine speeds [rev/s] or flows [m3/s], double[nD], rising, at least 2
 * @param share bypass share [1], double[nT][nD]; NaN where not known
 */
public record ShareGrid(
        String title,
        boolean invented,
        String candidate,
        boolean engine,
        double[] temperature,
        double[] drive,
        double[][] share) {
    public ShareGrid {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(candidate, "candidate");
        requireRising("temperature", temperature);
        requireRising("drive", drive);
        if (share.length != temperature.length) {
            throw new IllegalArgumentException("share must have " + temperature.length + " rows, had " + share.length);
        }
        for (double[] row : share) {
            if (row.length != drive.length) {
                throw new IllegalArgumentException("a row must have " + drive.length + " values, had " + row.length);
            }
        }
    }

    private static void requireRising(String name, double[] values) {
        boolean rising = values.length >= 2;
        for (int i = 1; i < values.length; i++) {
            rising &= values[i] > values[i - 1];
        }
        if (!rising) {
            throw new IllegalArgumentException(name + " must hold at least 2 rising values");
        }
    }

    /** Share between the grid points, bilinear; NaN outside the grid and beside a point that is not known. */
    public double at(double kelvin, double driven) {
        int t = cell(temperature, kelvin);
        int d = cell(drive, driven);
        if (t < 0 || d < 0) {
            return Double.NaN;
        }
        double u = (kelvin - temperature[t]) / (temperature[t + 1] - temperature[t]);
        double v = (driven - drive[d]) / (drive[d + 1] - drive[d]);
        return (1 - u) * ((1 - v) * share[t][d] + v * share[t][d + 1])
                + u * ((1 - v) * share[t + 1][d] + v * share[t + 1][d + 1]);
    }

    private static int cell(double[] grid, double value) {
        if (value < grid[0] || value > grid[grid.length - 1]) {
            return -1;
        }
        int cell = 0;
        while (cell < grid.length - 2 && value >= grid[cell + 1]) {
            cell++;
        }
        return cell;
    }
}
