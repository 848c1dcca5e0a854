/** What can be wrong with gear, by its name. Common practice, no source: words of inspection logs. */
import { type Group, list } from "./group";

export const HARM: Group = {
  why: "damage as a thing: there is some, unless the words beside it deny it",
  words: list(`
    abnormal wear, abrasion, abrasions, abuse, acid burn, acid burns, arc burn, arc burns, arc mark, arc marks, arc strike, arc strikes
    attack, bend, bending, bends, birdcage, birdcages, birdcaging, break, breakage, breaks, broken stitches, broken strand
    broken strands, broken weld, broken welds, broken wire, broken wires, burn, burn mark, burn marks, burning, burns, burr, burrs
    chafe, chafing, charring, chemical attack, chemical burn, chemical burns, chemical damage, chip, chips, clearance, corrosion
    corrosion pits, corrugation, corrugations, crack, cracking, cracks, crimp, crimps, crush, crushing, cut, cuts, damage, damaged wires
    damages, defect, defects, deficiencies, deficiency, deformation, deformations, dent, dents, deterioration, dings, discoloration
    discolouration, displacement, distortion, distortions, elongation, embrittlement, erosion, excessive wear, fading, failure, fatigue
    fault, faults, flat spots, flaw, flaws, fouling, fracture, fractures, fray, fraying, galling, gap, gaps, gouge, gouges, gouging
    groove wear, grooves, grooving, heat, heat damage, heat marks, hole, holes, impact damage, imperfections, incomplete welds
    indication, indications, irregularities, irregularity, issue, issues, kink, kinking, kinks, knot, knots, lay change, looseness, loss
    mechanical damage, melting, mildew, misalignment, misuse, modification, modifications, mods, movement, necking, nick, nicks
    nonconformities, nonconformity, notch, notches, opening, overload, overloading, peeling, pit, pits, pitting, play, powder
    pressure marks, problem, problems, protrusion, puncture, punctures, repair weld, rot, rust, scale, scaling, scar, scars, scorching
    score, score marks, scores, scoring, scratch, scratches, shock load, slack, slip, slippage, snag, snags, softening, spall, spalling
    spatter, split, splits, spread, spreading, stain, staining, stains, stiffness, stretch, stretching, strike, strikes, stripping
    surface breaking defects, swelling, tear, tearing, tears, thinning, twist, twisting, twists, uv damage, wear, weld, weld spatter
    weld strikes, welding, welds, wobble, wobbling
  `),
};
export const HARMED: Group = {
  why: "how a damaged thing is; beside a denial it says that it is not so",
  words: list(`
    abraded, abused, altered, attacked, badly worn, baggy, bent, birdcaged, blued, brittle, broke, broken, buckled, bulging, burned
    burnt, burred, chafed, charred, chewed, chipped, collapsed, corroded, corrugated, cracked, crimped, crooked, cross threaded, crossed
    crushed, cut, damaged, defaced, deformed, dented, deteriorated, discolored, discoloured, displaced, distorted, dog legged, drilled
    elongated, eroded, faded, faulty, flattened, fractured, frayed, fretted, frozen, galled, gouged, grooved, ground, heated, holed
    illegible, incomplete, jammed, kinked, knotted, leaking, loose, mangled, melted, mildewed, misaligned, mismatched, missing, modified
    necked, nicked, notched, oblong, off, open, opened, opened out, opened up, out of line, out of round, out of shape, out of true
    oval, overheated, overloaded, parted, peeled, perished, pierced, pinched, pitted, popped, protruding, pulled, punctured, reversed
    rotten, rough, rusted, rusted through, rusty, scalded, scaled, scarred, scorched, scored, scraped, scratched, seized, shaky, sheared
    shredded, slack, slipped, smashed, snagged, snapped, split, spread, springy, sprung, squashed, staggered, stained, sticking, sticky
    stiff, straightened, strained, stretched, stripped, stuck, suspect, swollen, thin, thinned, tight, torn, twisted, unbolted, uneven
    unlaid, unravelled, unravelling, unreadable, unscrewed, untidy, warped, weak, weakened, welded, wobbles, wobbly, worn, worn off
    worn out, worn thin, worn through, wrong
  `),
};
export const GONE: Group = {
  why: "a part that should be there is not",
  words: list(`
    absent, came off, cannot be read, cannot read, fell off, gone, half gone, hard to read, knocked off, lost, missing, not there, off
    painted over, rubbed off, torn off, unmarked, unreadable, washed off, wired open, worn away, worn off
  `),
};
export const COAT_GONE: Group = {
  why: "of paint it says nothing of the metal under it",
  words: list(`
    chipped, chips, damaged, faded, flaking, gone, marks, missing, peeling, rubbed, scratched, scratches, scuffed, scuffs, wearing
    wearing off, worn, worn off
  `),
};
/** Wear as it is on gear in use. */
export const LESSENED = {
  little: {
    why: "it lessens wear and rust to what gear in use has; it lessens nothing else",
    words: list(`
      a bit, a bit of, a little, a trace of, barely any, bit of, general, hardly any, just light, light, little, minimal, minor, normal
      slight, slightly, small amount of, some light, superficial, surface, trace of, typical, usual, very light, very little, very minor
      very slight
    `),
  },
  wear: {
    why: "a little of it is normal",
    words: list("abrasion, corroded, corrosion, rust, rusted, rusting, rusty, scuffing, scuffs, wear, wear and tear, wear marks, worn"),
  },
  coat: {
    why: "paint and labels of colour are not read",
    words: list(`
      coating, colour band, colour code, colour label, galvanising, label colour, label of colour, paint, paint colour, paint job
      paintwork, powder coat, varnish
    `),
  },
} as const satisfies Record<string, Group>;
