/**
 * Seals of the history: each row's covers the row and the seal before it in its round, the first row of a round covers the
 * last seals of the rounds before. So no row can be changed, taken out or put in without another seal not fitting.
 */
import { byRound, HISTORY_HEADINGS, type HistoryRow, ROUND_HEAD } from "./history";

/** SHA-256 of a text, in hexadecimal. The library is the caller's: the engine brings none. */
export type Hash = (text: string) => string;
/** What the workbook keeps of a round beside the table: how many rows it has, and the seal of the last. */
export interface KeptRound {
  readonly round: string;
  readonly rows: number;
  readonly last: string;
}
/** What is sealed of a row: its cells as one text that no two rows share. */
const sealed = (row: HistoryRow): string => JSON.stringify(HISTORY_HEADINGS.filter((h) => h !== "Seal").map((h) => row[h]));
export const sealOf = (row: HistoryRow, before: string, hash: Hash): string => hash(`${before}\n${sealed(row)}`);
/** Rows of one round with their seals, going on from the seal before. */
export function sealRows(rows: readonly HistoryRow[], before: string, hash: Hash): readonly HistoryRow[] {
  let last = before;
  return rows.map((row) => {
    last = sealOf(row, last, hash);
    return { ...row, Seal: last };
  });
}
/** Seals that a new round joins: the last ones of rounds that none has joined, as far as table or workbook know them. */
export function openSeals(rows: readonly HistoryRow[], kept: readonly KeptRound[], beside: string): readonly string[] {
  const joined = new Set(
    rows.filter(({ Check, Round }) => Check === ROUND_HEAD && Round !== beside).flatMap(({ Joins }) => Joins.split(" ")),
  );
  const last = new Set<string>();
  for (const [round, own] of byRound(rows)) if (round !== beside) last.add(own.at(-1)?.Seal ?? "");
  for (const one of kept) if (one.round !== beside) last.add(one.last);
  return [...last].filter((seal) => seal !== "" && !joined.has(seal)).sort();
}
/** What is wrong with the history, or, as "fork" and "unknown round", what is only to be known. */
export interface SealFinding {
  readonly what: "changed" | "gone" | "put in" | "moved" | "end gone" | "round gone" | "fork" | "unknown round";
  readonly round: string;
  /** Numbers of the rows concerned. */
  readonly rows: readonly string[];
  readonly sentence: string;
}
export interface SealCheck {
  readonly rows: number;
  readonly rounds: number;
  readonly findings: readonly SealFinding[];
  /** Last seals that no round has joined: to be printed or sent away. */
  readonly last: readonly string[];
}
export const isWrong = ({ what }: SealFinding): boolean => what !== "fork" && what !== "unknown round";
export function checkSeals(rows: readonly HistoryRow[], kept: readonly KeptRound[], hash: Hash): SealCheck {
  const rounds = byRound(rows);
  const findings: SealFinding[] = [...apart(rows)];
  const above = new Set<string>();
  for (const [round, own] of rounds) findings.push(...checkRound(round, own, kept.find((k) => k.round === round) ?? null, hash));
  for (const { round, rows: count } of kept)
    if (!rounds.has(round))
      findings.push(found("round gone", round, [], `Round ${round} is gone: its ${String(count)} rows are not in the table.`));
  for (const { Check, Round, Joins, Seal } of rows) {
    above.add(Seal);
    if (Check !== ROUND_HEAD) continue;
    const [lost] = Joins.split(" ").filter((seal) => seal !== "" && !above.has(seal));
    if (lost !== undefined)
      findings.push(
        found(
          "gone",
          Round,
          [],
          `A row that round ${Round} was joined to is gone, moved or changed: its seal began with ${lost.slice(0, 12)}.`,
        ),
      );
  }
  findings.push(...forks(rows));
  return { rows: rows.length, rounds: rounds.size, findings, last: openSeals(rows, kept, "") };
}
const found = (what: SealFinding["what"], round: string, rows: readonly string[], sentence: string): SealFinding => ({
  what,
  round,
  rows,
  sentence,
});
const few = (numbers: readonly string[]): string =>
  numbers.length > 5 ? `${numbers.slice(0, 5).join(", ")} and ${String(numbers.length - 5)} more` : numbers.join(", ");
