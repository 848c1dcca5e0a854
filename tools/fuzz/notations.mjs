/** How a clerk writes a size. Every notation gives back the size it was given, to the last digit that it shows. */

const trim = (figure, decimals) => String(Number(figure.toFixed(decimals)));
const GLYPHS = { "1/2": "½", "1/4": "¼", "3/4": "¾", "1/8": "⅛", "3/8": "⅜", "5/8": "⅝", "7/8": "⅞" };

/** Whole and fraction of a size in sixty-fourths of an inch; null where it is none. */
function fraction(inches) {
  const parts = Math.round(inches * 64);
  if (Math.abs(parts / 64 - inches) > 1e-9) return null;
  const whole = Math.floor(parts / 64);
  let over = parts % 64;
  if (over === 0) return { whole, part: "" };
  let under = 64;
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return { whole, part: `${over}/${under}` };
}
const joined = (inches, join) => {
  const parts = fraction(inches);
  if (!parts || parts.part === "") return null;
  return parts.whole === 0 ? parts.part : `${parts.whole}${join}${parts.part}`;
};
const glyph = (inches) => {
  const parts = fraction(inches);
  const sign = parts && GLYPHS[parts.part];
  return sign ? `${parts.whole === 0 ? "" : parts.whole}${sign}` : null;
};

/** Notations of a bare size, by unit: each gives text or a number, or null where it cannot show this size. */
const BARE = {
  mm: [
    (mm) => Number(trim(mm, 2)),
    (mm) => trim(mm, 2),
    (mm) => (mm === Math.round(mm * 10) / 10 ? trim(mm, 1).replace(".", ",") : null),
    (mm) => `\u00a0${trim(mm, 2)} `,
  ],
  in: [
    (inches) => Number(trim(inches, 4)),
    (inches) => trim(inches, 4),
    (inches) => (inches < 1 ? trim(inches, 4).replace(/^0/, "") : null),
    (inches) => joined(inches, " "),
    (inches) => joined(inches, "-"),
    glyph,
  ],
};
/** Notations that carry their own unit. */
const WITH_UNIT = {
  mm: [
    (mm) => `${trim(mm, 2)} mm`,
    (mm) => `${trim(mm, 2)}mm`,
    (mm) => `${trim(mm / 10, 3)} cm`,
    (mm) => (mm === Math.round(mm * 10) / 10 ? `${trim(mm, 1).replace(".", ",")} mm` : null),
    (mm) => `${trim(mm, 2)}\u00a0mm`,
    (mm) => `${trim(mm, 2)} MM`,
  ],
  in: [
    (inches) => `${trim(inches, 4)} in`,
    (inches) => `${trim(inches, 4)}"`,
    (inches) => (joined(inches, " ") === null ? null : `${joined(inches, " ")} in`),
    (inches) => (joined(inches, "-") === null ? null : `${joined(inches, "-")}"`),
    (inches) => (joined(inches, " ") === null ? null : `${joined(inches, " ")} inches`),
    (inches) => (inches >= 24 && inches % 12 === 0 ? `${inches / 12}'` : null),
    (inches) => (inches >= 24 && inches % 12 === 0 ? `${inches / 12}' 0"` : null),
    (inches) => (inches >= 24 ? `${Math.floor(inches / 12)}' ${trim(inches % 12, 3)}"` : null),
    (inches) => (inches >= 24 && inches % 12 === 0 ? `${inches / 12} ft` : null),
  ],
};

/**
 * A size as a cell. `size` is in `unit`; `place` says where the unit stands: in the heading, in a column, or in the cell itself.
 */
export function written(size, unit, place, d) {
  const ways = place === "cell" || d.chance(0.06) ? WITH_UNIT[unit] : BARE[unit];
  for (let tries = 0; tries < 6; tries++) {
    const cell = d.pick(ways)(size);
    if (cell !== null) return cell;
  }
  return ways[0](size);
}
/** The plainest cell of a size: a number, or text with its unit where nothing else says it. */
export const plainly = (size, unit, place) => (place === "cell" ? WITH_UNIT[unit][0](size) : BARE[unit][0](size));

/** The number that a size in mm becomes in a log's unit, at a figure that a gauge shows. */
export const toUnit = (mm, unit) => (unit === "mm" ? Number(mm.toFixed(2)) : Number((mm / 25.4).toFixed(4)));

/** Cells that are no size. */
export const NO_SIZE = [
  "?",
  "n/a",
  "N/A",
  "-",
  "ok",
  "good",
  "worn",
  "see note",
  "#REF!",
  "#N/A",
  "#VALUE!",
  "tbc",
  "not measured",
  "abt",
  "x",
  "1.2.3",
  "--",
  "could not reach",
  "12 to 14",
  "approx",
  true,
  false,
  "12 furlongs",
  "20 kg",
];
/** Cells that are no count. */
export const NO_COUNT = [
  "?",
  "some",
  "several",
  "many",
  "n/a",
  "-",
  "see photo",
  "not counted",
  "#REF!",
  "a few",
  "yes",
  -1,
  2.5,
  "1 or 2",
  "tbc",
  "0?",
];
