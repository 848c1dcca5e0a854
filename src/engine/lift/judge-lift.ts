/** Before the lift: can the gear of one hook-up carry the load? Every figure that is missing refuses; nothing is guessed. */
import { judge } from "../check/compare";
import { sentenceOf } from "../check/sentences";
import { field } from "../columns";
import { outOfUse } from "../decision";
import { dueState } from "../due/intervals";
import { type Exact, fromCell, toNumber } from "../numbers/exact";
import type { Answer } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { fromKg, inKg, type Load, type LoadUnit, readLoad, showLoad } from "../reading/load";
import { readText } from "../reading/text";
import type { ItemResult } from "../report/model";
import { carryingLegs, isBlank, ratedAt } from "./figures";
import { otherRating } from "./leg-words";
import {
  heatReduction,
  type Hitch,
  HITCHES,
  hitchReductions,
  lowered,
  notModelled,
  plainText,
  type Reduction,
  sideReduction,
  SLINGS,
} from "./reductions";
export { readLoad } from "../reading/load";
export type { Load } from "../reading/load";
export type { LoadUnit } from "../reading/load";

/** In one of the legs, or above them, where the whole load hangs. */
export type HookupPlace = "leg" | "top";
/** The same in words, on the pane and on the sheet. */
export const PLACES: Readonly<Record<HookupPlace, string>> = { leg: "in a leg", top: "on top" };
export interface HookupItem {
  readonly item: ItemResult;
  readonly place: HookupPlace;
}
export interface HookupRequest {
  readonly items: readonly HookupItem[];
  /** Weight of the load with everything that hangs below the gear, with its unit. */
  readonly load: CellValue;
  /** Slings: 1 to 4. In a basket hitch each of them has two parts. */
  readonly legs: CellValue;
  /** May be blank for one leg that hangs straight. */
  readonly angle: CellValue;
  readonly angleFrom: CellValue;
  readonly hitch: CellValue;
  readonly chokeAngle?: CellValue;
  readonly temperature?: CellValue;
  readonly temperatureUnit?: CellValue;
  readonly grade?: CellValue;
  /** Side load angle in degrees by item id. */
  readonly sideAngles?: Readonly<Record<string, CellValue>>;
  readonly asOf: number;
  /** Only two legs of three or four are trusted to carry. */
  readonly strict?: boolean;
  /** Unit of bare rated loads and the heading they stand under, where the log's heading names them. */
  readonly ratedUnit?: LoadUnit | null;
  readonly ratedHeading?: string;
}
export type HookupDecision = "CARRIES" | "OVERLOADED" | "REFUSED";
export interface HookupLine {
  readonly id: string;
  readonly row: number;
  readonly gear: string;
  readonly place: HookupPlace;
  /** Share of the load that the item sees, and the same in words; null when the hook-up itself was refused. */
  readonly carries: { readonly share: number; readonly words: string } | null;
  readonly needed: Load | null;
  readonly rated: Load | null;
  /** "tag: 3.25 t in column Rated load", then each reduction with its table. */
  readonly ratedFrom: string;
  /** What is left above the need, negative when overloaded. */
  readonly margin: Load | null;
  /** Share of the rating that is used: 1 is exactly at the rated load. */
  readonly used: number | null;
  readonly decision: HookupDecision;
  /** Nothing speaks against the item, and the lift is not there yet, or not in order: there is nothing to judge it by. */
  readonly waits: boolean;
  /** The line in one sentence, or why it was refused; "" while it waits. */
  readonly sentence: string;
}
export interface HookupResult {
  /** True when every item was judged and every one carries. */
  readonly ok: boolean;
  readonly refusals: readonly string[];
  /** What of the lift is not typed yet, in one sentence that is among the refusals as well; "" when all is there. */
  readonly awaited: string;
  readonly cautions: readonly string[];
  readonly load: Load | null;
  /** Tension in one leg, or in one part of a basket. */
  readonly perLeg: Load | null;
  /** How the tension comes about, in words. */
  readonly perLegFrom: string;
  readonly lines: readonly HookupLine[];
  /** Id of the item that uses most of its rating. */
  readonly weakest: string | null;
  /** Share of its rating that the weakest item has left; negative when overloaded. */
  readonly margin: number | null;
}
export const TAG_FIRST =
  "The tag and the maker's instructions come first: these figures are worked out from the rated loads in your log and from published tables.";
export const WEIGH_ALL = "Count the hooks, beams and slings that hang below each item into the load.";
/** Why fewer may be counted than the sling tables count. */
export const TWO_LEGS_ADVISED =
  "A Navy handbook (bridle hitch) strongly recommends the rating of a two-leg sling for three and four legs too.";
