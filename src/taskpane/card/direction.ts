/** In which direction a section was read, and by which limit: two lines that differ only in these would look alike. Pure. */
import type { Finding } from "../../engine/check/finding";
import { GEAR } from "../../engine/gear/index";
import type { ItemVerdict } from "../../engine/item/verdict";

/** Findings on the section at right angles; where both directions read the same, none has to be told apart. */
export function acrossIn({ findings }: Pick<ItemVerdict, "findings">): ReadonlySet<Finding> {
  const along = findings.filter((finding) => finding.direction === undefined);
  return new Set(
    findings.filter(
      (finding) =>
        finding.direction === "across" &&
        !along.some((f) => f.check === finding.check && f.measured === finding.measured && f.original === finding.original),
    ),
  );
}
/** The limit in words: "worn in two directions, 5 % of as-new". */
export function limitWords({ criterion, limit }: Finding, gear: string | null): string {
  const record = GEAR.find((kind) => kind.id === gear)?.criteria.find(({ id }) => id === criterion);
  return [record?.twoWays === true ? "worn in two directions" : "", limit ?? ""].filter((words) => words !== "").join(", ");
}
