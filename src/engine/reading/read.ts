/** A reading; or nothing was measured; or something stands there that is no reading. */
export type Read<T> =
  | { readonly kind: "value"; readonly value: T; readonly text: string; readonly note?: string }
  | { readonly kind: "missing"; readonly text: string }
  | { readonly kind: "refused"; readonly text: string; readonly why: string };
export const missing = (text = ""): Read<never> => ({ kind: "missing", text });
export const refused = (text: string, why: string): Read<never> => ({ kind: "refused", text, why });
