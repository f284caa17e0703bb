"""Compares the lines of the example `water_table` with IAPWS-97 as computed by the package iapws.

Use: cargo run -q -p solver --example water_table | python tests/reference/water/check.py
"""

import sys

from iapws.iapws97 import _Region1, _TSat_P

KELVIN = 273.15
LIMITS = {"density kg/m3": 0.02, "cp fraction": 5e-4, "saturation K": 1e-6, "enthalpy J/kg": 30.0}


def main() -> int:
    worst = dict.fromkeys(LIMITS, 0.0)
    lines = 0
    zero = _Region1(KELVIN, 0.101325)["h"]
    for line in sys.stdin:
        word = line.split()
        lines += 1
        if word[0] == "saturation":
            off = {"saturation K": float(word[2]) + KELVIN - _TSat_P(float(word[1]) / 1e6)}
        elif word[0] == "enthalpy":
            h = (_Region1(float(word[1]) + KELVIN, 0.101325)["h"] - zero) * 1000
            off = {"enthalpy J/kg": float(word[2]) - h}
        else:
            celsius, pascal, density, cp = map(float, word)
            exact = _Region1(celsius + KELVIN, pascal / 1e6)
            off = {
                "density kg/m3": density - 1 / exact["v"],
                "cp fraction": cp / (exact["cp"] * 1000) - 1,
            }
        for name, value in off.items():
            worst[name] = max(worst[name], abs(value))
    bad = lines < 900
    for name, value in worst.items():
        print(f"{name}: worst {value:.3g}, limit {LIMITS[name]:g}")
        bad |= not value <= LIMITS[name]
    print(f"{lines} lines")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