const good = <T>(value: T): Answer<T> => ({ ok: true, value });
const none = (why: string): Answer<never> => ({ ok: false, kind: "missing", why });
/** The lift itself, without the gear: load, tension of a leg, hitch. */
interface Lift {
  readonly load: Load;
  readonly perLeg: Exact;
  readonly perLegFrom: string;
  readonly legShare: number;
  readonly hitch: Hitch;
}
/** Judges one hook-up. An item that uses exactly its rated load carries. */
export function judgeHookup(request: HookupRequest): HookupResult {
  const awaited = awaitedOf(request);
  const lift = awaited === "" ? readLift(request) : none(awaited);
  const lines = request.items.map((one) => lineOf(one, lift.ok ? lift.value : null, request));
  const refusals = [
    ...(request.items.length === 0
      ? ["Pick the gear of the hook-up first: each sling, shackle, hook and link that the load hangs on."]
      : []),
    ...(lift.ok ? countRefusals(request, lift.value.hitch) : [lift.why]),
    ...new Set(lines.flatMap((line) => (line.decision === "REFUSED" && !line.waits ? [line.sentence] : []))),
  ];
  const weakest = lines.reduce<HookupLine | null>(
    (worst, line) => (line.used !== null && (worst?.used ?? -1) < line.used ? line : worst),
    null,
  );
  return {
    ok: refusals.length === 0 && lines.every((line) => line.decision === "CARRIES"),
    refusals,
    awaited,
    cautions: [TAG_FIRST, WEIGH_ALL, ...cautionsFor(request, lift.ok ? lift.value.hitch : null)],
    load: lift.ok ? lift.value.load : null,
    perLeg: lift.ok ? fromKg(lift.value.perLeg, lift.value.load.unit) : null,
    perLegFrom: lift.ok ? lift.value.perLegFrom : "",
    lines,
    weakest: weakest?.id ?? null,
    margin: weakest?.used == null ? null : 1 - weakest.used,
  };
}
/** What nothing stands for yet, all of it at once, so that nobody is asked for one after the other. */
function awaitedOf({ load, hitch, legs, angle, chokeAngle }: HookupRequest): string {
  const said = readText(hitch).toLowerCase();
  const angled = !isBlank(legs) && !isBlank(hitch) && (readText(legs) !== "1" || said.startsWith("basket"));
  const open = [
    isBlank(load) ? "the load with its unit, such as 5 t or 9,800 lb" : "",
    isBlank(hitch) ? "the hitch" : "",
    isBlank(legs) ? "the number of legs" : "",
    angled && isBlank(angle) ? "the angle of the legs" : "",
    said.startsWith("choker") && isBlank(chokeAngle) ? "the choke angle" : "",
  ].filter((one) => one !== "");
  return open.length === 0 ? "" : `Still to give: ${open.join("; ")}.`;
}
function readLift(request: HookupRequest): Answer<Lift> {
  const read = readLoad(request.load);
  if (read.kind === "missing") return none(`The load "${read.text}" is none; type its weight with the unit, such as 5 t or 9,800 lb.`);
  if (read.kind === "refused") return none(`The load "${read.text}" cannot be used: ${read.why}.`);
  const hitch = HITCHES.find(
    (one) =>
      one ===
      readText(request.hitch)
        .toLowerCase()
        .replace(/ hitch$/, ""),
  );
  if (hitch === undefined) return none(`"${readText(request.hitch)}" is no hitch; choose vertical, choker or basket.`);
  const strict = request.strict === true;
  // How many times the tension of one part the hitch holds: carrying parts times the sine of their angle.
  const holds = ratedAt(1, hitch === "basket" ? "basket" : "vertical", request.legs, request.angle, request.angleFrom, "", strict);
  if (!holds.ok) return holds;
  // The choke angle is asked for once; what it leaves of each sling depends on its kind.
  const choke = hitchReductions("", hitch, request.chokeAngle);
  if (!choke.ok) return choke;
  const parts = partsOf(request, hitch);
  const carrying = carryingLegs(parts, strict);
  const part = hitch === "basket" ? "part" : "leg";
  const angle = isBlank(request.angle)
    ? "hanging straight"
    : `at ${plainText(request.angle)} degrees ${readText(request.angleFrom).toLowerCase() === "included" ? "between the legs" : `from ${readText(request.angleFrom).toLowerCase() || "horizontal"}`}`;
  const counted =
    carrying === parts
      ? `${String(parts)} ${part}${parts === 1 ? "" : "s"}`
      : `${String(parts)} ${part}s, of which ${String(carrying)} are counted as carrying`;
  return good({
    load: read.value,
    hitch,
    perLeg: inKg(read.value).div(fromCell(holds.value)),
    legShare: 1 / holds.value,
    perLegFrom: `${showLoad(read.value, "up")} on ${counted}, ${angle}`,
  });
}
const partsOf = (request: HookupRequest, hitch: Hitch): number => Number(readText(request.legs)) * (hitch === "basket" ? 2 : 1);
/** Slings that are picked must be as many as the legs, and a choker or basket needs the sling that stands in it; each item has an id of its own. */
function countRefusals(request: HookupRequest, hitch: Hitch): readonly string[] {
  const slings = request.items.filter(({ item, place }) => place === "leg" && item.gear !== null && SLINGS.includes(item.gear)).length;
  const legs = Number(readText(request.legs));
  const seen = new Set<string>();
  const doubled = new Set<string>();
  for (const { item } of request.items) {
    const id = item.id.toLowerCase();
    if (id !== "" && seen.has(id)) doubled.add(item.id);
    seen.add(id);
  }
  return [
    ...(slings === 0 || slings === legs
      ? []
      : [
          `The lift has ${String(legs)} ${legs === 1 ? "leg" : "legs"} and ${String(slings)} ${slings === 1 ? "sling is" : "slings are"} picked for them; pick one sling for each leg.`,
        ]),
    ...(slings === 0 && hitch !== "vertical"
      ? [`In a ${hitch} hitch the sling that goes around the load is judged, and no sling stands in a leg; pick it and put it in a leg.`]
      : []),
    ...[...doubled].map((id) => `The id "${id}" is picked more than once; each item of a hook-up has an id of its own.`),
  ];
}
function cautionsFor(request: HookupRequest, hitch: Hitch | null): readonly string[] {
  const picked = request.items.map(({ item }) => item);
  const slings = request.items.some(({ item, place }) => place === "leg" && item.gear !== null && SLINGS.includes(item.gear));
  return [
    ...(picked.length > 0 && !slings ? ["No sling is picked for the legs; only the gear that is picked was held against the load."] : []),
    ...(request.strict !== true && hitch !== null && partsOf(request, hitch) > 2
      ? [`Three ${hitch === "basket" ? "parts" : "legs"} are counted as carrying. ${TWO_LEGS_ADVISED}`]
      : []),
    ...(hitch === "basket"
      ? ["A rope or sling bent around a small load in a basket hitch loses strength; that bend is not counted here."]
      : []),
    ...(picked.some((item) => item.gear === "eyebolt")
      ? ["The side load table holds for shoulder eyebolts only; a plain eyebolt is pulled straight."]
      : []),
  ];
}
const nameOf = (item: ItemResult): string =>
  `${item.id === "" ? `The item in row ${String(item.row + 1)} of the log` : item.id}${item.gear === null ? "" : ` (${item.gear})`}`;
