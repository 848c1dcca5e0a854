/** What a column of results is called. */
import { type Group, list } from "../../reading/words/group";

/** What a column of results is called, and which way yes and no go under it. */
export const RESULTS = {
  fit: {
    why: "no is a plain rejection",
    words: list(`
      accept, acceptable, accepted, approved, cleared, fit, good, ok, okay, pass, passed, passes, safe, satisfactory, serviceable, sound
      usable
    `),
  },
  inUse: {
    why: "no says only that it is not in use",
    words: list("available, inservice, inuse, operational"),
  },
  rejected: {
    why: "yes is a plain rejection",
    words: list(`
      condemn, condemned, donotuse, fail, failed, fails, failure, reject, rejected, rejection, scrap, unacceptable, unfit, unsafe
      unserviceable
    `),
  },
  damaged: {
    why: "yes tells of something wrong, and a person has to say what",
    words: list(`
      action, actions, bad, damage, damaged, damages, defect, defective, defects, deficiencies, deficiency, fault, faults, faulty
      findings, issue, issues, nonconformity, problem, problems, repair, repairs, replace, replacement, wear, worn
    `),
  },
  open: {
    why: "the cell says it in words of its own",
    words: list(`
      assessment, conclusion, condition, decision, disposition, grading, judgement, judgment, outcome, overall, rating, result, results
      state, status, verdict
    `),
  },
  beside: {
    why: "it says who asked, when or of what, and does not turn the answer",
    words: list(`
      abnormal, annual, any, beyond, crack, cracks, current, equipment, exam, examination, excessive, existing, final, found, further
      gear, general, hook, identified, inspection, inspector, item, limit, limits, load, mpi, mt, ndt, needed, noted, observed, overall
      periodic, present, proof, pt, purpose, recommended, required, round, seen, service, sling, test, thorough, today, undue, use
      visual
    `),
  },
} as const satisfies Record<string, Group>;
