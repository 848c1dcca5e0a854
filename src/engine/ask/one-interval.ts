import { intervalOf } from "../due/intervals";
import { readBasis } from "../house/rules-in-force";
import { matchKind } from "../names/gear-name";
import { type Answer, good, none, unreadable } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { readText } from "../reading/text";
import { inForce } from "../rules/rule-sets";

/** Months between inspections: the strictest in force for the kind and its service, of any use that its name does not rule out. */
export function monthsBetween(gear: CellValue, service: CellValue, basis: unknown): Answer<number> {
  const gearText = readText(gear);
  const match = matchKind(gearText);
  if (!match.ok) return none(`The gear kind is not known: ${match.why}.`);
  const choice = readBasis(basis);
  if (!choice.ok) return unreadable(choice.why);
  const interval = intervalOf({
    kind: match.kind.id,
    gearText,
    usedOn: "",
    service: readText(service),
    bases: inForce(choice.ids),
  });
  return "why" in interval ? none(`No interval: ${interval.why}.`) : good(interval.months);
}
