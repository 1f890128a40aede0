"""Writes viscosity_index_library.csv and heat_transfer_oil_library.csv beside this file.

Needs chemicals 1.5.2 and CoolProp 8.0.0 (pip). Run: python library_values.py
"""

from pathlib import Path

import chemicals
import CoolProp
from chemicals.viscosity import viscosity_index
from CoolProp.CoolProp import PropsSI

HERE = Path(__file__).parent


def write_viscosity_index():
    lines = [
        "# Viscosity index, not rounded, for kinematic viscosities at 40 and 100 C [mm2/s]",
        f"# Source: general library chemicals {chemicals.__version__}, viscosity_index (carries Table 1 of ASTM D2270 in full)",
        "# Written by library_values.py beside this file",
        "kv40,kv100,index",
    ]
    for kv100 in (2.1, 2.95, 3.7, 4.1, 4.7, 5.6, 6.7, 7.35, 8.3, 8.7, 10.1, 13.7, 14.9, 18.2, 21.3, 25.4, 33.3, 47.1, 61.7, 85.0):
        for slenderness in (1.45, 1.6, 1.75):
            kv40 = float(f"{kv100 ** slenderness * 1.9:.4g}")
            index = viscosity_index(kv40 * 1e-6, kv100 * 1e-6, rounding=False)
            lines.append(f"{kv40},{kv100},{index:.3f}")
    (HERE / "viscosity_index_library.csv").write_text("\n".join(lines) + "\n")


def write_heat_transfer_oil():
    lines = [
        "# Mineral heat-transfer oil: density [kg/m3] and kinematic viscosity [mm2/s] at ambient pressure",
        f"# Source: general library CoolProp {CoolProp.__version__}, INCOMP::TX22 (a fit to a maker's table; used from 0 to 150 C)",
        "# Written by library_values.py beside this file",
        "celsius,density,viscosity",
    ]
    for celsius in (0, 15, 20, 30, 40, 60, 80, 100, 120, 150):
        state = ("T", celsius + 273.15, "P", 3e5, "INCOMP::TX22")
        density = PropsSI("D", *state)
        viscosity = PropsSI("V", *state) / density * 1e6
        lines.append(f"{celsius},{density:.2f},{viscosity:.4g}")
    (HERE / "heat_transfer_oil_library.csv").write_text("\n".join(lines) + "\n")


write_viscosity_index()
write_heat_transfer_oil()
