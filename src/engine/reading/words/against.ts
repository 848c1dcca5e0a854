/** Words against the use of gear, and words that say that what was wrong has been put right. Common practice, no source. */
import { type Group, list } from "./group";

/** As they are taken apart: don't is do not, can't is can not. */
export const NEVER: Group = {
  why: "said of today, whatever stands beside it",
  words: list(`
    can not be lifted, can not be used, cannot be lifted, cannot be used, cannot lift, cannot use, do not lift, do not operate
    do not use, do not used, dont lift, dont use, must not be lifted, must not be used, must not lift, must not use, never lift
    never to be used, never use, never used to lift, no lifting, no longer in use, no longer usable, no longer used, no use
    not for lifting, not for use, not to be lifted, not to be used, not to lift, not to use, not usable, shall not be used
    shall not lift, should not be lifted, should not be used, should not lift, should not use
  `),
};
export const AGAINST: Group = {
  why: "against its use, unless something beside it denies it or puts it right",
  words: list(`
    beyond limits, beyond repair, bin it, condemn, condemned, cut up, dangerous, dead, defective, destroy, destroyed, destruction
    discard, discarded, dispose, disposed, dropped, expired, fail, failed, failing, fails, failure, faulty, fell, hazard, hazardous
    hold for, hold pending, hold till, hold until, impounded, in bits, in half, in pieces, in quarantine, in two, isolate, isolated
    junk, locked out, lost, no good, no longer safe, not acceptable, not fit, not in service, not ok, not okay, not passed, not safe
    not serviceable, not sound, not to be trusted, on hold, out of action, out of commission, out of date, out of order, out of service
    out of test, out of use, over load, over loaded, overdue, overload, overloaded, past its best, quarantine, quarantined, red cage
    red tag, red tagged, reject, rejected, remove, remove from service, remove from use, removed from service, removed from use, retire
    retired, scrap, scrapped, set aside for repair, shock load, shock loaded, suspect, suspended, suspicious, tag out, tagged out
    take out, taken out, taken out of service, taken out of use, u/s, unacceptable, unfit, unsafe, unsatisfactory, unserviceable
    unsound, unsuitable, unusable, us, withdraw, withdrawn, withheld, write off, written off, wrote off
  `),
};
export const PENDING: Group = {
  why: "work on it is still to come: before a word of work it speaks against its use",
  words: list(`
    awaiting, awaits, due for, for, has to be, have to be, is to be, must be, need, needing, needs, needs to be, pending, recommend
    require, required, requires, requiring, send away for, send for, sent away for, sent for, shall be, should be, to be, waiting for
    waiting on, wants, will be, will need, would need
  `),
};
export const WORK: Group = {
  why: "what is done to gear that is not in order",
  words: list(`
    attention, changing, crack test, dressing, exam, examination, examined, inspection by engineer, load test, mpi, ndt, new, part
    parts, proof test, re test, re tested, rectification, rectified, renewal, renewed, renewing, repair, repaired, repairing, repairs
    replaced, replacement, replacing, retest, retested, scrap, scrapped, scrapping, spares, straightening, strip down, stripping, test
    tested, testing, weld, welded, welding
  `),
};
export const WORK_ALONE: Group = {
  why: "what gear is kept for that is out of use",
  words: list(`
    crack test, destruction, disposal, mpi, ndt, re test, rectification, repair, repairs, replacement, retest, scrap, straightening
    test, testing, welding
  `),
};
export const PLAINLY: Group = {
  why: "it stands against the item even in a column of names, places or numbers",
  words: list(`
    condemned, cracked, do not lift, do not use, failed, in quarantine, must not be used, not for use, not to be used, out of service
    out of use, quarantine, quarantined, red cage, red tag, red tagged, reject, rejected, rejects, scrap, scrap bin, scrapped
    tagged out, taken out of service, unfit, unsafe, unserviceable
  `),
};
export const UNREADABLE: Group = {
  why: "in the place of a number or a name it says that the mark cannot be read",
  words: list(
    "can not be read, cannot be read, cannot read, defaced, erased, faded, illegible, missing, no id, no label, no mark, no marking, no markings, no number, no tag, not legible, not marked, not readable, not stamped, obliterated, painted over, tag gone, tag missing, unmarked, unreadable, worn away, worn off",
  ),
};
export const MENDED: Group = {
  why: "what was wrong has been put right, unless it is still to be done",
  words: list(`
    adjusted, cut out, dressed out, exchanged, fitted a new, fitted new, freed off, made good, mended, new latch, new one fitted
    new part fitted, new parts fitted, new pin fitted, now passed, passed, put right, re fitted, re made, re marked, re secured
    re stamped, re tagged, re tightened, rectified, refitted, refurbished, released, remade, remarked, renewed, repaired, replaced
    restamped, retagged, retightened, returned to service, swapped, tightened, updated
  `),
};
export const EXCHANGED: Group = {
  why: "something stands in the place of a part; what it is follows behind for, with, by or using",
  words: list("exchanged, renewed, replaced, swapped"),
};
export const GENUINE: Group = {
  why: "what was put in the place of a part is what belongs there",
  words: list(
    "certified, correct, genuine, identical, like for like, maker's, makers, manufacturer's, manufacturers, matching, new, original, proper, rated, spare, the right",
  ),
};
/** Not yet: to be repaired, replace when, if repaired. */
export const NOT_YET: Group = {
  why: "before a word of mending it says that it has not been done",
  words: list(`
    awaiting, be, before, being, can be, cannot be, could be, getting, has to be, if, may be, must be, needs, needs to be, never, not
    once, pending, should be, to be, unless, unlikely, until, when, will be, will get, would be, yet to be
  `),
};
