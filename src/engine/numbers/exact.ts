/**
 * Exact numbers: limits are met in rational arithmetic, never in binary fractions. A number is one whole number over another;
 * as long as both stay below 2^53 they are plain numbers, beyond that big ones. The result is the same, only slower.
 */

// Taken out of their objects once: where the functions run by themselves, each look at a global costs more than the sum behind it.
const { abs, round } = Math;
const { isSafeInteger } = Number;
const SAFE = Number.MAX_SAFE_INTEGER;
const safe = (whole: number): boolean => whole <= SAFE && whole >= -SAFE;
type Operand = Exact | number;

export class Exact {
  private readonly n: number;
  private readonly d: number;
  /** Top and bottom beyond 2^53, in lowest terms; null where `n` and `d` hold them. */
  private readonly wide: readonly [bigint, bigint] | null;
  private constructor(n: number, d: number, wide: readonly [bigint, bigint] | null) {
    this.n = n;
    this.d = d;
    this.wide = wide;
  }
  /** One whole number over another, which is more than 0. */
  static of(n: number, d = 1): Exact {
    if (d === 0) throw new Error("Division by zero");
    return isSafeInteger(n) && isSafeInteger(d) && d > 0 ? new Exact(n, d, null) : exact(String(n)).div(exact(String(d)));
  }
  static big(n: bigint, d: bigint): Exact {
    if (d === 0n) throw new Error("Division by zero");
    const common = greatestCommon(n < 0n ? -n : n, d < 0n ? -d : d);
    const top = (d < 0n ? -n : n) / common;
    const bottom = (d < 0n ? -d : d) / common;
    const [small, under] = [Number(top), Number(bottom)];
    return safe(small) && safe(under) ? new Exact(small, under, null) : new Exact(0, 1, [top, bottom]);
  }
  add(value: Operand): Exact {
    return this.plus(operand(value), 1);
  }
  sub(value: Operand): Exact {
    return this.plus(operand(value), -1);
  }
  mul(value: Operand): Exact {
    const other = operand(value);
    if (this.wide === null && other.wide === null) {
      const n = this.n * other.n;
      const d = this.d * other.d;
      if (safe(n) && d <= SAFE) return new Exact(n, d, null);
    }
    const [a, b] = this.pair();
    const [c, e] = other.pair();
    return Exact.big(a * c, b * e);
  }
  div(value: Operand): Exact {
    const other = operand(value);
    if (this.wide === null && other.wide === null && other.n !== 0) {
      const n = other.n < 0 ? -this.n * other.d : this.n * other.d;
      const d = this.d * abs(other.n);
      if (safe(n) && d <= SAFE) return new Exact(n, d, null);
    }
    const [a, b] = this.pair();
    const [c, e] = other.pair();
    return Exact.big(a * e, b * c);
  }
  /** Less than 0, 0, or more than 0: by cross-multiplication. */
  compare(value: Operand): number {
    const other = operand(value);
    if (this.wide === null && other.wide === null) {
      const left = this.n * other.d;
      const right = other.n * this.d;
      if (safe(left) && safe(right)) return left < right ? -1 : left > right ? 1 : 0;
    }
    const [a, b] = this.pair();
    const [c, e] = other.pair();
    const left = a * e;
    const right = c * b;
    return left < right ? -1 : left > right ? 1 : 0;
  }
  /** Its share of another number, rounded once. */
  over(other: Exact): number {
    if (this.wide === null && other.wide === null) {
      const n = this.n * other.d;
      const d = this.d * other.n;
      if (safe(n) && safe(d)) return n / d;
    }
    return this.div(other).valueOf();
  }
  equals(value: Operand): boolean {
    return this.compare(value) === 0;
  }
  abs(): Exact {
    return this.compare(0) < 0 ? operand(0).sub(this) : this;
  }
  /** The fraction that is left of it. */
  isWhole(): boolean {
    return this.wide === null ? this.n % this.d === 0 : this.wide[1] === 1n;
  }
  /** Rounded down to decimals. */
  floor(places = 0): Exact {
    return this.toDecimals(places, (whole, rest) => (rest < 0n ? whole - 1n : whole));
  }
  /** Rounded up to decimals. */
  ceil(places = 0): Exact {
    return this.toDecimals(places, (whole, rest) => (rest > 0n ? whole + 1n : whole));
  }
  /** Rounded to decimals, a half upwards. */
  round(places = 0): Exact {
    const ten = 10 ** places;
    const top = this.n * ten;
    if (this.wide === null && top >= 0 && 2 * top + this.d <= SAFE) {
      const rest = top % this.d;
      return new Exact((top - rest) / this.d + (2 * rest >= this.d ? 1 : 0), ten, null);
    }
    return this.toDecimals(places, (whole, rest, under) =>
      rest >= 0n ? (2n * rest >= under ? whole + 1n : whole) : -2n * rest > under ? whole - 1n : whole,
    );
  }
  private toDecimals(places: number, settle: (whole: bigint, rest: bigint, under: bigint) => bigint): Exact {
    const ten = 10n ** BigInt(places);
    const [top, under] = this.pair();
    return Exact.big(settle((top * ten) / under, (top * ten) % under, under), ten);
  }
  /** As a decimal without trailing zeros, cut after `places`; round first. */
  toString(places = 15): string {
    const ten = 10 ** places;
    const scaled = this.n * (ten / this.d);
    if (this.wide === null && this.n >= 0 && ten % this.d === 0 && scaled <= SAFE) return decimal(String(scaled), places);
    const [top, under] = this.pair();
    const digits = ((top < 0n ? -top : top) * 10n ** BigInt(places)) / under;
    return (top < 0n ? "-" : "") + decimal(String(digits), places);
  }
  /** As "3/4", or "3" where it is whole. */
  toFraction(): string {
    const [n, d] = this.pair();
    const common = greatestCommon(n < 0n ? -n : n, d);
    return d === common ? String(n / common) : `${String(n / common)}/${String(d / common)}`;
  }
  valueOf(): number {
    return this.wide === null ? this.n / this.d : Number(this.wide[0]) / Number(this.wide[1]);
  }
  private plus(other: Exact, sign: 1 | -1): Exact {
    if (this.wide === null && other.wide === null) {
      if (this.d === other.d) {
        const sum = this.n + sign * other.n;
        if (safe(sum)) return new Exact(sum, this.d, null);
      }
      const left = this.n * other.d;
      const right = other.n * this.d;
      const n = left + sign * right;
      const d = this.d * other.d;
      if (safe(left) && safe(right) && safe(n) && d <= SAFE) return new Exact(n, d, null);
    }
    const [a, b] = this.pair();
    const [c, e] = other.pair();
    return Exact.big(a * e + BigInt(sign) * c * b, b * e);
  }
  private pair(): readonly [bigint, bigint] {
    return this.wide ?? [BigInt(this.n), BigInt(this.d)];
  }
}
function greatestCommon(a: bigint, b: bigint): bigint {
  let [one, other] = [a, b];
  while (other !== 0n) [one, other] = [other, one % other];
  return one;
}
/** Digits with the point set before the last `places` of them. */
function decimal(digits: string, places: number): string {
  const all = digits.padStart(places + 1, "0");
  const whole = all.slice(0, all.length - places);
  let end = all.length;
  while (end > whole.length && all.charCodeAt(end - 1) === 48) end -= 1;
  return end === whole.length ? whole : `${whole}.${all.slice(whole.length, end)}`;
}
const SMALL = Array.from({ length: 256 }, (_, whole) => Exact.of(whole));
const operand = (value: Operand): Exact => (typeof value === "number" ? (SMALL[value] ?? exact(value)) : value);
/** Digits that are certainly below 2^53. */
const FEW = 15;
/** Exact value of a literal such as "1/4", "1 1/8", "0.05", "25.4" or a whole number. */
export function exact(literal: string | number): Exact {
  if (typeof literal === "number" && isSafeInteger(literal)) return Exact.of(literal);
  const mixed = typeof literal === "string" ? /^(\d+) (\d+\/\d+)$/.exec(literal) : null;
  if (mixed) return exact(mixed[1] ?? "").add(exact(mixed[2] ?? ""));
  const parts = /^(-?)(\d*)(?:\.(\d*))?(?:\/(\d+))?(?:e([-+]?\d+))?$/i.exec(String(literal));
  const [, minus = "", whole = "", part = "", under = "1", ten = "0"] = parts ?? [];
  if (parts === null || whole + part === "") throw new Error(`"${String(literal)}" is no number`);
  const power = Number(ten) - part.length;
  if (whole.length + part.length <= FEW && under.length <= FEW && power <= 0 && power > -FEW && (under === "1" || power === 0))
    return Exact.of(Number(`${minus}${whole}${part}`), under === "1" ? 10 ** -power : Number(under));
  const digits = BigInt(`${minus}${whole}${part}`);
  return power < 0 ? Exact.big(digits, BigInt(under) * 10n ** BigInt(-power)) : Exact.big(digits * 10n ** BigInt(power), BigInt(under));
}
export const ZERO = exact(0);
/** What a subtraction leaves over in binary; no gauge reads a billionth. */
const DUST = 1e-9;
/** Whole numbers, and the decimals that gauges read to. */
const PARTS = [1, 10_000, 1_000_000] as const;
/**
 * Exact value of a number that came out of a cell. A spreadsheet shows and compares 15 significant digits,
 * so 2.1 means 21/10 and 0.1+0.2 means 3/10.
 */
export function fromCell(value: number): Exact {
  if (abs(value) < DUST) return ZERO;
  // A number that is a count of such parts is shown by the spreadsheet with just these decimals.
  for (const parts of PARTS) {
    const counted = round(value * parts);
    if (counted / parts === value && abs(counted) < 1e14) return Exact.of(counted, parts);
  }
  const rounded = Number(value.toPrecision(15));
  // The largest numbers round up to none.
  return exact(String(Number.isFinite(rounded) ? rounded : value));
}
/** A number as the spreadsheet shows it, by 15 significant digits. */
export function shown(value: number): string {
  const counted = round(value * 1_000_000);
  return counted / 1_000_000 === value && abs(counted) < 1e14 ? String(value) : String(Number(value.toPrecision(15)));
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