/** Why an item may not be used at all, whatever it could carry. */
function outBecause(item: ItemResult, asOf: number): string | null {
  if (item.id === "") return `${nameOf(item)} has no id; give it one, so that it can be told apart.`;
  if (item.tagged) return `${nameOf(item)} is tagged out and stays out of use until its release by a qualified person is recorded.`;
  const { decision, deciding, reason } = item.verdict;
  if (decision === "DRESS")
    return `${nameOf(item)} is to be dressed and measured again before it is used: ${deciding === null ? reason : sentenceOf(deciding)}`;
  if (outOfUse(decision)) return `${nameOf(item)} is out of use, ${decision}: ${deciding === null ? reason : sentenceOf(deciding)}`;
  const due = dueState(item.nextDue, asOf);
  // Due on the day itself is due: a day later it would be overdue.
  if (due !== "OVERDUE" && dueState(item.nextDue, asOf + 1) === "OVERDUE")
    return `${nameOf(item)} is due for inspection today; inspect it before it is used.`;
  if (due === "OVERDUE") return `${nameOf(item)} is OVERDUE for inspection; inspect it before it is used.`;
  if (due === "NO DATE")
    return `${nameOf(item)} has no date for its next inspection (${item.dueNote === "" ? "none is recorded" : item.dueNote}); fill that in the log first.`;
  return null;
}
/** What pulls on an item. One leg that does not hang straight pulls with more than the load, on what holds it above as well. Hardware in a leg of a basket is taken to hold both eyes of its sling, in line with each other. */
function seenBy(item: ItemResult, place: HookupPlace, lift: Lift): { readonly kg: Exact; readonly share: number; readonly words: string } {
  if (place === "top" && lift.legShare <= 1) return { kg: inKg(lift.load), share: 1, words: "the whole load" };
  if (lift.hitch !== "basket") return { kg: lift.perLeg, share: lift.legShare, words: "the tension of one leg" };
  if (item.gear !== null && SLINGS.includes(item.gear)) return { kg: lift.perLeg, share: lift.legShare, words: "one part of the basket" };
  return { kg: lift.perLeg.mul(2), share: lift.legShare * 2, words: "both parts of a basket" };
}
function lineOf({ item, place }: HookupItem, lift: Lift | null, request: HookupRequest): HookupLine {
  const bare = { id: item.id, row: item.row, gear: item.gear ?? item.gearText, place };
  const seen = lift === null ? null : seenBy(item, place, lift);
  const needed = lift === null || seen === null ? null : fromKg(seen.kg, lift.load.unit);
  const carries = seen === null ? null : { share: seen.share, words: seen.words };
  const refuse = (sentence: string, ratedFrom = ""): HookupLine => ({
    ...bare,
    carries,
    needed,
    rated: null,
    ratedFrom,
    margin: null,
    used: null,
    decision: "REFUSED",
    waits: false,
    sentence,
  });

  const out = outBecause(item, request.asOf);
  if (out !== null) return refuse(out);
  const foreign = notModelled(item);
  if (foreign !== null || item.gear === null) return refuse(`${nameOf(item)} cannot be judged: ${foreign ?? ""}.`);
  const rating = ratingOf(item, request);
  if (!rating.ok) return refuse(rating.why);
  if (lift === null || needed === null || carries === null) return { ...refuse("", rating.value.from), waits: true };
  const reductions = reductionsOf(item, item.gear, place, lift, request);
  if (!reductions.ok) return refuse(`${nameOf(item)} cannot be judged: ${reductions.why}`, rating.value.from);

  const ratedKg = lowered(inKg(rating.value.load), reductions.value);
  const neededKg = inKg(needed);
  const met = judge(neededKg, ratedKg, "above");
  const rated = fromKg(ratedKg, lift.load.unit);
  const decision = met.beyond ? "OVERLOADED" : "CARRIES";
  const margin = fromKg(ratedKg.sub(neededKg), lift.load.unit);
  const ratedFrom = [rating.value.from, ...reductions.value.map((r) => r.words)].join("; ");
  return {
    ...bare,
    carries,
    needed,
    rated,
    ratedFrom,
    margin,
    used: toNumber(neededKg.div(ratedKg)),
    decision,
    waits: false,
    sentence: `${nameOf(item)} sees ${carries.words}, ${showLoad(needed, "up")}, and ${decision === "CARRIES" ? "carries" : "carries only"} ${showLoad(rated, "down")} [${ratedFrom}].`,
  };
}
/** The rated load of an item's tag; for a sling, of one leg hanging straight. */
function ratingOf(item: ItemResult, request: HookupRequest): Answer<{ readonly load: Load; readonly from: string }> {
  const heading = request.ratedHeading ?? field("ratedLoad").heading;
  if (otherRating(heading))
    return none(
      `Rated loads stand under "${heading}": the lift needs the working load limit of one leg hanging straight; name that column in the Log place.`,
    );
  const read = readLoad(item.cells.get("ratedLoad"), request.ratedUnit ?? null);
  if (read.kind === "missing")
    return none(`${nameOf(item)} has no rated load; fill "${heading}" from its tag, such as 3.25 t. Gear without a rating does not lift.`);
  if (read.kind === "refused") return none(`${nameOf(item)}: the rated load "${read.text}" in "${heading}" cannot be used: ${read.why}.`);
  const sling = item.gear !== null && SLINGS.includes(item.gear);
  return good({ load: read.value, from: `tag: ${read.text} in column ${heading}${sling ? ", read as one leg hanging straight" : ""}` });
}
function reductionsOf(
  item: ItemResult,
  gear: string,
  place: HookupPlace,
  lift: Lift,
  request: HookupRequest,
): Answer<readonly Reduction[]> {
  const hitch = place === "leg" && SLINGS.includes(gear) ? hitchReductions(gear, lift.hitch, request.chokeAngle) : good([]);
  if (!hitch.ok) return hitch;
  const heat = heatReduction(item, gear, request.temperature, request.temperatureUnit, request.grade);
  if (!heat.ok) return heat;
  const side = sideReduction(item, gear, request.sideAngles?.[item.id]);
  return side.ok ? good([...hitch.value, ...heat.value, ...side.value]) : side;
}
/** A share left, as whole percent; rounded down. */
export function marginPercent(margin: number): string {
  return `${String(Math.floor(margin * 100 + 1e-9))} %`;
}
