import { exact, type Exact } from "../numbers/exact";
import type { Unit } from "../numbers/lengths";
import type { CellValue } from "./cell-value";
import { type Length, readLength } from "./length";
import type { Read } from "./read";
import { tidy } from "./text";

const ONE = exact(1);
/** Chain size as the trade writes it: a bare fraction is inches; a grade or what it is a size of is no part of it. */
export function readChainSize(cell: CellValue, assume: Unit | null, times: Exact = ONE): Read<Length> {
  if (typeof cell !== "string") return readLength(cell, { assume, times });
  const text = tidy(cell)
    .replace(/[,;(]? ?\b(?:grade|gr|g)\.? ?-?(?:8|80|100|10|120|12)\b\)?/i, "")
    .replace(/[, ]+((alloy|steel|wire|nominal|nom\.?|chain|rope)( |$))+$/i, "")
    .trim();
  const bareFraction = /^(\d+[ -])?\d+\/\d+$/.test(text);
  return bareFraction ? readLength(text, { assume: "in" }) : readLength(text, { assume, times });
}
