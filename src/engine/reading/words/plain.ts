/** Words that tell that all is well, that deny, and that say how something was looked for. Common practice, no source. */
import { type Group, list } from "./group";

export const DENY: Group = {
  why: "what stands behind it is not so, or is not there",
  words: list("free from, free of, n't, neither, never, nil, no, non, none, nor, not, not any, w/o, without, zero"),
};
/** Between a denial and the damage that it denies. */
export const REACH: Group = {
  why: "a denial reaches over it: no visible or new cracks",
  words: list(`
    a, abnormal, additional, an, and, any, apparent, appreciable, as, been, chemical, deep, detectable, discernible, evidence of, excess
    excessive, external, further, hairline, has been, have been, heat, heavy, important, indication of, indications of, internal, large
    linear, major, marked, material, measurable, mechanical, more, new, notable, noticeable, obvious, of, or, other, physical, real
    recordable, relevant, reportable, serious, severe, sharp, sign of, significant, signs of, such, sudden, surface, the, thermal
    trace of, traces of, undue, unusual, visible, visible signs of, visual, worrying
  `),
};
export const SAW: Group = {
  why: "it says that it was seen; behind a denial, that it was not",
  words: list(`
    apparent, detected, discovered, encountered, evident, found, identified, indicated, noted, noticed, obs, observed, present, recorded
    reported, seen, showing, shown, spotted, to report, visible, visually
  `),
};
export const NOTHING: Group = {
  why: "there is none of what the column, or the words before it, ask for",
  words: list(`
    0, all clear, n/a, n/d, n/f, na, nad, nff, nil, nil found, nil seen, no, none, none apparent, none at all, none detected
    none evident, none found, none noted, none obs, none observed, none present, none reported, none seen, none to report, none visible
    not any, not found, not seen, nothing, nothing found, nothing noted, nothing seen, nothing visible, nothing wrong, nvd, zero
  `),
};
export const LOOKED: Group = {
  why: "it was looked for",
  words: list(`
    check, checked, crack check, crack checked, crack detection, crack test, crack tested, dye pen, dye pen test, dye pen tested
    dye penetrant, dye penetrant test, examination, examined, inspected, inspection, looked at, looked for, mag particle
    magnetic particle, mpi, mpi check, mpi checked, mpi test, mt, ndt, ndt test, pt, test, tested, ut, vis check, visual, visual check
    visual inspection, visually checked, visually inspected
  `),
};
export const WELL: Group = {
  why: "the thing is in order",
  words: list(`
    acc, acceptable, accepted, adequate, all clear, all correct, all fine, all good, all intact, all ok, all serviceable, all sound
    all working, aok, as it should be, as new, as required, best condition, clean, clear, complete, compliant, complies, conforms
    correct, ex cond, excellent, excellent condition, fine, first class, fit for purpose, fit for service, fit for use, functional, g
    g'd, gd, good, good all round, good as new, good condition, good order, good shape, good throughout, good working condition
    good working order, gtg, in date, in good condition, in good nick, in good order, in good repair, in good shape
    in good working order, in order, in perfect order, in place, in tolerance, in working order, intact, legible, like new, looks fine
    looks good, looks ok, negative, nice, no bother, no faults, normal, nothing wrong, o.k, ok, ok all round, okay, okey, operational
    pass, passed, passes, perfect, perfect condition, readable, right, safe, safe to use, sat, satis, satis'y, satisf, satisfactory
    secure, serv, serviceable, sound, suitable, tidy, top condition, undamaged, up to standard, usable, v good, v. good, very good
    very good condition, very good order, very nice, vg, well, whole, within limits, within spec, within tolerance, working, working ok
    working well, works, works fine, works ok, works well
  `),
};
