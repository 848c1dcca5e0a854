/** What each gear kind carries in a hook-up, and what lowers its rating there. */
import { field, type FieldId } from "../columns";
import { exact, type Exact, fromCell, within } from "../numbers/exact";
import type { Answer } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { readText, recordedText, tidy } from "../reading/text";
import type { ItemResult } from "../report/model";
import { readChainSize } from "../reading/chain-size";
import type { Length } from "../reading/length";
import { namedUnit } from "../numbers/lengths";
import { chainGrade, chokeShare, eyeboltRow, hotShare, isBlank, sideShareOfKind } from "./figures";
import { severalLegs, tellsOfLegs } from "./leg-words";
import { SERVICE_TEMPERATURE } from "./service-temperature";
import { CHOKER_SHARE, EYEBOLT_SHIPYARD } from "./tables";

/** A share by which the rating is lowered, with the table it comes from. */
export interface Reduction {
  readonly share: Exact;
  readonly words: string;
}
export type Hitch = "vertical" | "choker" | "basket";
export const HITCHES: readonly Hitch[] = ["vertical", "choker", "basket"];
const good = <T>(value: T): Answer<T> => ({ ok: true, value });
const none = (why: string): Answer<never> => ({ ok: false, kind: "missing", why });
const WHOLE = exact(1);
export const SLINGS: readonly string[] = ["chain sling", "wire rope sling", "web sling", "roundsling", "mesh sling", "fibre rope sling"];
/** Hardware whose rating is held against the pull on it: one leg, or the whole load above the legs. */
const HARDWARE: readonly string[] = ["shackle", "hook", "link", "swivel", "eyebolt", "eye nut", "hoist ring", "turnbuckle"];
/** Kinds that a side load is asked for: screwed into the load, they stand as the load is drilled, not as the leg pulls. */
export const SIDE_ASKED: readonly string[] = ["eyebolt", "eye nut"];
/** Kinds that take a side load in the pane. */
export const SIDE_TAKEN: readonly string[] = ["shackle", ...SIDE_ASKED];
/** Chain that remarks call by another name than alloy chain of the two grades. */
const NOT_ALLOY =
  /\b(stainless|inox|(transport|lashing|binder|tow(ing)?|anchor|log(ging)?|tie[- ]?down|hoist|load) chain|(mild|carbon) steel|proof coil|(high|hi)[- ]?test|wrought|non?[- ]?alloy|not (an )?alloy|grade (is )?unknown|unknown grade)\b/i;
