/** States in the heading of an observation: which way yes and no go. */
import { type Group, list } from "../../reading/words/group";

/** Words that tell how a thing is, wherever they stand in the heading of an observation. */
export const STATES = {
  good: {
    why: "yes says that the thing is in order",
    words: list(`
      acceptable, adequate, attached, close, closed, closes, closing, complete, correct, correctly, engaged, fit, fitted, fully
      functional, functioning, functions, good, inorder, inplace, intact, legible, ok, okay, operates, operating, operational, pass
      passed, place, properly, readable, satisfactory, seated, secure, secured, serviceable, sound, tight, true, unbroken, undamaged
      whole, withinlimits, working, works
    `),
  },
  bad: {
    why: "yes says that the thing is not in order",
    words: list(`
      absent, broken, burst, bypassed, chipped, cracks, cuts, damage, damaged, defaced, defect, defective, defects, deformed, detached
      disabled, distorted, erased, faded, fail, failed, failing, fails, fault, faults, faulty, frayed, gone, illegible, incomplete
      inoperative, insecure, jammed, loose, lost, mismatch, mismatched, missing, obliterated, obscured, pulled, removed, reversed
      seized, slack, split, sprung, stiff, stripped, stuck, torn, twisted, unbolted, unreadable, unseated, unsecured, wear, wobble
      wobbles, wobbly, worn, wrong
    `),
  },
  deny: {
    why: "it turns what stands beside it",
    words: list("deny, freeof, never, non, not, without"),
  },
  denyFault: {
    why: "beside a fault it says that the fault is not there; beside a part it would say that the part is not",
    words: list("absence, absent, free"),
  },
  unclear: {
    why: '"Cracks none?" may be answered yes both ways, so yes and no settle nothing',
    words: list("nil, none, nothing, shape"),
  },
  affirm: {
    why: "yes says that the fault is there",
    words: list(`
      detected, evidence, evident, existing, found, indication, indications, noted, observed, present, seen, sign, signs, visible
    `),
  },
  look: {
    why: "it asks whether the thing was looked at, so that yes and no settle nothing",
    words: list("check, checked, checks, examination, examined, inspected, inspection, looked, test, tested"),
  },
} as const satisfies Record<string, Group>;
