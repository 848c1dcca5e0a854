/** Seeded draws for the generator: the same seed gives the same logs. */
import { dice } from "../samples/dice.mjs";

/** @param {number} seed */
export function drawer(seed) {
  const { between, pick, chance } = dice(seed);
  const whole = (low, high) => Math.min(high, Math.floor(between(low, high + 1, 6)));
  return {
    between,
    pick,
    chance,
    /** A whole number from low to high, both included. */
    whole,
    shuffle(list) {
      const mixed = [...list];
      for (let at = mixed.length - 1; at > 0; at--) {
        const other = whole(0, at);
        [mixed[at], mixed[other]] = [mixed[other], mixed[at]];
      }
      return mixed;
    },
    /** One of `[weight, value]` pairs. */
    weighted(pairs) {
      let left = between(
        0,
        pairs.reduce((sum, [weight]) => sum + weight, 0),
        6,
      );
      for (const [weight, value] of pairs) if ((left -= weight) < 0) return value;
      return pairs.at(-1)[1];
    },
  };
}
