/** What a gauge reads after the tyre has become warmer or colder. */

import { type Kilopascals, kilopascals } from '../units';

/** Standard atmosphere, kPa. */
const ATMOSPHERE = 101.325;
const ZERO_CELSIUS_IN_KELVIN = 273.15;

/**
 * The gauge pressure, kPa, at another temperature, °C, when no air is let in or out and the tyre does not stretch.
 * Source: ideal gas, (p₂ + p_atm)/T₂ = (p₁ + p_atm)/T₁.
 */
export function gaugeAt(asked: {
  readonly pressure: Kilopascals;
  readonly fromCelsius: number;
  readonly toCelsius: number;
}): Kilopascals {
  const ratio =
    (asked.toCelsius + ZERO_CELSIUS_IN_KELVIN) / (asked.fromCelsius + ZERO_CELSIUS_IN_KELVIN);
  return kilopascals((asked.pressure + ATMOSPHERE) * ratio - ATMOSPHERE);
}
