/** Words beside the thing of a heading: places, measuring, times, limits, and words that carry nothing. */
import { type Group, list } from "../../reading/words/group";

/** Where on the gear, and on which of several: it tells one column of a thing from the next and changes nothing of the answer. */
export const PLACES: Group = {
  why: "damage counts wherever it is",
  words: list(`
    arm, base, block, body, bolt, bow, bowl, chain, coupling, cover, crown, ear, ears, end, ends, eye, eyes, ferrule, ferrules, fitting
    fittings, head, hook, hooks, inside, jaw, joint, leg, legs, link, links, load, masterlink, metal, neck, nut, outside, pin, ring
    rope, saddle, safety, section, shackle, shank, sheave, shell, sling, socket, spring, strap, surface, swivel, thread, threads, throat
    tip, webbing, weld, welds, wires, yoke
  `),
};
/** Words of how a part works, in the heading of what is in order. */
export const WORKING: Group = {
  why: "it asks whether the part does what it is for",
  words: list(`
    action, closing, closure, fitting, function, legibility, mechanism, movement, operation, readability, security, tightness
  `),
};
/** Where on a part a size or an angle is taken, without being another size. */
export const ON_PART: Group = {
  why: "it is said of the part as a whole, or of the place where it is always taken",
  words: list("point, tip"),
};
/** Words that carry nothing of their own. */
export const FILLER: Group = {
  why: "the heading says the same without it",
  words: list(`
    a, an, and, any, are, as, at, between, degrees, for, has, in, is, number, of, on, or, our, per, s, the, this, to, was, were, with, °
  `),
};
/** Words beside a measured size that say how it was taken. */
export const MEASURING: Group = {
  why: "a reading is a reading, however it was taken",
  words: list(`
    by, caliper, calliper, dia, diameter, dim, dimension, figure, gauge, measurement, size, taken, thickness, value, vernier, wall
  `),
};
/** Least and most of several readings, where the heading says besides that they were measured. */
export const EXTREMES: Group = {
  why: "beside a word for measured it is the worst of several readings, without one it may be a limit",
  words: list("least, lowest, max, maximum, min, minimum, smallest, thinnest"),
};
/** Words that speak of another time than today's reading. */
export const EARLIER: Group = {
  why: "an older reading never stands for today's",
  words: list("earlier, former, last, old, prev, previous, previously, prior"),
};
/** Words of limits, which are no readings. */
export const LIMITS: Group = {
  why: "the column says what is allowed, not what was found",
  words: list(`
    allowable, allowed, discard, limit, limits, max, maximum, permissible, permitted, recommended, reject, rejection, required, spec
    specified, target, tolerance
  `),
};
