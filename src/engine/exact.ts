/** Exact numbers: limits are met in rational arithmetic, never in binary fractions. */
import Fraction from "fraction.js";

export type Exact = Fraction;

/** Exact value of a literal such as "1/4", "0.05", "25.4" or a whole number. */
export function exact(literal: string | number): Exact {
  return new Fraction(literal);
}

export const ZERO = exact(0);

/**
 * Exact value of a number that came out of a cell. A spreadsheet shows and compares 15 significant digits,
 * so 2.1 means 21/10 and 0.1+0.2 means 3/10.
 */
export function fromCell(value: number): Exact {
  const shown = String(Number(value.toPrecision(15)));
  return /e/i.test(shown) ? new Fraction(value) : new Fraction(shown);
}

export function toNumber(value: Exact): number {
  return value.valueOf();
}
