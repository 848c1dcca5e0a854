/** Which way yes and no go under a heading: by the whole of what it says, never by a single word. */
import { field, type FieldId } from "../columns";
import { normal, type Spoken, spoken } from "./spoken";
import { RESULTS, STATES } from "./vocabulary";

/**
 * "straight": yes and no mean what the field takes. "turned": they mean the opposite, as under "Latch missing" or "Free of
 * cracks". "open": they settle nothing, as under "Crack test" or "Latch ok / missing".
 */
export type Polarity = "straight" | "turned" | "open";
const has = (words: readonly string[], said: readonly string[]): boolean => said.some((word) => words.includes(word));
const DENY: readonly string[] = STATES.deny.words;
const DENY_FAULT: readonly string[] = STATES.denyFault.words;
const BAD: readonly string[] = STATES.bad.words;
const GOOD: readonly string[] = STATES.good.words;
const UNCLEAR: readonly string[] = STATES.unclear.words;
const AFFIRM: readonly string[] = STATES.affirm.words;
const LOOK: readonly string[] = STATES.look.words;
/** Good words that say as well that a fault is there, or that a part is sound by its own name. */
const GOOD_OF_FAULT = new Set([...GOOD].filter((word) => !["complete", "place", "fully", "fit", "closed"].includes(word)));
export function polarity(heading: string, id: FieldId): Polarity {
  return polarityOf(spoken(heading), id);
}
export function polarityOf({ words, offered }: Spoken, id: FieldId): Polarity {
  const { type } = field(id);
  if (type !== "sound" && type !== "fault") return "straight";
  const denials = words.filter((word) => DENY.includes(word)).length;
  if (type === "sound") {
    if ((has(LOOK, words) && !has(GOOD, words) && !has(BAD, words)) || has(UNCLEAR, words)) return "open";
    const bad = has(BAD, words);
    const good = has(
      GOOD.filter((word) => word !== "fully" && word !== "place"),
      words,
    );
    if (denials > 1) return "open";
    // "Latch ok / missing" asks for one of the two; "Not damaged, works" says one thing.
    if (bad && good && denials === 0) return "open";
    return (denials === 1) === bad ? answersFit(offered, "straight") : answersFit(offered, "turned");
  }
  if (has(LOOK, words) || has(UNCLEAR, words)) return "open";
  const denied = denials + (has(DENY_FAULT, words) ? 1 : 0);
  const good = words.some((word) => GOOD_OF_FAULT.has(word));
  if (denied > 1 || (good && has(AFFIRM, words) && denied === 0)) return "open";
  return (denied === 1) === good ? answersFit(offered, "straight") : answersFit(offered, "turned");
}
const YES_NO = /^(y|n|yes|no|true|false)$/;
/** Beside answers of its own, such as OK/crack, a yes is none of them; none/found goes with yes and no as it stands. */
function answersFit(offered: Spoken["offered"], way: Polarity): Polarity {
  if (offered === null || offered.every((word) => YES_NO.test(word))) return way;
  return offered.every((word) => /^(none|nil|no|n|found|yes|y|present|absent|seen)$/.test(word)) ? way : "open";
}
/** Which answers under a heading of results speak for the item's use. */
export interface ResultHeading {
  readonly yes: "good" | "rejected" | "damaged" | "open";
  readonly no: "good" | "rejected" | "not in use" | "open";
}
const list = (of: keyof typeof RESULTS): readonly string[] => RESULTS[of].words;
/** How yes and no are meant under a heading of results. */
export function resultHeading({ words }: Pick<Spoken, "words">): ResultHeading {
  const rejected = has(list("rejected"), words);
  const damaged = has(list("damaged"), words);
  const fit = has(
    list("fit").filter((word) => word !== "good" || !words.includes("condition")),
    words,
  );
  const inUse = has(list("inUse"), words);
  const against = rejected || damaged;
  const denied = words.filter((word) => DENY.includes(word) || word === "nil" || word === "free").length;
  if (denied > 1 || against === (fit || inUse)) return { yes: "open", no: "open" };
  if (against)
    return denied === 1 ? { yes: "good", no: rejected ? "rejected" : "open" } : { yes: rejected ? "rejected" : "damaged", no: "good" };
  if (denied === 1) return { yes: fit ? "rejected" : "damaged", no: "good" };
  return { yes: "good", no: fit ? "rejected" : "not in use" };
}
/** Whether every word of a heading is one of the result's. */
export function isResultWord(word: string): boolean {
  return RESULT_WORDS.has(word);
}
const RESULT_WORDS = new Set(
  [...Object.values(RESULTS).flatMap(({ words }): readonly string[] => words), ...DENY, "nil"].map(normal).concat("deny"),
);
