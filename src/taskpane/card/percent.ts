/** The share of an allowance in words, cut down so that nothing reads 100 % before it is there. */
export function percentUsed(share: number): string {
  if (!Number.isFinite(share)) return "nothing is allowed";
  return `${String(Math.floor(share * 100 + 1e-9))} % used`;
}
