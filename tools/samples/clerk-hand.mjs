/** How a clerk writes the same figure on different days. Sizes are whole 64ths of an inch, or millimetres with one decimal. */
import { dice } from "./dice.mjs";

const NBSP = "\u00a0";
const SIGNS = { "1/8": "⅛", "1/4": "¼", "3/8": "⅜", "1/2": "½", "5/8": "⅝", "3/4": "¾", "7/8": "⅞" };

/** 118 of 64 is 1 27/32: whole part and fraction in lowest terms, either may be "". */
function parts(of64) {
  const whole = Math.floor(of64 / 64);
  let top = of64 % 64,
    bottom = 64;
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return { whole: whole === 0 ? "" : String(whole), fraction: top === 0 ? "" : `${String(top)}/${String(bottom)}` };
}

export function clerk(seed) {
  const { between, pick, chance } = dice(seed);

  /** A size in inches, for a column that is headed in inches. */
  function inches(of64) {
    const { whole, fraction } = parts(of64);
    const sign = SIGNS[fraction];
    const decimals = Number((of64 / 64).toFixed(3));
    const spaced = [whole, fraction].filter((part) => part !== "").join(" ");
    const forms = [
      decimals,
      decimals,
      spaced,
      spaced,
      whole !== "" && fraction !== "" ? `${whole}-${fraction}"` : `${spaced}"`,
      whole !== "" && fraction !== "" ? `${whole}${NBSP}${fraction}` : `${spaced}${NBSP}`,
      sign === undefined ? `${spaced} in` : `${whole}${sign}`,
      String(decimals),
      `${((of64 * 25.4) / 64).toFixed(1)} mm`,
    ];
    return pick(forms);
  }

  /** A size in millimetres, for a column that is headed in millimetres. */
  function millimetres(size) {
    const text = size.toFixed(1);
    return pick([
      Number(text),
      Number(text),
      Number(text),
      text.replace(".", ","),
      `${text}mm`,
      text,
      `${text.replace(".", ",")}${NBSP}mm`,
    ]);
  }

  const sound = () => pick(["ok", "ok", "OK", "yes", "Y", "good", "Ok ", "fine"]);
  const none = () => pick(["none", "none", "no", "N", "ok", "nil", "none seen", "No"]);
  const blank = () => pick([null, null, null, null, "-", "n/a"]);
  const zero = () => pick([0, 0, 0, "nil", "0"]);

  return { between, pick, chance, inches, millimetres, sound, none, blank, zero };
}
