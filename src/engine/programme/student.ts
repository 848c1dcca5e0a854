/**
 * Student's t for whole degrees of freedom, by the finite series that such distributions have (Abramowitz and Stegun,
 * Handbook of Mathematical Functions, 26.7.3 and 26.7.4): exact to the last bits, and a few lines where a library is more
 * than all the room that the functions have left.
 */

/** Probability that the distance from 0 is at most that of the angle `atan(t / sqrt(degrees))`. */
function within(angle: number, degrees: number): number {
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const odd = degrees % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k < degrees; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}
/**
 * The distance from 0 that t keeps within with a given probability: 12.706 for 1 degree of freedom and 0.95.
 * @param degrees Whole number of degrees of freedom, 1 or more.
 * @param probability More than 0 and less than 1.
 */
export function studentWithin(degrees: number, probability: number): number {
  let [low, high] = [0, Math.PI / 2];
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2;
    if (within(middle, degrees) < probability) low = middle;
    else high = middle;
  }
  return Math.sqrt(degrees) * Math.tan(low);
}
