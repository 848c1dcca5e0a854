/** Cases of a hook that is recorded in its sling's row: section and load pin of 20 mm as new. */
import { PRACTICE, type LimitCase } from "../helpers";

export function hookOnSling(kind: string, list: string): readonly LimitCase[] {
  const worn = (
    criterion: string,
    source: string,
    cells: readonly ["hookNew" | "pinNew", "hookNow" | "pinNow"],
    edge: number,
    out: "WATCH" | "REMOVE",
  ): LimitCase => {
    const as = (now: number): Readonly<Record<string, string>> => ({ [cells[0]]: "20 mm", [cells[1]]: `${String(now)} mm` });
    return {
      criterion: `${kind}.${criterion}`,
      source,
      inside: [as(19.5), "KEEP"],
      edge: [as(edge), out],
      past: [as(Number((edge - 0.01).toFixed(2))), "REMOVE"],
    };
  };
  return [
    // More than 10 % is below 18 mm; from 5 % is at 19 mm, the saddle being highly stressed; from 10 % at 18 mm.
    worn("hook-section.standard", list, ["hookNew", "hookNow"], 18, "WATCH"),
    worn("hook-section.practice", PRACTICE, ["hookNew", "hookNow"], 19, "REMOVE"),
    worn("hook-pin.standard", list, ["pinNew", "pinNow"], 18, "WATCH"),
    worn("hook-pin.practice", PRACTICE, ["pinNew", "pinNow"], 18, "REMOVE"),
  ];
}
