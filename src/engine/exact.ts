/** Exact numbers: limits are met in rational arithmetic, never in binary fractions. */
import Fraction from "fraction.js";

export type Exact = Fraction;

/** Exact value of a literal such as "1/4", "0.05", "25.4" or a whole number. */
export function exact(literal: string | number): Exact {
  return new Fraction(literal);
}

export const ZERO = exact(0);

/** What a subtraction leaves over in binary; no gauge reads a billionth. */
const DUST = 1e-9;

/**
 * Exact value of a number that came out of a cell. A spreadsheet shows and compares 15 significant digits,
 * so 2.1 means 21/10 and 0.1+0.2 means 3/10.
 */
export function fromCell(value: number): Exact {
  if (Math.abs(value) < DUST) return ZERO;
  const shown = value.toPrecision(15);
  const power = /^(-?\d+)(?:\.(\d+))?e\+?(-?\d+)$/i.exec(shown);
  if (!power) return new Fraction(shown);
  const [, whole = "", part = "", ten = "0"] = power;
  const zeros = Number(ten) - part.length;
  return new Fraction(`${whole}${part}`).mul(zeros < 0 ? new Fraction(1n, 10n ** BigInt(-zeros)) : new Fraction(10n ** BigInt(zeros)));
}

export function toNumber(value: Exact): number {
  return value.valueOf();
}
