import type { Judge } from "./judge.d.mts";

export interface Report {
  readonly seed: number;
  readonly judged: number;
  readonly logs: number;
  readonly kinds: Readonly<Record<string, number>>;
  readonly alarms: Readonly<Record<"clean" | "described" | "turned", readonly [alarms: number, rows: number]>>;
}
export function run(how: {
  readonly judge: Judge;
  readonly seed: number;
  readonly judgements?: number;
  readonly until?: number;
  readonly every?: (report: Report) => void;
  readonly most?: number;
}): Report;
