/** Words in a column of observations that tell that what was looked at is in order. Each list names what is good; the rest asks. */
import { type Group, list } from "./group";

/** In any column of observations. */
export const GOOD: Group = {
  why: "good wherever it stands",
  words: list(`
    a1, acc, accept, acceptable, accepted, adequate, all fine, all good, all in order, all ok, all okay, all right, all satisfactory
    all serviceable, all sound, all well, alright, aok, as it should be, as new, clean, clear, compliant, complies, conforms, ex cond
    excellent, fine, fit, fit for purpose, fit for service, fit for use, free from defect, free from defects, free of defects, g, g'd
    gd, gd cond, gd order, good, good all over, good as new, good cond, good condition, good nick, good order, good overall, good shape
    good state, good throughout, good working order, in good cond, in good condition, in good nick, in good order, in good repair
    in good shape, in good working order, in order, in tol, in tolerance, intact, like new, nice, no bother, no concerns, no issue
    no issues, no problem, no problems, normal condition, normal shape, nothing wrong, o.k, o/k, ok, ok as is, ok for use, ok overall
    ok throughout, ok visually, okay, okey, pass, passed, passes, perfect, pristine, s'fact, sat, sat cond, satis, satisf, satisfac
    satisfactory, satisfactory condition, ser, serv, serviceable, sound, sound condition, undamaged, v good, very good
    very good condition, vg, visually good, visually ok, well, within limit, within limits, within spec, within tol, within tolerance
  `),
};
/** In a column of faults: there is none. */
export const NONE: Group = {
  why: "there is none of what the column asks for",
  words: list(`
    0, absent, all clear, all intact, dye clean, dye clear, dye good, dye neg, dye negative, dye ok, dye passed, dye pen clean
    dye pen clear, dye pen good, dye pen neg, dye pen negative, dye pen ok, dye pen passed, dye penetrant clean, dye penetrant clear
    dye penetrant good, dye penetrant neg, dye penetrant negative, dye penetrant ok, dye penetrant passed, free, mpi clean, mpi clear
    mpi good, mpi neg, mpi negative, mpi ok, mpi passed, mt clean, mt clear, mt good, mt neg, mt negative, mt ok, mt passed, n, n/d, nad
    nd, ndt clean, ndt clear, ndt good, ndt neg, ndt negative, ndt ok, ndt passed, neg, negative, never, nff, nil, no, no evidence
    no sign, no signs, no trace, no traces, none, none at all, none significant found, none whatsoever, not any, not any visible
    not apparent, not seen any, not visible, nothing, nothing abnormal, nothing at all, nothing to report, nothing unusual
    nothing visible, nsd, nvd, nvi, pt clean, pt clear, pt good, pt neg, pt negative, pt ok, pt passed, unaltered, unbent, unbroken
    uncut, undamaged, undeformed, unmarked, unmodified, unrepaired, unworn, ut clean, ut clear, ut good, ut neg, ut negative, ut ok
    ut passed, visual clean, visual clear, visual good, visual neg, visual negative, visual ok, visual passed, vt clean, vt clear
    vt good, vt neg, vt negative, vt ok, vt passed, zero, zero found
  `),
};
/** Behind a denial, before the damage that it denies; a word such as "new" or "major" would say that there is other damage. */
export const NEUTRAL: Group = {
  why: "it leaves nothing out of what is denied",
  words: list(`
    any, apparent, detectable, discernible, evidence of, external, indication of, indications of, mechanical, obvious, of, physical
    sign of, signs of, structural, surface, the, trace of, traces of, visible, visible evidence of, visible sign of, visible signs of
    visual
  `),
};
export const SEEN: Group = {
  why: "it says that something was seen; behind a denial, that it was not",
  words: list(`
    anywhere, apparent, at this time, at time of insp, at time of inspection, by eye, detected, discovered, evident, found, identified
    noted, noticed, obs, observed, on inspection, present, recorded, reported, seen, so far seen, this time, to be seen, to date
    to the eye, today, vis, visible, visually
  `),
};
/** What a column of faults looks for. */
export const LOOKED_FOR: Group = {
  why: "damage that a column of faults asks for, so that its denial is an answer",
  words: list(`
    abnormal wear, abrasion, acid burn, acid burns, acid damage, alteration, alterations, arc burn, arc burns, arc damage, arc strike
    arc strikes, attack, basket deformation, bend, bending, bends, birdcage, birdcages, birdcaging, blueing, bluing, bowing, break
    breaks, broken ends, broken fibres, broken strand, broken strands, broken weld, broken welds, broken wire, broken wires
    broken yarns, bruising, burn, burn marks, burning, burns, burrs, caustic damage, chafing, charring, chemical attack, chemical burn
    chemical burns, chemical damage, chemical marks, chemicals, colour change, colour changes, contamination, core showing, core visible
    corr, corrosion, corrosion pits, crack, cracking, cracks, cracks in welds, crush, crushing, cut, cuts, damage, damages, def, defect
    defects, deformation, deformations, defs, degradation, dent, dents, deterioration, discoloration, discolouration, dist, distorsion
    distortion, distortions, elongation, embrittlement, erosion, excessive wear, fault, faults, fibre damage, field weld, field welds
    flat spots, flattening, flaw, flaws, fracture, fractures, fraying, fretting, galling, glazing, gouge, gouges, gouging
    hairline cracks, hardening, heat, heat damage, heat discolouration, heat effects, heat mark, heat marks, high strands, hole, holes
    hot spots, impact marks, indication, indications, kink, kinking, kinks, knot, knots, linear indications, local welding
    loose strands, looseness, loss of section, marks, marks of heat, mechanical damage, melting, misalignment, modification
    modifications, mods, necking, nick, nicks, notches, odor, odour, odours, opening, opening up, overheating, parted strands
    permanent set, pits, pitting, play, powder, powdering, protruding core, punctures, recordable indications, reduction
    rejectable indications, relevant indications, repair, repairs, reportable indications, rot, rust, rusting, sag, scale, scaling
    scorch marks, scorching, score marks, scores, scoring, seizure, set, slip, slippage, smell, snag, snags, softening, spatter, splits
    splitting, spread, spreading, stain, staining, stains, stiffness, stress cracks, stretch, stretching, strikes, surface cracks
    surface damage, surface defects, tear, tearing, tears, tint, twist, twisting, twists, unauthorised modification
    unauthorised modifications, unauthorised welds, undue wear, unlaying, uv damage, waviness, wear, weld, weld cracks, weld repairs
    weld spatter, welding, welds, wire breaks, wobble
  `),
};
export const HARMED_SO: Group = {
  why: "how it would be if it were damaged; behind a denial it is not so",
  words: list(`
    affected, altered, attacked, bent, birdcaged, broken, burned, burnt, changed, charred, contaminated, corroded, cracked, crushed, cut
    damaged, deformed, dented, distorted, elongated, exposed, flat, flattened, frayed, gouged, ground, hardened, heated, kinked, knotted
    melted, modified, nicked, opened up, overheated, parted, pitted, pulled, repaired, rusted, rusty, scorched, scored, snagged, split
    spread, sprung, stained, stiff, stretched, torn, twisted, unlaid, warped, welded, worn
  `),
};
/** In a column of faults, what is said to be whole. */
export const WHOLE_OF: Group = {
  why: "the thing as a whole or what the fault would show in; one part of it would leave the others open",
  words: list(`
    alignment, all, all edges, all fibres, all legs, all links, all strands, all surfaces, all welds, all wires, all yarns, colour
    condition, cover, edges, fibres, form, geometry, is, jacket, lay, legs, links, profile, rope, shape, sleeve, still, strands, surface
    surfaces, the, welds, wires, yarns
  `),
};
export const STRAIGHT: Group = {
  why: "the whole is as it should be, in a word of its own shape",
  words: list(`
    even, evenly laid, good, intact, lays flat, lays straight, level, lies flat, lies straight, ok, parallel, regular, round, seats true
    smooth, sound, square, true, uniform, whole
  `),
};
/** In a column of what is in order. */
export const IN_ORDER: Group = {
  why: "what a part does or is when it is in order",
  words: list(`
    affixed, aligned, all in place, all markings clear, all present, all there, attached, bold, bright, clear to read, clearly legible
    clearly marked, clearly stamped, clearly visible, closed, closes, closes itself, closing fully, closing ok, complete, connected
    correct, correct size, correct type, easily legible, easily read, easy to read, effective, engaged, engages, engraved, fits, fitted
    free moving, full, full thread, fully engaged, fully home, fully marked, fully readable, fully seated, fully threaded, function ok
    functional, functional ok, functioning, functions, functions ok, good fit, home, in date, in good condition, in good order, in order
    in place, in position, in situ, installed, label visible, legible, legible after cleaning, legible when cleaned, made up, marked
    marked up, markings visible, matched, matches, matching, moves freely, new label fitted, new latch fitted, new one fitted
    new pin fitted, new tag fitted, no defects, no play, number visible, on and legible, on live end, on the live end, operable
    operates, operating, operational, original, positive, present, properly fitted, readable, readable after cleaning, retained, returns
    right, right size, right type, right way, right way round, safe, same maker and size, screws in, screws in full, seated, seating
    seats, secure, secured, self closes, self closing, serviceable, shoulder touches, shuts, snaps back, snaps closed, snaps shut
    spring loaded, springs back, square, stamped, stays closed, stays shut, straight, swl visible, tag on, tag visible, there, true
    unbroken, undamaged, undistorted, unmodified, unworn, up to date, well marked, well stamped, whole, wll visible, work, working
    works, y, yes
  `),
};
/** Words that stand before or behind what a part does. */
export const HOW_WELL: Group = {
  why: "it says how well, and takes nothing back",
  words: list(`
    all over, all round, as required, at all points, at both ends, both ends, both sides, by hand, clearly, condition, correctly
    each end, easily, evenly, every time, firmly, freely, full length, fully, good, in all positions, nicely, ok, ok when tested, okay
    on all legs, on both sides, perfectly, positively, properly, readily, securely, smoothly, still, throughout, true, very, well
  `),
};
export const OF_PART: Group = {
  why: "the part that the column asks about, and small words beside it",
  words: list(`
    action, all, all four, are, bearing, bearings, bolt, bolts, both, brake, caps, catch, clip, clips, closure, connections, connectors
    cotter, cotter pin, cotter pins, cotters, details, each, end, end fittings, end terminations, ends, engagement, every, eye, eyes
    fasteners, ferrule, ferrules, fit, fitting, fittings, func, function, gate, gates, guard, hinge, hook, hooks, id, identification, in
    is, it, its, keeper, keeper plate, keeper plates, keepers, label, labels, latch, legs, lettering, links, lock, locking, locks, lug
    mark, marking, markings, marks, mouse, mousing, movement, number, numbers, nut, nuts, on, op, operation, pads, pin, pins, plate
    rope ends, saddle, saddles, safety catch, safety latch, safety pin, seals, seam, seams, serial, serial number, shape, sheave
    sheaves, shoulder, sleeves, sling tag, socket, sockets, splice, splices, split pin, split pins, spring, springs, stamp, stamping
    still, stitches, stitching, swage, swages, swaging, swivel, swl, tab, tag, tags, terminations, text, the, thimble, thimbles, thread
    thread form, threads, wedge, weld, welds, wll, writing
  `),
};
export const NOT_MISSING: Group = {
  why: "behind none, not or no it says that the part is whole and there",
  words: list(`
    broken, broken stitches, broken threads, broken welds, broken wires, cut, cut stitches, cut threads, damage, damaged, damages
    defect, defective, defects, distorted, distortion, faded, fault, faults, frayed, issue, issues, loose, loose bolts, loose ends
    loose fasteners, loose nuts, loose parts, loose stitches, loose threads, lost, missing, missing bolts, missing fasteners
    missing nuts, missing parts, missing stitches, problems, pulled stitches, pulled threads, slip, torn
  `),
};
/** What may stand beside a good word without taking it back. */
export const ASIDE_OF: Group = {
  why: "when and how it was looked at, and that it was cleaned",
  words: list(`
    all legs, all over, all round, as last time, as new, as previous, bare hand, both ends, both sides, brushed, brushed clean, by eye
    by feel, by hand, by lamp, by touch, checked, clean, cleaned, cleaned and checked, dated, dry, dusted, dye pen, dye pen test
    dye penetrant, each leg, examined, function tested, gloves, good light, greased, inspected, lamp, lubricated, measured, mpi
    mpi done, mt, mt done, ndt, new, no change, oiled, on inspection, pt, rechecked, recleaned, signed, tested, throughout, today, torch
    unchanged, ut, verified, visual, visual check, visual inspection, visual only, visually, visually checked, visually inspected
    washed, wiped, with dye, with torch
  `),
};
/** How something was looked for: "none found on MT". */
export const BY_METHOD: Group = {
  why: "a denial stays one, however it was looked for",
  words: list(`
    dye, dye pen, dye penetrant, feel, gauge, hand, inspection, lamp, lens, magnetic particle, magnifier, mpi, mpi test, mt, ndt
    ndt test, pt, torch, touch, ut, visual, visual check, visual inspection
  `),
};
