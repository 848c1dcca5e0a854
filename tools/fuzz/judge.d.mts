export type Judge = (
  headings: readonly unknown[],
  rows: readonly (readonly unknown[])[],
) => { readonly decision: string; readonly reason: string }[] | { readonly fault: string };
export function loadJudge(file: string): Judge;
