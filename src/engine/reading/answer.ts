import type { Read } from "./read";

/** A figure, or why there is none: "missing" (a reading or a criterion is not there) or "unreadable". */
export type Answer<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly kind: "missing" | "unreadable"; readonly why: string };
export const good = <T>(value: T): Answer<T> => ({ ok: true, value });
export const none = (why: string): Answer<never> => ({ ok: false, kind: "missing", why });
export const unreadable = (why: string): Answer<never> => ({ ok: false, kind: "unreadable", why });
export function refusal(name: string, read: Exclude<Read<unknown>, { kind: "value" }>): Answer<never> {
  return read.kind === "missing" ? none(`The ${name} is missing.`) : unreadable(`The ${name} "${read.text}" cannot be used: ${read.why}.`);
}