/** Rows of a round are posted together and stay together. */
function apart(rows: readonly HistoryRow[]): readonly SealFinding[] {
  const closed = new Set<string>();
  const moved = new Map<string, string[]>();
  rows.forEach((row, at) => {
    const before = rows[at - 1]?.Round;
    if (before === row.Round) return;
    if (before !== undefined) closed.add(before);
    if (closed.has(row.Round)) moved.set(row.Round, [...(moved.get(row.Round) ?? []), row.Number]);
  });
  return [...moved].map(([round, numbers]) =>
    found("moved", round, numbers, `Rows of round ${round} do not stand together: look at ${few(numbers)}.`),
  );
}
/** One round: its rows bear numbers without a gap, in order, each once, and each seal fits. */
function checkRound(round: string, rows: readonly HistoryRow[], kept: KeptRound | null, hash: Hash): readonly SealFinding[] {
  const findings: SealFinding[] = [];
  const numbers = rows.map(({ Number: text }) => Number(text));
  const moved = rows.filter((_, at) => at > 0 && (numbers[at] ?? NaN) < (numbers[at - 1] ?? NaN)).map((row) => row.Number);
  if (moved.length > 0) findings.push(found("moved", round, moved, `Rows of round ${round} are not in order: look at ${few(moved)}.`));
  const sorted = moved.length === 0 ? rows : [...rows].sort((a, b) => Number(a.Number) - Number(b.Number));
  let before = "";
  let last = NaN;
  const [changed, twice, gaps]: [string[], string[], string[]] = [[], [], []];
  for (const [at, row] of sorted.entries()) {
    const number = Number(row.Number);
    const isHead = at === 0;
    if (number === last) {
      twice.push(row.Number);
      continue;
    }
    const gap = !isHead && number !== last + 1;
    if (gap) gaps.push(number === last + 2 ? String(last + 1) : `${String(last + 1)} to ${String(number - 1)}`);
    if (isHead && row.Check !== ROUND_HEAD) gaps.push(`the head before ${row.Number}`);
    // Behind a gap the seal before is not known, so the row itself can't be told to be as it was.
    else if (!gap && sealOf(row, before, hash) !== row.Seal) changed.push(row.Number);
    before = row.Seal;
    last = number;
  }
  if (twice.length > 0)
    findings.push(found("put in", round, twice, `Rows of round ${round} stand there twice or were put in: ${few(twice)}.`));
  if (gaps.length > 0) findings.push(found("gone", round, gaps, `Rows of round ${round} are gone: ${few(gaps)}.`));
  if (changed.length > 0)
    findings.push(
      found("changed", round, changed, `Rows of round ${round} were changed or put in since they were sealed: ${few(changed)}.`),
    );
  if (kept === null)
    findings.push(
      found(
        "unknown round",
        round,
        [],
        `The workbook does not know round ${round}: it was posted in a copy, or the posting was broken off. Post it again.`,
      ),
    );
  else if (sorted.length < kept.rows || (sorted.length === kept.rows && before !== kept.last))
    findings.push(
      found(
        "end gone",
        round,
        [],
        `Round ${round} ended with ${String(kept.rows)} rows and seal ${kept.last.slice(0, 12)}; the table does not.`,
      ),
    );
  else if (sorted.length > kept.rows)
    findings.push(
      found(
        "put in",
        round,
        [],
        `Round ${round} has more rows than the ${String(kept.rows)} that the workbook noted: rows were put in, or a posting was broken off; then post it again.`,
      ),
    );
  return findings;
}
/** Rounds that were posted at once: each joins what stood before, and neither the other. */
function forks(rows: readonly HistoryRow[]): readonly SealFinding[] {
  const heads = rows.filter(({ Check }) => Check === ROUND_HEAD);
  const bySeal = new Map<string, string>();
  const findings: SealFinding[] = [];
  for (const { Round, Joins } of heads) {
    const seals = Joins.split(" ").filter((seal) => seal !== "");
    const other = seals.map((seal) => bySeal.get(seal)).find((round) => round !== undefined);
    if (other !== undefined)
      findings.push(found("fork", Round, [], `Rounds ${other} and ${Round} were posted at the same time; both stand.`));
    for (const seal of seals) bySeal.set(seal, Round);
  }
  return findings;
}
