/** Seeded numbers: the same seed gives the same yard each time (mulberry32, public domain). */
export function dice(seed) {
  let state = seed >>> 0;
  const roll = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    /** From low to high, both ends possible within rounding. */
    between: (low, high, decimals = 0) => Number((low + roll() * (high - low)).toFixed(decimals)),
    pick: (list) => list[Math.floor(roll() * list.length)],
    chance: (share) => roll() < share,
  };
}
