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
/** True when two readings are the same figure. */
export function same(a: Exact, b: Exact): boolean {
  return a.equals(b);
}
/** The lesser of two allowances. */
export function lesser(a: Exact, b: Exact): Exact {
  return a.compare(b) <= 0 ? a : b;
}
export function larger(a: Exact, b: Exact): Exact {
  return lesser(a, b) === a ? b : a;
}
/** Whether a value lies between two ends, both included; null leaves that end open. */
export function within(value: Exact, least: Exact | null, most: Exact | null): boolean {
  return (least === null || value.compare(least) >= 0) && (most === null || value.compare(most) <= 0);
}
