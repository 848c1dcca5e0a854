/** A few signs that two people who act at once do not share. */
export function code(): string {
  return [...crypto.getRandomValues(new Uint8Array(3))].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
