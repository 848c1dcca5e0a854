/** Answers a load: the members asked for, level by level. */
import { readMember } from "./members";
import { type Found, HostCollection, HostObject, NULL_OBJECT } from "./object";
import type { QueryInfo } from "./wire";

type Answered = Record<string, unknown>;
/** What the library needs to address an object in later batches. */
export function describe(object: Found<HostObject>): Answered | null {
  if (object === NULL_OBJECT) return null;
  const answer: Answered = {};
  if ("Id" in object) answer["Id"] = object.Id;
  if (object.reference !== null) answer["_ReferenceId"] = object.reference;
  return answer;
}
export function project(object: Found<HostObject>, query: QueryInfo): Answered | null {
  const select = query.Select ?? [];
  // Expanding alone still loads the object's own members.
  const wanted = [...(select.length > 0 ? select : ["*"]), ...(query.Expand ?? [])];
  return answer(object, wanted, query.Top, query.Skip);
}
function answer(object: Found<HostObject>, wanted: readonly string[], top?: number, skip?: number): Answered | null {
  if (object === NULL_OBJECT) return null;
  return object instanceof HostCollection
    ? answerCollection(object as HostCollection<HostObject>, wanted, top, skip)
    : answerObject(object, wanted);
}
function answerCollection(collection: HostCollection<HostObject>, wanted: readonly string[], top = 0, skip = 0): Answered {
  const all = collection.list();
  const chosen = all.slice(skip, top > 0 ? skip + top : undefined);
  const found: Answered = { ...describe(collection) };
  if (wanted.some((path) => path.toLowerCase() === "count")) found["Count"] = all.length;
  const ofItems = wanted
    .filter((path) => path.toLowerCase() !== "count")
    .map((path) => path.replace(/^items\/?/i, ""))
    .map((path) => (path === "" ? "*" : path));
  if (ofItems.length > 0) found["_Items"] = chosen.map((item) => answerObject(item, ofItems));
  return found;
}
function answerObject(object: HostObject, wanted: readonly string[]): Answered {
  const found: Answered = { ...describe(object) };
  const deeper = new Map<string, string[]>();
  for (const path of wanted) {
    const [head = "", ...tail] = path.split("/");
    if (head === "*" || head === "$all") for (const name of object.scalars) found[name] = readMember(object, name);
    else deeper.set(head, [...(deeper.get(head) ?? []), ...(tail.length > 0 ? [tail.join("/")] : [])]);
  }
  for (const [head, tails] of deeper) {
    const name = head.charAt(0).toUpperCase() + head.slice(1);
    const value = readMember(object, name);
    if (value instanceof HostObject) found[name] = answer(value, tails.length > 0 ? tails : ["*"]);
    else found[name] = value === NULL_OBJECT ? null : value;
  }
  return found;
}