/** A grade as a row names it: T is the letter of grade 8. */
const gradeNamed = (said: string): "80" | "100" | null => chainGrade(said === "t" ? "8" : said);
/** Grades that a text names, as it names them: behind the word "grade", else before it, where a size can stand as well. */
function gradesSaid(text: string): readonly string[] {
  const all = (pattern: RegExp): readonly string[] =>
    [...text.matchAll(pattern)]
      .flatMap((match) => match.slice(1))
      .flatMap((one: string | undefined) => (one === undefined ? [] : [one.toLowerCase()]));
  const behind = all(
    /\b(?:grade|grd|gr|g)[ .:-]{0,2}(t\b|\d+(?!\d|[.,]\d| ?(?:mm|cm|m|in|inch|ft|t|te|kg|lbs?)\b|"))(?: ?(?:\/|&|or|and) ?(?:grade|gr|g)?[ .]?(\d+))?/gi,
  );
  const before = all(/\b(\d+)[ -]?grade\b/gi);
  const sure = [...behind, ...before].filter((one) => one === "80" || one === "100");
  return sure.length > 0 ? sure : behind.length > 0 ? behind : before;
}
/** What a row says of its item beside its kind: remarks, and a size that can hold more than a size. */
const SAID: readonly FieldId[] = ["remarks", "size"];
type Row = Pick<ItemResult, "gear" | "gearText" | "cells">;
const saying = (cell: CellValue, id: FieldId): string => `its row says "${plainText(cell)}" under ${field(id).heading}`;
const TOGETHER = "the tag of such a sling rates all of them together at the tag's own angle; read the load for this lift off the tag";
const ONE = /^(1|one|single|i)([- ]?leg(ged)?)?$/i;
/** Why a sling is not taken as one leg of alloy chain, rope or web, whose tag rates that leg; null when it is. */
function notOneLeg({ gear, gearText, cells }: Row & { readonly gear: string }): string | null {
  if (severalLegs(gear, gearText))
    return `"${gearText}" can have several legs, and ${TOGETHER}, or write "single leg" as part of its name where it has one`;
  const legs = cells.get("legs");
  if (legs === 0 || (recordedText(legs) !== "" && !ONE.test(readText(legs))))
    return `${saying(legs, "legs")}, so it can have several legs, and ${TOGETHER}`;
  for (const id of SAID) {
    const text = readText(cells.get(id));
    if (tellsOfLegs(text)) return `${saying(text, id)}, so it can have several legs, and ${TOGETHER}`;
    if (gear === "chain sling" && (NOT_ALLOY.test(text) || gradesSaid(text).some((grade) => gradeNamed(grade) === null)))
      return `${saying(text, id)}, and only alloy chain of grade 80 or 100 is in this catalogue`;
  }
  return null;
}
/** Why an item cannot be held against a load here, or null when it can. */
export function notModelled(item: Row): string | null {
  const { gear, gearText } = item;
  if (gear === null) return `"${gearText}" is no gear kind in this catalogue, so what it carries is not known`;
  if (SLINGS.includes(gear)) return notOneLeg({ ...item, gear });
  return HARDWARE.includes(gear)
    ? null
    : `the pull on a ${gear} is not modelled here; hold it against its own rating plate and its maker's figures`;
}
/** The rating of a sling is that of one leg hanging straight; a choker hitch takes its share, from chain more than from the rest. */
export function hitchReductions(gear: string, hitch: Hitch, chokeAngle: CellValue): Answer<readonly Reduction[]> {
  if (hitch !== "choker") return good([]);
  if (isBlank(chokeAngle)) return none("The choke angle is missing; type it (a sling that chokes freely hangs at more than 120 degrees).");
  const share = chokeShare(chokeAngle, gear);
  if (!share.ok) return share;
  const { ofVertical, ofChoker } = share.value;
  if (ofChoker === null)
    return good([
      {
        share: fromCell(ofVertical),
        words: `choker hitch, choke angle ${plainText(chokeAngle)} degrees, ${percent(fromCell(ofVertical))} of the straight rating (${gear === "chain sling" ? "chain sling brochure" : "sling handbooks on wire rope"})`,
      },
    ]);
  const choke = fromCell(ofChoker);
  return good([
    { share: fromCell(CHOKER_SHARE), words: `choker hitch ${percent(fromCell(CHOKER_SHARE))} (typical of US sling tables)` },
    ...(choke.equals(1)
      ? []
      : [
          {
            share: choke,
            words: `choke angle ${plainText(chokeAngle)} degrees ${percent(choke)} (choke table in rigging handbooks that restate ASME B30.9)`,
          },
        ]),
  ]);
}
/** Grades of alloy chain that a row names, in the name of its gear, its remarks or its size; each once. */
export function gradesOf(row: Row): readonly string[] {
  const texts = [row.gearText, ...SAID.map((id) => readText(row.cells.get(id)))];
  return [...new Set(texts.flatMap(gradesSaid).flatMap((said) => gradeNamed(said) ?? []))].sort((a, b) => Number(a) - Number(b));
}
/** The grade of a chain in a lift: what is typed, unless the row names another; where nothing is typed, what the row names. */
function gradeIn(row: Row, typed: CellValue): Answer<{ readonly grade: CellValue; readonly from: string }> {
  const named = gradesOf(row);
  const [only = ""] = named;
  const said = [row.gearText, ...SAID.map((id) => readText(row.cells.get(id)))]
    .filter((text) => gradesSaid(text).length > 0)
    .map((text) => `"${text}"`)
    .join(", ");
  if (named.length > 1)
    return none(`The row names ${named.map((one) => `grade ${one}`).join(" and ")} (${said}); put the wrong one right.`);
  const grade = chainGrade(typed);
  if (only !== "" && grade !== null && grade !== only)
    return none(`The row names grade ${only} (${said}) and the lift grade ${grade}; put the wrong one right.`);
  return good(
    only !== "" && isBlank(typed)
      ? { grade: only, from: `grade ${only} as its row names it` }
      : { grade: typed, from: `grade ${grade ?? ""}` },
  );
}
/** Heat: alloy chain by its table; hardware inside its published range keeps its rating; for the rest no figure is known. */
export function heatReduction(
  row: Row,
  gear: string,
  temperature: CellValue,
  unit: CellValue,
  typed: CellValue,
): Answer<readonly Reduction[]> {
  if (isBlank(temperature)) return good([]);
  const at = `${plainText(temperature)} ${readText(unit)}`;
  if (gear === "chain sling") {
    const told = gradeIn(row, typed);
    if (!told.ok) return told;
    const { grade, from } = told.value;
    const share = hotShare(grade, plainText(temperature), unit, "hot");
    if (!share.ok) return share;
    if (share.value === 0)
      return none(`Alloy chain is not used at ${at}: above 1000 F (538 C) it is taken out of service [ASME B30.9 Table 9-1.8.1-1].`);
    return good(
      share.value === 1
        ? []
        : [
            {
              share: fromCell(share.value),
              words: `heat at ${at} ${percent(fromCell(share.value))} (ASME B30.9 Table 9-1.8.1-1, ${from})`,
            },
          ],
    );
  }
  const range = SERVICE_TEMPERATURE[gear];
  if (range === undefined)
    return none(
      `There is no heat figure for a ${gear} here; ask its maker, or leave the temperature blank where the lift is at room temperature.`,
    );
  const scale = readText(unit).toUpperCase().replace(/[°º]/g, "");
  if (scale !== "F" && scale !== "C") return none("The temperature unit is missing; type F or C.");
  const degrees = tidy(plainText(temperature));
  if (!/^-?\d+(\.\d+)?$/.test(degrees)) return none(`The temperature "${degrees}" is not a plain number.`);
  const [least, most] = range[scale];
  return within(exact(degrees), exact(least), exact(most))
    ? good([])
    : none(`At ${at} the maker of a ${gear} is asked: its rating holds from ${least} to ${most} ${scale} [${range.source}].`);
}
/** Size of the item as its row gives it; null where it is not there or cannot be read. */
export function sizeOf(row: Row): Length | null {
  const unit = namedUnit(readText(row.cells.get("unit")));
  const read = readChainSize(row.cells.get("size"), unit?.unit ?? null, unit?.times);
  return read.kind === "value" ? read.value : null;
}
/** Side load: a shackle is pulled in line when nothing is typed; screwed-in gear must be given its angle. */
export function sideReduction(row: Row, gear: string, angle: CellValue): Answer<readonly Reduction[]> {
  const { gearText } = row;
  if (isBlank(angle)) {
    return SIDE_ASKED.includes(gear)
      ? none(`The side load angle of the ${gear} is missing; type the angle between the pull and its shank, 0 where it is pulled straight.`)
      : good([]);
  }
  const degrees = tidy(plainText(angle)).replace(/ ?(°|deg(rees)?)$/i, "");
  if (/^0+(\.0+)?$/.test(degrees)) return good([]);
  const share = sideShareOfKind(gear, gearText, degrees, sizeOf(row));
  if (!share.ok) return share;
  const table =
    gear === "eyebolt"
      ? `angle from the shank, shoulder eyebolts only, ${eyeboltRow(sizeOf(row)) === undefined ? "the least share of any size" : "by its size"}: ASME B18.15, restated${within(exact(degrees), null, EYEBOLT_SHIPYARD) ? "" : "; shipyard work allows 20 degrees at most, WAC 296-304-07011(4)"}`
      : "angle out of the shackle's plane: WAC 296-155-33905 Fig. 17";
  return good(
    share.value.equals(1) ? [] : [{ share: share.value, words: `side load at ${degrees} degrees ${percent(share.value)} (${table})` }],
  );
}
/** What was typed, with a plain 0 as "0". */
export const plainText = (cell: CellValue): string => (cell === 0 ? "0" : readText(cell));
export function percent(share: Exact): string {
  return `${share.mul(100).floor(1).toString()} %`;
}
export function lowered(rating: Exact, reductions: readonly Reduction[]): Exact {
  return reductions.reduce((left, { share }) => left.mul(share), rating.mul(WHOLE));
}
